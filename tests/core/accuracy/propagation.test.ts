import { describe, expect, it } from 'vitest'
import { accuracyOf } from '#core/accuracy'
import { cellCentre } from '#core/geometry'
import type { GridSurvey, GroundSurvey, LevelsSurvey, ProfileSurvey } from '#core/survey'
import { terrainOf } from '#core/terrain'
import { deviation, normals } from './chance'
import { errorsOf, innerCells, known, levels, surfaceOf } from './surfaces'
import { samplingError, tolerances } from './tolerances'

const DEG = 180 / Math.PI

describe('a plane through three points, worked by hand with the law of JCGM 100:2008', () => {
  const S = 0.02
  const plane = levels([0, 0, 10], [10, 0, 7], [0, 10, 10])
  const { surface, accuracy } = known(plane, 0.5, errorsOf(S))

  it('has the slope error √2 s / 10 m / (1 + g²) along the fall, and next to none from across it', () => {
    const along = (Math.SQRT2 * S) / 10
    const acrossM2 = (2 * S * S) / 100
    const variance = along ** 2 + (3 / 4) * (acrossM2 ** 2 / 0.3 ** 2)
    for (const cell of innerCells(surface))
      expect(accuracy.slopeSdDeg[cell]).toBeCloseTo((Math.sqrt(variance) * DEG) / (1 + 0.3 ** 2), 5)
  })

  it('has the level error s √(w₁² + w₂² + w₃²) of the three weights', () => {
    for (const cell of innerCells(surface)) {
      const { eastM, northM } = cellCentre(surface.frame, cell)
      const [b, c] = [eastM / 10, northM / 10]
      expect(accuracy.levelSdM[cell]).toBeCloseTo(S * Math.hypot(1 - b - c, b, c), 7)
    }
  })

  it('adds the error of places times the gradient', () => {
    const moved = known(plane, 0.5, errorsOf(S, 0.1)).accuracy
    const cell = innerCells(surface)[0]!
    const ratio = moved.levelSdM[cell]! / accuracy.levelSdM[cell]!
    expect(ratio).toBeCloseTo(Math.hypot(S, 0.1 * 0.3) / S, 5)
  })
})

/** Standard deviations of level and slope over many surveys that differ by chance. */
function simulated(survey: (normal: () => number) => GroundSurvey, cellM: number, runs: number) {
  const normal = normals(20_261_125)
  const levelRuns: Float64Array[] = []
  const slopeRuns: Float64Array[] = []
  for (let run = 0; run < runs; run++) {
    const surface = surfaceOf(survey(normal), cellM)
    levelRuns.push(surface.levelM)
    slopeRuns.push(terrainOf(surface).slopeDeg)
  }
  return (cell: number) => ({
    levelSdM: deviation(levelRuns.map((run) => run[cell]!)),
    slopeSdDeg: deviation(slopeRuns.map((run) => run[cell]!)),
  })
}

/** Compares every cell within its sampling error, and all together more strictly. */
function compare(
  truth: ReturnType<typeof simulated>,
  cells: readonly number[],
  runs: number,
  given: { levelSdM: Float32Array; slopeSdDeg: Float32Array },
) {
  for (const name of ['levelSdM', 'slopeSdDeg'] as const) {
    const ratios = cells.map((cell) => given[name][cell]! / truth(cell)[name])
    const worst = Math.max(...ratios.map((ratio) => Math.abs(ratio - 1)))
    expect(worst, name).toBeLessThan(tolerances.samplingErrors * samplingError(runs))
    const mean = ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length
    expect(Math.abs(mean - 1), `${name}, all cells`).toBeLessThan(
      tolerances.samplingErrorsOfMean * samplingError(runs),
    )
  }
}

