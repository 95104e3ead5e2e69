import { crsOfEpsg } from './known-crs'
import { unitLengthM, unitNames } from './length-unit'
import type { Doubt, FileCrs, LengthUnit } from './survey-read.types'
import { attributeOf, childrenOf, type XmlValue } from './xml-tree'

/** Two lengths of a unit that differ by less than this share are one: the two feet differ by 2 in a million. */
const SAME_SHARE = 1e-7

/** Longest name of a system that is kept [letters]. */
const LONGEST_NAME = 200

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
  return { name: name.slice(0, LONGEST_NAME), epsg, definition: definitionOf(wkt) }
}

/**
 * Asks when the unit a file names is not that of its coordinate system: feet called metres, or one foot called the other.
 *
 * @param crs - the system the file names
 * @param unit - the unit it names
 * @returns a doubt; undefined when both agree or one of them is not known
 */
export function crsUnitDoubt(crs: FileCrs | undefined, unit: LengthUnit | undefined): Doubt | undefined {
  const systemM = unitOfSystemM(crs)
  if (crs === undefined || unit === undefined || systemM === undefined) return undefined
  if (Math.abs(systemM / unitLengthM[unit] - 1) < SAME_SHARE) return undefined
  return {
    about: 'unit',
    where: 'Units',
    what: `The file says ${unitNames[unit]}, but its coordinate system "${crs.name}" counts in units of ${systemM} m.`,
    mend: 'Check a distance you know, and say which unit its coordinates really are in.',
  }
}

function unitOfSystemM(crs: FileCrs | undefined): number | undefined {
  const known = crs?.epsg === undefined ? undefined : crsOfEpsg(crs.epsg)
  if (known) return known.unit && unitLengthM[known.unit]
  return unitOfWktM(crs?.definition)
}

/** The last unit of a projected system's well-known text is that of its coordinates. */
function unitOfWktM(wkt: string | undefined): number | undefined {
  if (wkt === undefined || !/^PROJ/i.test(wkt)) return undefined
  const last = [...wkt.matchAll(/UNIT\["[^"\]]{0,40}", ?([\d.]{1,30})/gi)].at(-1)?.[1]
  const lengthM = Number(last)
  return last !== undefined && lengthM > 0 ? lengthM : undefined
}

/** Well-known text as proj4 reads it; a bare code in its place is none. */
const definitionOf = (wkt: string | undefined) =>
  wkt !== undefined && /^[A-Z_]+\[/i.test(wkt) ? wkt : undefined

/** "27700", "EPSG:27700"; 0 stands for none. */
function epsgOf(written: string | undefined): number | undefined {
  const digits = /^(?:epsg:+)?(\d{4,6})$/i.exec(written ?? '')?.[1]
  return digits === undefined ? undefined : Number(digits)
}
