import type { PlanPoint } from '#core/geometry'
import type { Contour } from '#core/terrain'

/** Decimals that coordinates are written with [count]: tenths of a millimetre. */
const DECIMALS = 4

/** Every fifth contour is drawn heavier. */
const MAIN_EVERY = 5

/**
 * Contours as GeoJSON, in the plot's own metres: not in degrees, as the file says of itself.
 *
 * @param contours - the lines
 * @param stepM - difference of level between two of them [m]
 * @returns the file's text
 */
export function contoursGeoJson(contours: readonly Contour[], stepM: number): string {
  const body = {
    type: 'FeatureCollection',
    name: 'contours',
    note: 'Coordinates are metres east and north of the plot’s own origin, not degrees of longitude and latitude.',
    intervalM: stepM,
    features: contours.flatMap(({ levelM, lines }) =>
      lines.map((line) => ({
        type: 'Feature',
        properties: { levelM: rounded(levelM), main: Math.round(levelM / stepM) % MAIN_EVERY === 0 },
        geometry: { type: 'LineString', coordinates: line.map(position) },
      })),
    ),
  }
  return `${JSON.stringify(body, null, 1)}\n`
}

const position = ({ eastM, northM }: PlanPoint): [number, number] => [rounded(eastM), rounded(northM)]

// Adding 0 turns -0 into 0.
const rounded = (value: number): number => Number(value.toFixed(DECIMALS)) + 0
