import { describe, expect, it } from 'vitest'
import { zoneSlopeErrors } from '#core/accuracy'
import { cellCentre } from '#core/geometry'
import type { GridSurvey, LevelsSurvey, ProfileSurvey } from '#core/survey'
import { deviation, normals, rms, roughGround, type Place } from './chance'
import { errorsOf, innerCells, known } from './surfaces'
import { samplingError, tolerances } from './tolerances'

/** The exponent we state. */
const H = 0.75
const DEG = 180 / Math.PI
/** Simulated ground wants its covariance rooted once [ms]. */
const SLOW_MS = 60_000

/** Variogram coefficient of ground whose standard deviation over one metre is given [m²]. */
const coefficientOf = (roughnessM: number) => roughnessM ** 2 / 2

const lattice = (count: number, spacingM: number): Place[] =>
  Array.from({ length: count * count }, (_, at) => {
    const wobble = (((at * 13) % 7) / 7 - 0.4) * 0.3 * spacingM
    return { xM: (at % count) * spacingM + wobble, yM: Math.floor(at / count) * spacingM + wobble / 2 }
  })

const levelsAt = (places: readonly Place[], levelsM: readonly number[]): LevelsSurvey => ({
  kind: 'levels',
  points: places.map(({ xM, yM }, at) => ({ eastM: xM, northM: yM, levelM: 100 - 0.3 * xM + levelsM[at]! })),
})

/** Whether the mean of many fits is the truth, within its own sampling error. */
function expectRecovered(found: readonly number[], truth: number) {
  const mean = found.reduce((sum, one) => sum + one, 0) / found.length
  const sampling = deviation(found) / Math.sqrt(found.length)
  expect(Math.abs(mean - truth)).toBeLessThan(3 * sampling)
  expect(sampling).toBeLessThan(0.06 * truth)
}

