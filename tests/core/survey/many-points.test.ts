import { describe, expect, it } from 'vitest'
import { convexHull, ringAreaM2 } from '#core/geometry'
import type { LevelsSurvey } from '#core/survey'
import { edgesOf, tinAreaM2 } from '../geometry/triangulation'
import { said, surfaceOf } from './survey-of'

const [eastGradient, northGradient] = [0.12, -0.07]
const planeM = (eastM: number, northM: number) => 40 + eastGradient * eastM + northGradient * northM

/** A fixed run of numbers from 0 to 1 (Lehmer's generator with the constants of Park and Miller 1988). */
function numbers(): () => number {
  let state = 20_261_125
  return () => (state = (state * 16_807) % 2_147_483_647) / 2_147_483_647
}

describe('a large survey', () => {
  it('exact solution: 50,000 points and 5,000 pieces of line of one plane make that plane, Euler’s count of triangles and the area of the hull', () => {
    const next = numbers()
    const place = (eastM: number, northM: number) => ({ eastM, northM, levelM: planeM(eastM, northM) })
    const points = Array.from({ length: 50_000 }, () => place(next() * 400, next() * 300))
    const breaklines: LevelsSurvey['breaklines'] = Array.from({ length: 500 }, (_, line) => {
      const [eastM, northM] = [next() * 380, next() * 290]
      const vertices = Array.from({ length: 11 }, (__, at) => place(eastM + at * 2, northM + next() * 10))
      return { id: `line ${line}`, kind: 'edge', vertices }
    })
    const surface = surfaceOf({ kind: 'levels', points, breaklines })
    const { tin } = surface
    const edges = edgesOf(tin!)
    expect(tin!.points.length - edges.size + tin!.corners.length / 3).toBe(1)
    expect(tinAreaM2(tin!)).toBeCloseTo(ringAreaM2(convexHull(tin!.points)), 3)
    for (const { eastM, northM, levelM } of tin!.points) {
      if (Math.abs(levelM - planeM(eastM, northM)) > 1e-4)
        throw new Error(`off the plane at ${eastM} ${northM}`)
    }
    expect(said(surface, 'outlier')).toEqual([])
    expect(said(surface, 'disagreement')).toEqual([])
    expect(said(surface, 'split').length).toBeGreaterThan(100)
  }, 120_000)
})
