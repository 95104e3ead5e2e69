import { loadGridSystems, type GridSystem } from '#io'
import proj4 from 'proj4'
import { unitLengthM } from './length-unit'
import type { LengthUnit } from './survey-read.types'

/** A place in coordinates of some unit. */
export interface GridPlace {
  readonly east: number
  readonly north: number
  readonly unit: LengthUnit
}

/** Universal transverse Mercator: all zones have the same range of figures, at most [m]. */
const UTM_M = { west: 100_000, east: 900_000, south: 0, north: 10_000_000 } as const
/** Systems of whole continents hold nearly any figures: that a place fits one says nothing [°]. */
const WIDEST_DEG = 25
/** A place that does not come back to itself by as much lies beyond what a projection is for [m]. */
const COMES_BACK_M = 1

/**
 * Whether a place lies where a coordinate system is used.
 *
 * @param place - coordinates and their unit
 * @param definition - for proj4, in any unit
 * @param box - area of use: west, south, east, north [°]
 * @returns true when the place is inside
 */
export function fits({ east, north, unit }: GridPlace, definition: string, box: GridSystem['box']): boolean {
  const metres: [number, number] = [east * unitLengthM[unit], north * unitLengthM[unit]]
  const system = converterOf(definition.replace(/ \+units=\S+/, ''))
  const globe = system.inverse(metres)
  if (!within(globe, box)) return false
  const [backEast, backNorth] = system.forward(globe)
  return Math.hypot(backEast - metres[0], backNorth - metres[1]) < COMES_BACK_M
}

/** West of the date line when the box's west is above its east. */
function within(
  [lon, lat]: readonly [number, number],
  [west, south, east, north]: GridSystem['box'],
): boolean {
  const between = west <= east ? lon >= west && lon <= east : lon >= west || lon <= east
  return between && lat >= south && lat <= north
}

const converters = new Map<string, proj4.Converter>()

/** Taking a definition apart costs more than using it. */
function converterOf(definition: string): proj4.Converter {
  const known = converters.get(definition)
  if (known) return known
  const made = proj4(`${definition} +units=m`)
  converters.set(definition, made)
  return made
}

/**
 * National and state grids that a place would fit, by their names.
 *
 * @param place - coordinates and the unit they would be in
 * @returns names of grids that are used in that unit; "UTM" for any of its zones
 */
export function gridsFor(place: GridPlace): string[] {
  const named = loadGridSystems()
    .filter(({ codes }) => (place.unit === 'm' ? codes.m : (codes['us-ft'] ?? codes.ft)) !== undefined)
    .filter(({ definition, box }) => box[2] - box[0] < WIDEST_DEG && fits(place, definition, box))
    .map(({ name }) => name)
  return place.unit === 'm' && inUtm(place) ? ['UTM', ...named] : named
}

const inUtm = ({ east, north }: GridPlace): boolean =>
  east >= UTM_M.west && east <= UTM_M.east && north >= UTM_M.south && north <= UTM_M.north
