import { loadGridSystems, type GridSystem } from '#io'
import type { FileCrs, LengthUnit } from './survey-read.types'

/** A coordinate system that is known here. */
export interface KnownCrs extends FileCrs {
  readonly epsg: number
  readonly definition: string
  /** Unit of its coordinates; undefined when they are degrees. */
  readonly unit: LengthUnit | undefined
  /** Area of use: west, south, east, north [°]; undefined for the whole globe. */
  readonly box: GridSystem['box'] | undefined
}

/** Geographic systems that agree with WGS 84 to a metre or two: coordinates are longitude and latitude. */
const geographic: Readonly<Record<number, string>> = {
  4326: 'WGS 84',
  4979: 'WGS 84 (3D)',
  4258: 'ETRS89',
  4937: 'ETRS89 (3D)',
  4269: 'NAD83',
  6318: 'NAD83(2011)',
  4617: 'NAD83(CSRS)',
  4283: 'GDA94',
  7844: 'GDA2020',
  4167: 'NZGD2000',
  4674: 'SIRGAS 2000',
}

/** Universal transverse Mercator: codes that run with the zone, by the EPSG dataset. */
const utmSeries: readonly {
  readonly name: string
  readonly first: number
  readonly zones: readonly [number, number]
  readonly south?: boolean
  readonly datum: string
}[] = [
  { name: 'WGS 84', first: 32601, zones: [1, 60], datum: '+ellps=WGS84' },
  { name: 'WGS 84', first: 32701, zones: [1, 60], south: true, datum: '+ellps=WGS84' },
  { name: 'ETRS89', first: 25828, zones: [28, 38], datum: '+ellps=GRS80' },
  { name: 'NAD83', first: 26901, zones: [1, 23], datum: '+ellps=GRS80' },
  { name: 'NAD83(2011)', first: 6330, zones: [1, 19], datum: '+ellps=GRS80' },
  { name: 'NAD83(CSRS)', first: 2955, zones: [11, 13], datum: '+ellps=GRS80' },
  { name: 'NAD83(CSRS)', first: 2958, zones: [17, 21], datum: '+ellps=GRS80' },
  { name: 'NAD83(CSRS)', first: 3154, zones: [7, 10], datum: '+ellps=GRS80' },
  { name: 'NAD83(CSRS)', first: 3158, zones: [14, 16], datum: '+ellps=GRS80' },
  { name: 'GDA94', first: 28348, zones: [48, 58], south: true, datum: '+ellps=GRS80' },
  { name: 'GDA2020', first: 7848, zones: [48, 58], south: true, datum: '+ellps=GRS80' },
  { name: 'SIRGAS 2000', first: 31965, zones: [11, 22], datum: '+ellps=GRS80' },
  { name: 'SIRGAS 2000', first: 31977, zones: [17, 25], south: true, datum: '+ellps=GRS80' },
  { name: 'ED50', first: 23028, zones: [28, 38], datum: '+ellps=intl +towgs84=-87,-98,-121,0,0,0,0' },
]

/**
 * The coordinate system of an EPSG code: national grids from the table, UTM zones by rule.
 *
 * @param epsg - the code
 * @returns the system, or undefined when it is not known here
 */
export function crsOfEpsg(epsg: number): KnownCrs | undefined {
  const degrees = geographic[epsg]
  if (degrees !== undefined)
    return { name: degrees, epsg, definition: '+proj=longlat +datum=WGS84', unit: undefined, box: undefined }
  return utmOf(epsg) ?? gridOf(epsg)
}

function gridOf(epsg: number): KnownCrs | undefined {
  for (const { name, codes, definition, box } of loadGridSystems()) {
    const unit = units.find((one) => codes[one]?.includes(epsg))
    if (unit) return { name, epsg, definition: `${definition} +units=${unit}`, unit, box }
  }
  return undefined
}

const units = ['m', 'us-ft', 'ft'] as const

function utmOf(epsg: number): KnownCrs | undefined {
  const series = utmSeries.find(({ first, zones }) => epsg >= first && epsg <= first + zones[1] - zones[0])
  if (!series) return undefined
  const zone = series.zones[0] + epsg - series.first
  const west = zone * 6 - 186
  return {
    name: `${series.name} / UTM zone ${zone}${series.south ? 'S' : 'N'}`,
    epsg,
    definition: `+proj=utm +zone=${zone}${series.south ? ' +south' : ''} ${series.datum} +units=m`,
    unit: 'm',
    box: [west, series.south ? -80 : 0, west + 6, series.south ? 0 : 84],
  }
}
