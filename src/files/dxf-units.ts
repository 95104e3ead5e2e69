import type { Doubt, LengthUnit } from './survey-read.types'

/** $INSUNITS of the DXF reference that we read. */
const lengthUnits = new Map<number, LengthUnit>([
  [1, 'in'],
  [2, 'ft'],
  [4, 'mm'],
  [5, 'cm'],
  [6, 'm'],
  [21, 'us-ft'],
])

/** Names of the other values, for the question. */
const otherUnits = new Map([
  [3, 'miles'],
  [7, 'kilometres'],
  [8, 'microinches'],
  [9, 'mils'],
  [10, 'yards'],
  [11, 'ångströms'],
  [12, 'nanometres'],
  [13, 'micrometres'],
  [14, 'decimetres'],
  [15, 'dekametres'],
  [16, 'hectometres'],
  [17, 'gigametres'],
  [18, 'astronomical units'],
  [19, 'light years'],
  [20, 'parsecs'],
  [22, 'US survey inches'],
  [23, 'US survey yards'],
  [24, 'US survey miles'],
])

/**
 * The unit of length of a drawing.
 *
 * @param code - its $INSUNITS [number]; undefined when it has none, 0 when it names none
 * @returns the unit, and what must be asked where it is one we do not read
 */
export function dxfUnit(code: number | undefined): { unit: LengthUnit | undefined; doubts: Doubt[] } {
  const unit = code === undefined ? undefined : lengthUnits.get(code)
  if (unit === 'in') return { unit, doubts: [inchDoubt] }
  if (code === undefined || code === 0 || unit !== undefined) return { unit, doubts: [] }
  const name = otherUnits.get(code) ?? `a unit with the number ${code}`
  return {
    unit: undefined,
    doubts: [
      {
        about: 'unit',
        where: '$INSUNITS',
        what: `The drawing says that its unit is ${name}, which is not read.`,
        mend: 'Say which unit its coordinates really are in.',
      },
    ],
  }
}

const inchDoubt: Doubt = {
  about: 'unit',
  where: '$INSUNITS',
  what: 'The drawing says inches, which many programs write without meaning it.',
  mend: 'Check a distance you know, and say which unit its coordinates really are in.',
}
