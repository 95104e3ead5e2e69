import { crsOfEpsg } from './known-crs'
import type { FileCrs, LengthUnit } from './survey-read.types'

/** What the keys of a GeoTIFF say of its coordinates. */
export interface KeyedCrs {
  readonly crs: FileCrs | undefined
  readonly inDegrees: boolean
  /** Unit of east and north. */
  readonly unit: LengthUnit | undefined
  readonly levelUnit: LengthUnit | undefined
}

/** Codes of units in GeoTIFF keys (OGC 19-008r4, table of linear units; EPSG codes of units). */
const unitCodes: ReadonlyMap<unknown, LengthUnit> = new Map<unknown, LengthUnit>([
  [9001, 'm'],
  [9002, 'ft'],
  [9003, 'us-ft'],
  [1025, 'mm'],
  [1033, 'cm'],
])

/** Vertical systems whose name says another unit than metres (EPSG dataset): NAVD88 height in feet. */
const verticalCodes: ReadonlyMap<unknown, LengthUnit> = new Map<unknown, LengthUnit>([
  [6360, 'us-ft'],
  [8228, 'ft'],
  [5703, 'm'],
  [5701, 'm'],
])

/** GTModelTypeGeoKey of longitude and latitude. */
const GEOGRAPHIC = 2
/** Code of a system that the keys describe themselves. */
const OWN_SYSTEM = 32_767

/**
 * Coordinate system and units from the keys of a GeoTIFF.
 *
 * @param keys - by their names
 * @returns what they say; undefined where they say nothing we know
 */
export function crsOfKeys(keys: Readonly<Record<string, unknown>>): KeyedCrs {
  const inDegrees = keys.GTModelTypeGeoKey === GEOGRAPHIC
  const code = inDegrees ? keys.GeographicTypeGeoKey : keys.ProjectedCSTypeGeoKey
  const epsg = typeof code === 'number' && code > 0 && code !== OWN_SYSTEM ? code : undefined
  const known = epsg === undefined ? undefined : crsOfEpsg(epsg)
  const levelUnit = unitCodes.get(keys.VerticalUnitsGeoKey) ?? verticalCodes.get(keys.VerticalCSTypeGeoKey)
  return {
    crs: known ?? namedCrs(keys, epsg),
    inDegrees,
    unit: unitCodes.get(keys.ProjLinearUnitsGeoKey) ?? known?.unit,
    levelUnit,
  }
}

function namedCrs(keys: Readonly<Record<string, unknown>>, epsg: number | undefined): FileCrs | undefined {
  const citation = [keys.GTCitationGeoKey, keys.PCSCitationGeoKey, keys.GeogCitationGeoKey].find(
    (one): one is string => typeof one === 'string' && one.trim() !== '',
  )
  const name = citation?.slice(0, 200) ?? (epsg === undefined ? undefined : `EPSG:${epsg}`)
  return name === undefined ? undefined : { name, epsg, definition: undefined }
}