describe('fractional Brownian ground (Mandelbrot & Van Ness 1968), simulated', () => {
  const ROUGH_M = 0.08

  it(
    'the variogram fit (Cressie 1993) finds the coefficient of a surface again from its points',
    () => {
      const places = lattice(12, 3)
      const ground = roughGround(places, coefficientOf(ROUGH_M), H)
      const normal = normals(3)
      const found = Array.from({ length: 60 }, () => {
        const survey = levelsAt(places, ground(normal))
        return known(survey, 2, errorsOf(0.005)).accuracy.from.roughnessM! ** 2
      })
      expectRecovered(found, ROUGH_M ** 2)
    },
    SLOW_MS,
  )

  it(
    'the variogram fit (Cressie 1993) finds the coefficient of a profile again',
    () => {
      const places = Array.from({ length: 60 }, (_, at) => ({ xM: 2 * at, yM: 0 }))
      const ground = roughGround(places, coefficientOf(ROUGH_M), H)
      const normal = normals(4)
      const found = Array.from({ length: 120 }, () => {
        const levelsM = ground(normal)
        const survey: ProfileSurvey = {
          kind: 'profile',
          distancesAre: 'plan',
          stations: places.map(({ xM }, at) => ({ distanceM: xM, levelM: 80 - 0.3 * xM + levelsM[at]! })),
          facesDeg: 90,
          widthM: 4,
        }
        return known(survey, 1, errorsOf(0.005)).accuracy.from.roughnessM! ** 2
      })
      expectRecovered(found, ROUGH_M ** 2)
    },
    SLOW_MS,
  )

  it(
    'the variogram fit (Cressie 1993) finds the coefficient of a grid again',
    () => {
      const places = Array.from({ length: 144 }, (_, at) => ({ xM: at % 12, yM: -Math.floor(at / 12) }))
      const ground = roughGround(places, coefficientOf(ROUGH_M), H)
      const normal = normals(5)
      const found = Array.from({ length: 60 }, () => {
        const levelsM = ground(normal)
        const survey: GridSurvey = {
          kind: 'grid',
          columns: 12,
          rows: 12,
          cellM: 1,
          westM: 0,
          southM: 0,
          levelsM: levelsM.map((levelM, at) => 60 - 0.2 * (at % 12) + levelM),
        }
        return known(survey, 1, errorsOf(0.005)).accuracy.from.roughnessM! ** 2
      })
      expectRecovered(found, ROUGH_M ** 2)
    },
    SLOW_MS,
  )

  it(
    'ground strays from the triangles by as much as the law of Journel & Huijbregts 1978 says',
    () => {
      const points = lattice(6, 3)
      const CELL_M = 1
      const RUNS = 1500
      const flat = levelsAt(
        points,
        points.map(() => 0),
      )
      const { surface } = known(flat, CELL_M, errorsOf(0.002))
      const cells = innerCells(surface).filter((_, at) => at % 23 === 0)
      // Half of the length over which the gradient is meant: two cells of 1 m.
      const half = 1
      const truths = cells.flatMap((cell) => {
        const { eastM, northM } = cellCentre(surface.frame, cell)
        return [
          { xM: eastM, yM: northM },
          { xM: eastM + half, yM: northM },
          { xM: eastM - half, yM: northM },
        ]
      })
      const ground = roughGround([...points, ...truths], coefficientOf(ROUGH_M), H)
      const normal = normals(6)
      const misses = cells.map(() => ({ level: [] as number[], slope: [] as number[], stated: [0, 0] }))
      for (let run = 0; run < RUNS; run++) {
        const levelsM = ground(normal)
        const { surface: seen, terrain, accuracy } = known(levelsAt(points, levelsM), CELL_M, errorsOf(0.002))
        // What the fit finds in this run, put right to the truth: the law is tested here, not the fit.
        const right = (sd: number) => (sd * ROUGH_M) / accuracy.from.roughnessM!
        cells.forEach((cell, at) => {
          const [middle, east, west] = [0, 1, 2].map((k) => levelsM[points.length + at * 3 + k]!)
          const own = misses[at]!
          const { eastM } = cellCentre(surface.frame, cell)
          own.level.push(seen.levelM[cell]! - (100 - 0.3 * eastM + middle!))
          // The gradient down the fall, east, over the length it is meant over: two cells of 1 m.
          const slope = Math.tan(terrain.slopeDeg[cell]! / DEG)
          const seenEast = -slope * Math.sin(terrain.aspectDeg[cell]! / DEG)
          own.slope.push(seenEast - (-0.3 + (east! - west!) / (2 * half)))
          own.stated[0]! += right(accuracy.levelSdM[cell]!) / RUNS
          own.stated[1]! += (right(accuracy.slopeSdDeg[cell]!) / DEG / RUNS) * (1 + 0.3 ** 2)
        })
      }
      const levelRatios = misses.map(({ level, stated }) => stated[0]! / rms(level))
      const slopeRatios = misses.map(({ slope, stated }) => stated[1]! / rms(slope))
      const mean = (ratios: readonly number[]) => ratios.reduce((sum, one) => sum + one, 0) / ratios.length
      for (const ratio of levelRatios)
        expect(Math.abs(ratio - 1)).toBeLessThan(tolerances.samplingErrors * samplingError(RUNS))
      expect(Math.abs(mean(levelRatios) - 1)).toBeLessThan(
        tolerances.samplingErrorsOfMean * samplingError(RUNS),
      )
      // The stated slope error also holds a little of the error across the fall; see the tolerance.
      expect(Math.abs(mean(slopeRatios) - 1)).toBeLessThan(tolerances.acrossTheFall)
    },
    SLOW_MS,
  )
})

