import { fits, gridsFor, type GridPlace } from './grid-fit'
import { crsOfEpsg, type KnownCrs } from './known-crs'
import { unitLengthM, unitNames } from './length-unit'
import { extentOf } from './survey-summary'
import type { Doubt, LengthUnit, SurveyPart, SurveyRead } from './survey-read.types'

/** Nearer to its origin than this, a survey is in no national grid [m]. */
const NEAR_ORIGIN_M = 20_000
/** Grids named in one sentence at most. */
const NAMED = 2

/**
 * What looks wrong in unit, order of columns or coordinate system, by where the survey would lie on the globe.
 *
 * @param part - in the file's own coordinates
 * @param read - the file it comes from
 * @returns one doubt at most
 */
export function systemDoubts(part: SurveyPart, read: SurveyRead): Doubt[] {
  const box = extentOf(part)
  if (!box || read.inDegrees) return []
  const middle = { east: (box.west + box.east) / 2, north: (box.south + box.north) / 2 }
  const known = read.crs?.epsg === undefined ? undefined : crsOfEpsg(read.crs.epsg)
  if (known?.box) return asked(part, againstSystem(middle, known, read.unit))
  return read.crs === undefined && read.unit !== undefined
    ? asked(part, withoutSystem({ ...middle, unit: read.unit }))
    : []
}

type Found = Pick<Doubt, 'about' | 'what' | 'mend'> | undefined

const asked = (part: SurveyPart, found: Found): Doubt[] => (found ? [{ where: part.name, ...found }] : [])

const otherUnits: readonly LengthUnit[] = ['m', 'us-ft', 'ft']

function againstSystem(
  middle: Omit<GridPlace, 'unit'>,
  { name, definition, box, unit: own }: KnownCrs,
  said: LengthUnit | undefined,
): Found {
  const inside = (place: GridPlace) => box !== undefined && fits(place, definition, box)
  const unit = said ?? own ?? 'm'
  const turned = { east: middle.north, north: middle.east }
  if (inside({ ...middle, unit }))
    return said === own || said === undefined ? undefined : otherThan(name, said, own)
  const rather = otherUnits.find((one) => one !== unit && inside({ ...middle, unit: one }))
  if (rather)
    return {
      about: 'unit',
      what: `In ${unitNames[unit]}, as the file says, the survey lies outside the area of ${name}; in ${unitNames[rather]} it lies inside.`,
      mend: 'Say the unit of east and north.',
    }
  return inside({ ...turned, unit })
    ? swapped(`the survey lies outside the area of ${name}, and inside with east and north swapped`)
    : {
        about: 'crs',
        what: `The survey lies outside the area where ${name} is used.`,
        mend: 'Check the coordinate system, or give the right EPSG code.',
      }
}

const otherThan = (name: string, said: LengthUnit, own: LengthUnit | undefined): Found =>
  own === undefined || sameFoot(said, own)
    ? undefined
    : {
        about: 'unit',
        what: `The file is in ${unitNames[said]}, but coordinates of ${name} are in ${unitNames[own]}.`,
        mend: 'Say the unit of east and north.',
      }

/** The two feet differ by two parts in a million: a file that says only "foot" may mean either. */
const sameFoot = (one: LengthUnit, other: LengthUnit): boolean =>
  one !== other && [one, other].every((unit) => unit === 'ft' || unit === 'us-ft')

const swapped = (why: string): Found => ({
  about: 'columns',
  what: `East and north may be swapped: ${why}.`,
  mend: 'Say which column holds what; other files must be exported anew with east and north the right way round.',
})

function withoutSystem(place: GridPlace): Found {
  const { east, north, unit } = place
  const metre = unitLengthM[unit]
  if (Math.max(Math.abs(east), Math.abs(north)) * metre < NEAR_ORIGIN_M) return undefined
  const turned = { east: north, north: east, unit }
  if (gridsFor(place).length > 0) return undefined
  const otherUnit = unit === 'm' ? 'us-ft' : 'm'
  const rather = gridsFor({ ...place, unit: otherUnit })
  if (rather.length > 0)
    return {
      about: 'unit',
      what: `In ${unitNames[unit]}, as the file says, the coordinates fit no grid known here; in ${unitNames[otherUnit]} they fit ${rather.slice(0, NAMED).join(' or ')}.`,
      mend: 'Say the unit of east and north.',
    }
  const names = gridsFor(turned)
  return names.length > 0
    ? swapped(`so they would fit ${names.slice(0, NAMED).join(' or ')}, and as they are no grid known here`)
    : undefined
}
