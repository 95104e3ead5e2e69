import type { Outcome } from '#core/units'
import { crsOfGeoJson } from './geojson-crs'
import { shapesOf, type Shape } from './geojson-shapes'
import { linesOf, pointsOf, ringsOf } from './geojson-ground'
import { refusal } from './refusal'
import type { SurveyRead } from './survey-read.types'

/**
 * Reads GeoJSON: points with a level, lines as breaklines, a polygon as the boundary.
 *
 * @param text - the file
 * @returns one part of points, or what is wrong
 */
export function readGeoJson(text: string): Outcome<SurveyRead> {
  const parsed = parsedJson(text)
  if (parsed === undefined)
    return refusal('file', 'The file is no complete JSON.', 'It may be cut short. Export it again.')
  const shapes = shapesOf(parsed)
  if (typeof shapes === 'string')
    return refusal('file', shapes, 'Export the survey as GeoJSON: a FeatureCollection of points with levels.')
  const system = crsOfGeoJson(parsed, shapes)
  return readShapes(shapes, system)
}

function readShapes(shapes: readonly Shape[], system: ReturnType<typeof crsOfGeoJson>): Outcome<SurveyRead> {
  const spots = pointsOf(shapes)
  const lines = linesOf(shapes)
  const rings = ringsOf(shapes)
  const levelled = spots.points.length >= 3 ? [] : lines.points
  const points = [...spots.points, ...levelled]
  if (points.length === 0)
    return refusal(
      'levels',
      `None of the ${shapes.length} shapes has a level.`,
      'A level is the third coordinate of a point, or a property such as level, z, elevation or height.',
    )
  const { inDegrees, notes, doubts, ...placed } = system
  return {
    ok: true,
    value: {
      format: 'geojson',
      parts: [
        {
          id: 'points',
          name: 'Points',
          kind: 'points',
          points,
          faces: [],
          breaklines: lines.breaklines,
          boundary: rings.boundary,
          grid: undefined,
        },
      ],
      ...placed,
      ...(inDegrees ? { inDegrees } : {}),
      notes: [
        ...notes,
        ...spots.notes,
        ...lines.notes,
        ...rings.notes,
        ...(levelled.length > 0 ? ['The levels of the lines were taken as points.'] : []),
      ],
      doubts,
    },
  }
}

/** JSON of any depth may fail; that is the file's fault. */
function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