describe('spacing', () => {
  it('doubled, it makes levels between points worse by 2^H (power variogram of Journel & Huijbregts 1978)', () => {
    const places = lattice(12, 3)
    const levelsM = roughGround(places, coefficientOf(0.08), H)(normals(8))
    const near = known(levelsAt(places, levelsM), 1, errorsOf(1e-6))
    // The same ground drawn twice as large: levels grow by 2^H, which leaves the coefficient as it is.
    const wide = places.map(({ xM, yM }) => ({ xM: 2 * xM, yM: 2 * yM }))
    const far = known(
      {
        kind: 'levels',
        points: wide.map(({ xM, yM }, at) => ({
          eastM: xM,
          northM: yM,
          levelM: 100 - 0.3 * xM + 2 ** H * levelsM[at]!,
        })),
      },
      2,
      errorsOf(1e-6),
    )
    expect(far.accuracy.from.roughnessM).toBeCloseTo(near.accuracy.from.roughnessM!, 6)
    const cells = innerCells(near.surface)
    expect(far.surface.levelM.length).toBe(near.surface.levelM.length)
    for (const cell of cells)
      expect(far.accuracy.levelSdM[cell]! / near.accuracy.levelSdM[cell]!).toBeCloseTo(2 ** H, 4)
  })

  it('fewer than eight points with others all around do not tell how rough the ground is', () => {
    const few = levelsAt(
      lattice(3, 3),
      Array.from({ length: 9 }, (_, at) => (at % 2) / 10),
    )
    expect(known(few, 1, errorsOf(0.01)).accuracy.from.roughnessM).toBeUndefined()
  })

  it('stations set by eye where the ground bends do not tell it either', () => {
    const survey: ProfileSurvey = {
      kind: 'profile',
      distancesAre: 'plan',
      stations: [0, 2, 5, 9, 10, 16, 18, 20, 25, 26, 30, 34].map((distanceM, at) => ({
        distanceM,
        levelM: 40 - distanceM / 3 + (at % 2),
      })),
      facesDeg: 90,
      widthM: 4,
    }
    expect(known(survey, 1, errorsOf(0.01)).accuracy.from.roughnessM).toBeUndefined()
  })
})

describe('the mean slope of a zone', () => {
  it(
    'on simulated ground misses by what is stated (Journel & Huijbregts 1978; JCGM 100:2008)',
    () => {
      const points = lattice(6, 3)
      const [CELL_M, ROUGH_M, RUNS] = [1, 0.08, 400]
      const flat = levelsAt(
        points,
        points.map(() => 0),
      )
      const { surface } = known(flat, CELL_M, errorsOf(0.01))
      const zone = innerCells(surface)
      const ends = zone.flatMap((cell) => {
        const { eastM, northM } = cellCentre(surface.frame, cell)
        return [
          { xM: eastM + 1, yM: northM },
          { xM: eastM - 1, yM: northM },
        ]
      })
      // Ends of neighbouring cells fall together; each place is simulated once.
      const key = ({ xM, yM }: Place) => `${xM.toFixed(3)} ${yM.toFixed(3)}`
      const places = [...new Map([...points, ...ends].map((place) => [key(place), place])).values()]
      const placeOf = new Map(places.map((place, at) => [key(place), at]))
      const ground = roughGround(places, coefficientOf(ROUGH_M), H)
      const normal = normals(9)
      const zoneOfCell = new Int16Array(surface.share.length).fill(-1)
      for (const cell of zone) zoneOfCell[cell] = 0
      const stated: number[] = []
      const misses = Array.from({ length: RUNS }, () => {
        const levelsM = ground(normal)
        const measuredM = points.map((place) => levelsM[placeOf.get(key(place))!]! + 0.01 * normal())
        const survey = levelsAt(points, measuredM)
        const { surface: seen, terrain, accuracy } = known(survey, CELL_M, errorsOf(0.01))
        const [error] = zoneSlopeErrors(
          { zoneOfCell, count: 1, surface: seen, slopeDeg: terrain.slopeDeg },
          {
            ground: survey,
            errors: errorsOf(0.01),
            accuracy: { ...accuracy, from: { ...accuracy.from, roughnessM: ROUGH_M } },
          },
        )
        stated.push(error!.meanDeg)
        const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length
        const seenEast = mean(
          zone.map(
            (cell) => -Math.tan(terrain.slopeDeg[cell]! / DEG) * Math.sin(terrain.aspectDeg[cell]! / DEG),
          ),
        )
        const trueEast = mean(
          zone.map(
            (_, at) =>
              -0.3 +
              (levelsM[placeOf.get(key(ends[2 * at]!))!]! - levelsM[placeOf.get(key(ends[2 * at + 1]!))!]!) /
                2,
          ),
        )
        return ((seenEast - trueEast) / (1 + 0.3 ** 2)) * DEG
      })
      const mean = stated.reduce((sum, one) => sum + one, 0) / RUNS
      const ratio = mean / rms(misses)
      expect(ratio).toBeGreaterThan(1 - tolerances.samplingErrorsOfMean * samplingError(RUNS))
      expect(ratio).toBeLessThan(1 + tolerances.samplingErrorsOfMean * samplingError(RUNS))
    },
    SLOW_MS,
  )
})
