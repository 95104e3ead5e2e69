import { trianglesOverGrid, type Tin } from '#core/geometry'
import type { LevelsSurvey, Surface } from '#core/survey'
import type { CellErrors } from './cell-errors.types'
import type { MeasuringErrors } from './measuring-errors'
import { slopeErrorDeg } from './slope-error'

/** First derivation: the points' own errors on the triangle over each cell. */
export function triangleErrors(surface: Surface, ground: LevelsSurvey, errors: MeasuringErrors): CellErrors {
  const { tin, frame, share } = surface
  if (!tin) throw new RangeError(`triangleErrors: a surface of ${ground.kind} must have triangles, got none`)
  const over = trianglesOverGrid(tin, frame)
  const levelSdM = new Float32Array(share.length)
  const slopeSdDeg = new Float32Array(share.length)
  const slopes = new Map<number, number>()
  for (let cell = 0; cell < share.length; cell++) {
    if (!share[cell]) continue
    const triangle = over[cell] ?? -1
    levelSdM[cell] = errors.levelSdM
    const known = slopes.get(triangle) ?? triangleSlopeSd(tin, triangle, errors)
    slopes.set(triangle, known)
    slopeSdDeg[cell] = known
  }
  return { levelSdM, slopeSdDeg, roughness: undefined }
}

function triangleSlopeSd(tin: Tin, triangle: number, errors: MeasuringErrors): number {
  const [a, b, c] = [0, 1, 2].map((corner) => tin.points[tin.corners[triangle * 3 + corner] ?? -1])
  if (!a || !b || !c) return 0
  const [bx, by, cx, cy] = [b.eastM - a.eastM, b.northM - a.northM, c.eastM - a.eastM, c.northM - a.northM]
  const doubled = bx * cy - cx * by
  const east = [cy / doubled, -by / doubled] as const
  const north = [-cx / doubled, bx / doubled] as const
  const rise = [b.levelM - a.levelM, c.levelM - a.levelM] as const
  const [p, q] = [east[0] * rise[0] + east[1] * rise[1], north[0] * rise[0] + north[1] * rise[1]]
  const s2 = errors.levelSdM ** 2 + errors.planSdM ** 2 * (p * p + q * q)
  const sum = (one: readonly [number, number], other: readonly [number, number]) =>
    s2 * (one[0] * other[0] + one[1] * other[1] + (one[0] + one[1]) * (other[0] + other[1]))
  return slopeErrorDeg(p, q, {
    eastEast: sum(east, east),
    eastNorth: sum(east, north),
    northNorth: sum(north, north),
  })
}
