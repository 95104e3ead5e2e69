import { contourStepM } from '#core/terrain'
import { contours } from 'd3-contour'
import { linePath, outlinePath, type Px } from './path'

/** What a survey holds, in its own unit or in metres. */
export interface DrawnSurvey {
  readonly points: readonly { readonly eastM: number; readonly northM: number; readonly levelM: number }[]
  readonly faces: readonly (readonly number[])[]
  readonly breaklines: readonly {
    readonly kind: string
    readonly vertices: readonly { readonly eastM: number; readonly northM: number }[]
  }[]
  readonly boundary: readonly { readonly eastM: number; readonly northM: number }[] | undefined
  readonly grid:
    | {
        readonly columns: number
        readonly rows: number
        readonly cellM: number
        readonly westM: number
        readonly southM: number
        readonly levelsM: readonly (number | null)[]
      }
    | undefined
  /** Side of a grid cell northwards, where it is another one. */
  readonly cellNorth?: number | undefined
}

/** A survey as it lies, north up. */
export interface SurveyDrawing {
  readonly crosses: string
  readonly levels: readonly { readonly xPx: number; readonly yPx: number; readonly text: string }[]
  readonly faces: string
  readonly lines: readonly { readonly kind: string; readonly path: string }[]
  readonly boundary: string
  readonly contours: string
  /** Step between the contours, in the unit of the levels. */
  readonly contourStep: number | undefined
  readonly east: number
  readonly north: number
  readonly pxPerUnit: number
}

const ROOM_PX = 34
/** Most points drawn; more cannot be told apart at this size. */
const MOST_DRAWN = 3000
/** Most points with their level beside them. */
const MOST_WRITTEN = 60
/** Most faces drawn as triangles. */
const MOST_FACES = 8000
/** Most cells that contours are drawn from; larger grids are thinned for the drawing alone. */
const MOST_CELLS = 40_000

/** Lays a survey out on a drawing; in degrees, east is drawn as much narrower as it is on the ground. */
export function surveyDrawing(
  survey: DrawnSurvey,
  { widthPx, heightPx }: { readonly widthPx: number; readonly heightPx: number },
  inDegrees: boolean,
): SurveyDrawing {
  const box = boxOf(survey)
  const narrow = inDegrees ? Math.cos((((box.south + box.north) / 2) * Math.PI) / 180) : 1
  const [east, north] = [(box.east - box.west) * narrow, box.north - box.south]
  const pxPerUnit = Math.min(
    (widthPx - 2 * ROOM_PX) / Math.max(east, 1e-9),
    (heightPx - 2 * ROOM_PX) / Math.max(north, 1e-9),
  )
  const leftPx = (widthPx - east * pxPerUnit) / 2
  const footPx = (heightPx + north * pxPerUnit) / 2
  const at = (place: Place): Px => ({
    xPx: leftPx + (place.eastM - box.west) * narrow * pxPerUnit,
    yPx: footPx - (place.northM - box.south) * pxPerUnit,
  })
  const { points, faces, breaklines, boundary } = survey
  const every = Math.max(1, Math.ceil(points.length / MOST_DRAWN))
  const drawn = points.filter((_, index) => index % every === 0)
  return {
    crosses: drawn.map((point) => cross(at(point))).join(''),
    levels:
      points.length > MOST_WRITTEN
        ? []
        : points.map((point) => ({ ...at(point), text: point.levelM.toFixed(2) })),
    faces: faces.length > MOST_FACES ? '' : faces.map((face) => facePath(face, points, at)).join(''),
    lines: breaklines.map(({ kind, vertices }) => ({ kind, path: linePath(vertices.map(at)) })),
    boundary: boundary ? outlinePath(boundary.map(at)) : '',
    ...contoursOfGrid(survey, at),
    east: box.east - box.west,
    north,
    pxPerUnit: pxPerUnit * narrow,
  }
}

const cross = ({ xPx, yPx }: Px) => `M${(xPx - 3).toFixed(1)} ${yPx.toFixed(1)}h6m-3 -3v6`

function facePath(face: readonly number[], points: DrawnSurvey['points'], at: (place: Place) => Px): string {
  const corners = face.map((corner) => points[corner]).filter((corner) => corner !== undefined)
  return outlinePath(corners.map(at))
}

type Place = { readonly eastM: number; readonly northM: number }

function contoursOfGrid({ grid, cellNorth }: DrawnSurvey, at: (place: Place) => Px) {
  if (!grid) return { contours: '', contourStep: undefined }
  const every = Math.max(1, Math.ceil(Math.sqrt((grid.columns * grid.rows) / MOST_CELLS)))
  const [columns, rows] = [Math.floor(grid.columns / every), Math.floor(grid.rows / every)]
  const levels = Array.from({ length: columns * rows }, (_, cell) => {
    const row = Math.floor(cell / columns) * every
    return grid.levelsM[row * grid.columns + (cell % columns) * every] ?? NaN
  })
  const known = levels.filter((level) => Number.isFinite(level))
  if (known.length < 4 || columns < 2 || rows < 2) return { contours: '', contourStep: undefined }
  const [low, high] = rangeOf(known)
  const step = contourStepM(high - low)
  const thresholds: number[] = []
  for (let level = Math.ceil(low / step) * step; level <= high; level += step) thresholds.push(level)
  const side = cellNorth ?? grid.cellM
  const place = ([x = 0, y = 0]: readonly number[]): Px =>
    at({
      eastM: grid.westM + x * every * grid.cellM,
      northM: grid.southM + (grid.rows - y * every) * side,
    })
  const shapes = contours().size([columns, rows]).thresholds(thresholds)(levels)
  const rings = shapes.flatMap(({ coordinates }) => coordinates.flat())
  return { contours: rings.map((ring) => outlinePath(ring.map(place))).join(''), contourStep: step }
}

function boxOf({ points, breaklines, grid, cellNorth }: DrawnSurvey) {
  if (grid)
    return {
      west: grid.westM,
      south: grid.southM,
      east: grid.westM + grid.columns * grid.cellM,
      north: grid.southM + grid.rows * (cellNorth ?? grid.cellM),
    }
  const places = [...points, ...breaklines.flatMap(({ vertices }) => vertices)]
  const [west, east] = rangeOf(places.map(({ eastM }) => eastM))
  const [south, north] = rangeOf(places.map(({ northM }) => northM))
  return { west, south, east, north }
}

function rangeOf(values: readonly number[]): readonly [number, number] {
  return values.reduce<[number, number]>(
    ([low, high], value) => [Math.min(low, value), Math.max(high, value)],
    [Infinity, -Infinity],
  )
}

/** A round length about a quarter of the drawing. */
export function barLength(east: number): number {
  if (!(east > 0)) return 1
  const power = 10 ** Math.floor(Math.log10(east / 4))
  return ([5, 2, 1].find((times) => times * power <= east / 4) ?? 1) * power
}
