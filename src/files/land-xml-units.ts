import type { Problem } from '#core/units'
import { unitOfWord } from './length-unit'
import type { FileCrs, LengthUnit } from './survey-read.types'
import { attributeOf, childrenOf, type XmlValue } from './xml-tree'

export interface FileUnit {
  readonly unit: LengthUnit | undefined
  readonly doubts: readonly Problem[]
}

/**
 * The unit of length of a LandXML file.
 *
 * @param root - its LandXML element
 * @returns the unit; undefined when it names none or one we do not know, and what must be asked
 */
export function landXmlUnit(root: XmlValue): FileUnit {
  const systems = childrenOf(root, 'Units').flatMap((units) => [
    ...childrenOf(units, 'Metric'),
    ...childrenOf(units, 'Imperial'),
  ])
  const system = systems[0]
  if (system === undefined) return { unit: undefined, doubts: [] }
  const written = attributeOf(system, 'linearUnit')
  if (written === undefined) return { unit: undefined, doubts: [] }
  const unit = unitOfWord(written)
  const doubts = [unknownUnit(written, unit), otherLevelUnit(system, unit), twoSystems(systems)]
  return { unit, doubts: doubts.filter((doubt) => doubt !== undefined) }
}

/** The coordinate system that a LandXML file names. */
export function landXmlCrs(root: XmlValue): FileCrs | undefined {
  const system = childrenOf(root, 'CoordinateSystem')[0]
  if (system === undefined) return undefined
  const wkt = attributeOf(system, 'ogcWktCode')
  const epsg = epsgOf(attributeOf(system, 'epsgCode')) ?? epsgOf(wkt)
  const horizontal = attributeOf(system, 'horizontalCoordinateSystemName')
  const name =
    attributeOf(system, 'name') ?? horizontal ?? attributeOf(system, 'desc') ?? (epsg ? `EPSG:${epsg}` : wkt)
  if (name === undefined) return undefined
  return { name: name.slice(0, 200), epsg, definition: definitionOf(wkt) }
}

/** Well-known text as proj4 reads it; a bare code in its place is none. */
const definitionOf = (wkt: string | undefined) =>
  wkt !== undefined && /^[A-Z_]+\[/i.test(wkt) ? wkt : undefined

/** "27700", "EPSG:27700"; 0 stands for none. */
function epsgOf(written: string | undefined): number | undefined {
  const digits = /^(?:epsg:+)?(\d{4,6})$/i.exec(written ?? '')?.[1]
  return digits === undefined ? undefined : Number(digits)
}

const unknownUnit = (written: string, unit: LengthUnit | undefined): Problem | undefined =>
  unit !== undefined
    ? undefined
    : {
        where: 'Units',
        what: `The file gives lengths in "${written.slice(0, 40)}", which we do not read.`,
        mend: 'Say which unit its coordinates really are in.',
      }

function otherLevelUnit(system: XmlValue, unit: LengthUnit | undefined): Problem | undefined {
  const written = attributeOf(system, 'elevationUnit')
  const levelUnit = unitOfWord(written ?? '')
  // "feet" in elevationUnit is the schema's only foot and says nothing of which one.
  const bothFeet = levelUnit === 'ft' && unit === 'us-ft'
  if (written === undefined || levelUnit === unit || bothFeet) return undefined
  return {
    where: 'Units',
    what: `Levels are given in "${written.slice(0, 40)}", places in another unit.`,
    mend: 'Set the unit of the levels apart from that of the places.',
  }
}

const twoSystems = (systems: readonly XmlValue[]): Problem | undefined =>
  systems.length < 2
    ? undefined
    : {
        where: 'Units',
        what: 'The file names more than one system of units; the first is taken.',
        mend: 'Check a distance you know against the drawing.',
      }
