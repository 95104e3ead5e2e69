import { crsOfEpsg } from './known-crs'
import { rangeOf } from './spread'
import type { Doubt, FileCrs, LengthUnit } from './survey-read.types'
import type { Shape } from './geojson-shapes'

/** Where the coordinates of a GeoJSON file belong, and in which units. */
export interface GeoJsonSystem {
  readonly crs: FileCrs | undefined
  readonly inDegrees: boolean
  readonly unit: LengthUnit | undefined
  readonly notes: readonly string[]
  readonly doubts: readonly Doubt[]
}

/** Wider than this in degrees, a survey of a plot cannot be one [°]: some 55 km. */
const WIDEST_DEG = 0.5

/**
 * The coordinate system of a GeoJSON file: what its "crs" member says; else longitude and latitude as RFC 7946 has it,
 * if the coordinates can be that; else plain lengths.
 *
 * @param parsed - the document
 * @param shapes - its shapes
 * @returns system and units; heights of RFC 7946 are metres
 */
export function crsOfGeoJson(parsed: unknown, shapes: readonly Shape[]): GeoJsonSystem {
  const named = namedCrs(parsed)
  if (named !== undefined) return byName(named)
  const east = rangeOf(shapes.flatMap(({ places }) => places.map(([x]) => x)))
  const north = rangeOf(shapes.flatMap(({ places }) => places.map(([, y]) => y)))
  const onGlobe = east.lowest >= -180 && east.highest <= 180 && north.lowest >= -90 && north.highest <= 90
  if (!onGlobe) return plain
  const wide = Math.max(east.highest - east.lowest, north.highest - north.lowest) > WIDEST_DEG
  return { ...degrees, doubts: wide ? [tooWide] : [] }
}

const plain: GeoJsonSystem = {
  crs: undefined,
  inDegrees: false,
  unit: undefined,
  notes: [
    'GeoJSON is meant to be in degrees; these coordinates cannot be, so they are read as lengths east and north.',
  ],
  doubts: [],
}

const degrees: GeoJsonSystem = {
  crs: crsOfEpsg(4326),
  inDegrees: true,
  unit: 'm',
  notes: [
    'Longitude and latitude in degrees (WGS 84) and levels in metres, as RFC 7946 has it; brought to metres.',
  ],
  doubts: [],
}

const tooWide: Doubt = {
  about: 'crs',
  where: 'coordinates',
  what: 'Read as degrees, as GeoJSON is meant to be, the survey is more than 50 km across. They may be metres.',
  mend: 'Say whether the coordinates are degrees or lengths.',
}

function byName(name: string): GeoJsonSystem {
  if (/CRS84/i.test(name)) return degrees
  const epsg = Number(/EPSG:[\d.]*:?(\d{4,5})$/i.exec(name)?.[1])
  const known = crsOfEpsg(epsg)
  if (!known) {
    const crs = {
      name: name.slice(0, 200),
      epsg: Number.isNaN(epsg) ? undefined : epsg,
      definition: undefined,
    }
    return { crs, inDegrees: false, unit: undefined, notes: [], doubts: [] }
  }
  if (known.unit === undefined) return { ...degrees, crs: known }
  const note = `Levels are taken to be in the unit of ${known.name}; the file does not say.`
  return { crs: known, inDegrees: false, unit: known.unit, notes: [note], doubts: [] }
}

/** The "crs" member of older GeoJSON (2008): crs › properties › name. */
function namedCrs(parsed: unknown): string | undefined {
  const name = entry(entry(entry(parsed, 'crs'), 'properties'), 'name')
  return typeof name === 'string' ? name : undefined
}

function entry(value: unknown, name: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, name)
    ? new Map(Object.entries(value)).get(name)
    : undefined
}
