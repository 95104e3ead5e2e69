import { unitOfWord } from './length-unit'
import type { Doubt, LengthUnit } from './survey-read.types'
import { attributeOf, childrenOf, type XmlValue } from './xml-tree'

export interface FileUnits {
  readonly unit: LengthUnit | undefined
  /** Unit of levels where the file names another one. */
  readonly levelUnit: LengthUnit | undefined
  readonly doubts: readonly Doubt[]
}

/**
 * The units of length of a LandXML file.
 *
 * @param root - its LandXML element
 * @returns the units; undefined where it names none or one we do not know, and what must be asked
 */
export function landXmlUnits(root: XmlValue): FileUnits {
  const systems = childrenOf(root, 'Units').flatMap((units) => [
    ...childrenOf(units, 'Metric'),
    ...childrenOf(units, 'Imperial'),
  ])
  const [system] = systems
  const written = system && attributeOf(system, 'linearUnit')
  if (system === undefined || written === undefined)
    return { unit: undefined, levelUnit: undefined, doubts: [] }
  const unit = unitOfWord(written)
  const levels = levelUnitOf(system, unit)
  const doubts = [unknownUnit(written, unit), levels.doubt, twoSystems(systems)]
  return { unit, levelUnit: levels.unit, doubts: doubts.filter((doubt) => doubt !== undefined) }
}

const unknownUnit = (written: string, unit: LengthUnit | undefined): Doubt | undefined =>
  unit !== undefined
    ? undefined
    : {
        about: 'unit',
        where: 'Units',
        what: `The file gives lengths in "${written.slice(0, 40)}", which we do not read.`,
        mend: 'Say which unit its coordinates really are in.',
      }

function levelUnitOf(
  system: XmlValue,
  unit: LengthUnit | undefined,
): { unit: LengthUnit | undefined; doubt: Doubt | undefined } {
  const written = attributeOf(system, 'elevationUnit')
  const levelUnit = unitOfWord(written ?? '')
  // "feet" is the only foot the schema has for levels and does not say which one.
  const bothFeet = levelUnit === 'ft' && unit === 'us-ft'
  if (written === undefined || levelUnit === unit || bothFeet) return { unit: undefined, doubt: undefined }
  const doubt: Doubt = {
    about: 'unit',
    where: 'Units',
    what: `The file gives levels in "${written.slice(0, 40)}" and places in another unit.`,
    mend: 'Check it against a level and a distance you know, and say the unit of each.',
  }
  return { unit: levelUnit, doubt }
}

const twoSystems = (systems: readonly XmlValue[]): Doubt | undefined =>
  systems.length < 2
    ? undefined
    : {
        about: 'unit',
        where: 'Units',
        what: 'The file names more than one system of units; the first is taken.',
        mend: 'Check a distance you know against the drawing.',
      }