describe('simulated surveys (Heuvelink, Burrough & Stein 1989; law of JCGM 100:2008) have the errors we state', () => {
  const RUNS = 500
  /** Each run makes a surface and its terrain anew [ms]. */
  const SLOW_MS = 60_000
  const S = 0.03

  // Off a lattice, so that no four points lie on one circle and the triangles stay the same.
  const spots = [0, 1, 2, 3, 4].flatMap((row) =>
    [0, 1, 2, 3, 4].map((column) => {
      const wobble = ((row * 7 + column * 3) % 5) / 5 - 0.4
      return { eastM: column * 3 + wobble, northM: row * 3 + wobble / 2 }
    }),
  )
  const triangles = (normal: () => number): LevelsSurvey => ({
    kind: 'levels',
    points: spots.map(({ eastM, northM }) => ({
      eastM,
      northM,
      levelM: 20 - 0.35 * eastM + 0.2 * northM + S * normal(),
    })),
  })

  it(
    'triangles, with the gradient read as Horn 1981 over a window that mixes them',
    () => {
      const exact = triangles(() => 0)
      const { surface, accuracy } = known(exact, 0.8, errorsOf(S))
      expect(accuracy.from.roughnessM).toBe(0)
      compare(simulated(triangles, 0.8, RUNS), innerCells(surface), RUNS, accuracy)
    },
    SLOW_MS,
  )

  it(
    'a grid of independent levels, its edges too (Horn 1981)',
    () => {
      const grid = (normal: () => number): GridSurvey => ({
        kind: 'grid',
        columns: 14,
        rows: 12,
        cellM: 2,
        westM: 0,
        southM: 0,
        levelsM: Array.from({ length: 14 * 12 }, (_, cell) => 50 - 0.6 * (cell % 14) + S * normal()),
      })
      const { surface, accuracy } = known(
        grid(() => 0),
        2,
        errorsOf(S),
      )
      const cells = [...surface.share.keys()].filter((cell) => surface.share[cell]! > 0)
      compare(simulated(grid, 2, RUNS), cells, RUNS, accuracy)
    },
    SLOW_MS,
  )

  it(
    'a profile of levels at measured plan distances',
    () => {
      const at = [0, 3, 7, 9, 14, 20]
      const profile = (normal: () => number): ProfileSurvey => ({
        kind: 'profile',
        distancesAre: 'plan',
        stations: at.map((distanceM) => ({ distanceM, levelM: 12 - 0.45 * distanceM + S * normal() })),
        facesDeg: 90,
        widthM: 4,
      })
      const exact = profile(() => 0)
      const { surface, accuracy } = known(exact, 0.5, errorsOf(S))
      // A window that reaches over a station mixes two legs; the leg alone is what we state, and it is never less.
      const inLeg = innerCells(surface).filter((cell) => {
        const alongM = cellCentre(surface.frame, cell).eastM + 10
        return at.every((station) => Math.abs(alongM - station) > 0.75)
      })
      compare(simulated(profile, 0.5, RUNS), inLeg, RUNS, accuracy)
    },
    SLOW_MS,
  )
})

describe('a bank in four numbers, by closed forms of the law of JCGM 100:2008', () => {
  const bank = { kind: 'bank', lengthM: 10, riseM: 5, facesDeg: 180, widthM: 6 } as const

  it('has the error of its angle, 1° of a clinometer, everywhere', () => {
    const { surface, accuracy } = known(bank, 0.5, { ...errorsOf(0.05), angleSdDeg: 1 })
    for (const cell of innerCells(surface)) expect(accuracy.slopeSdDeg[cell]).toBeCloseTo(1, 5)
  })

  it('has the errors of rise and tape, √(2 s² + 2 p² sin²θ) / (L cos θ), where levels were taken', () => {
    const [s, p] = [0.03, 0.1]
    const { surface, accuracy } = known(bank, 0.5, errorsOf(s, p))
    const expected = Math.sqrt(2 * s * s + 2 * p * p * 0.25) / (10 * Math.cos(Math.PI / 6))
    for (const cell of innerCells(surface)) expect(accuracy.slopeSdDeg[cell]).toBeCloseTo(expected * DEG, 4)
  })

  it('agrees with many banks whose rise and length differ by chance', () => {
    const [s, p, runs] = [0.03, 0.05, 40_000]
    const normal = normals(7)
    const slopes = Array.from({ length: runs }, () => {
      const rise = 5 + s * normal() - s * normal()
      const length = 10 + p * normal() - p * normal()
      return Math.asin(rise / length) * DEG
    })
    const { surface, accuracy } = known(bank, 0.5, errorsOf(s, p))
    const ratio = accuracy.slopeSdDeg[innerCells(surface)[0]!]! / deviation(slopes)
    expect(Math.abs(ratio - 1)).toBeLessThan(tolerances.samplingErrorsOfMean * samplingError(runs))
  })

  it('does not know how even the bank is', () => {
    expect(known(bank, 0.5, errorsOf(0.03)).accuracy.from.roughnessM).toBeUndefined()
  })
})

describe('a grid of independent levels (Florinsky 1998, with the weights of Horn 1981)', () => {
  const plane = (gradient: number): GridSurvey => ({
    kind: 'grid',
    columns: 12,
    rows: 12,
    cellM: 2,
    westM: 0,
    southM: 0,
    levelsM: Array.from({ length: 144 }, (_, cell) => 30 - gradient * 2 * (cell % 12)),
  })

  it('has the gradient error √(12/64) s / w inside, to the letter', () => {
    const { surface, accuracy } = known(plane(0.5), 2, errorsOf(0.1))
    const variance = (12 * 0.1 ** 2) / (64 * 2 ** 2)
    const expected = Math.sqrt(variance + (0.75 * variance ** 2) / 0.25) / (1 + 0.25)
    for (const cell of innerCells(surface)) expect(accuracy.slopeSdDeg[cell]).toBeCloseTo(expected * DEG, 5)
  })

  it('on level ground has the root of both variances', () => {
    const { surface, accuracy } = known(plane(0), 2, errorsOf(0.1))
    const variance = (12 * 0.1 ** 2) / (64 * 2 ** 2)
    for (const cell of innerCells(surface))
      expect(accuracy.slopeSdDeg[cell]).toBeCloseTo(Math.sqrt(2 * variance) * DEG, 5)
  })

  it('joined four to one halves the error of a level', () => {
    const surface = surfaceOf(plane(0.2), 4)
    const accuracy = accuracyOf(surface, terrainOf(surface), plane(0.2), errorsOf(0.1))
    expect(accuracy.levelSdM[innerCells(surface)[0]!]).toBeCloseTo(0.05, 6)
  })
})
