import { describe, expect, it } from 'vitest'
import { cellCentre, ringAreaM2, type Ring } from '#core/geometry'
import {
  groundSurveySchema,
  surfaceFrom,
  type GroundSurvey,
  type Surface,
  type SurfaceOptions,
} from '#core/survey'

function surface(ground: GroundSurvey, options: SurfaceOptions = {}): Surface {
  const outcome = surfaceFrom(ground, options)
  if (!outcome.ok) throw new Error(outcome.problems.map((problem) => problem.what).join(' '))
  return outcome.value
}

const planM2 = ({ share, frame }: Surface) => share.reduce((sum, part) => sum + part, 0) * frame.cellM ** 2
const ring = (...corners: [number, number][]): Ring => corners.map(([eastM, northM]) => ({ eastM, northM }))

/** Every cell of the plot with its centre and level. */
function levels(ground: Surface) {
  return [...ground.share.keys()]
    .filter((cell) => (ground.share[cell] ?? 0) > 0)
    .map((cell) => ({ ...cellCentre(ground.frame, cell), levelM: ground.levelM[cell] ?? NaN }))
}

describe('bank', () => {
  const bank = { kind: 'bank', lengthM: 13, riseM: 5, facesDeg: 180, widthM: 20 } as const

  it('exact solution: 13 m along the ground rising 5 m is 12 m on plan, around the origin', () => {
    const ground = surface(bank)
    expect(planM2(ground)).toBeCloseTo(240, 9)
    expect(ringAreaM2(ground.boundary)).toBeCloseTo(240, 9)
    expect(ground.facesDeg).toBeCloseTo(180, 9)
    for (const { northM, levelM } of levels(ground)) expect(levelM).toBeCloseTo((5 * (6 + northM)) / 12, 9)
  })

  it('common practice, no source: the first figure of a survey is highest less lowest', () => {
    const ground = surface({ ...bank, facesDeg: 77 })
    expect(ground.fallM).toBe(5)
    expect(ground.highestM - ground.lowestM).toBe(5)
  })

  it('exact solution: a garden gets some thousands of cells with round sides', () => {
    for (const [lengthM, widthM] of [
      [5, 8],
      [13, 20],
      [30, 45],
      [80, 60],
    ] as const) {
      const { frame } = surface({ ...bank, lengthM, widthM, riseM: lengthM / 4 })
      expect(frame.columns * frame.rows).toBeGreaterThan(1900)
      expect(frame.columns * frame.rows).toBeLessThan(13_500)
      expect([0.05, 0.1, 0.2, 0.25, 0.5, 1, 2, 5, 10]).toContain(frame.cellM)
    }
  })

  it('exact solution: however long and narrow, never more than 250,000 cells', () => {
    const { frame } = surface({ ...bank, lengthM: 2000, widthM: 2, facesDeg: 45 })
    expect(frame.columns * frame.rows).toBeLessThanOrEqual(250_000)
  })

  it('exact solution: cells of the side that was asked for, as many as cover the bank', () => {
    const { frame } = surface({ ...bank, facesDeg: 180 }, { cellM: 0.5 })
    expect(frame.cellM).toBe(0.5)
    expect(frame.columns).toBe(Math.ceil(bank.widthM / 0.5))
    const planLengthM = Math.sqrt(bank.lengthM ** 2 - bank.riseM ** 2)
    expect(frame.rows).toBe(Math.ceil(planLengthM / 0.5))
  })

  it('refuses a rise as long as the bank, and cells too fine or too coarse', () => {
    const upright = surfaceFrom({ ...bank, riseM: 13 })
    expect(upright.ok || upright.problems[0]?.where).toBe('survey.ground.riseM')
    for (const cellM of [0.001, 11, 0]) {
      const outcome = surfaceFrom(bank, { cellM })
      expect(outcome.ok || outcome.problems[0]?.where).toBe('survey.cellM')
    }
  })
})

describe('profile', () => {
  const profile: GroundSurvey = {
    kind: 'profile',
    distancesAre: 'plan',
    stations: [
      { distanceM: 0, levelM: 10 },
      { distanceM: 4, levelM: 9 },
      { distanceM: 10, levelM: 5 },
    ],
    facesDeg: 90,
    widthM: 8,
  }

  it('exact solution: levels run straight between stations', () => {
    const ground = surface(profile)
    expect(planM2(ground)).toBeCloseTo(80, 9)
    expect(ground.fallM).toBe(5)
    for (const { eastM, levelM } of levels(ground)) {
      const downM = eastM + 5
      expect(levelM).toBeCloseTo(downM <= 4 ? 10 - downM / 4 : 9 - ((downM - 4) * 4) / 6, 9)
    }
  })

  it('exact solution: tape lengths of 5 m falling 3 m are 4 m on plan', () => {
    const taped = surface({
      ...profile,
      distancesAre: 'slope',
      stations: [
        { distanceM: 10, levelM: 4 },
        { distanceM: 0, levelM: 10 },
        { distanceM: 5, levelM: 7 },
      ],
    })
    expect(planM2(taped)).toBeCloseTo(8 * 8, 9)
  })

  it('names the rows of a step, and a profile counted from the foot', () => {
    const step = surfaceFrom({
      ...profile,
      stations: [...profile.stations, { distanceM: 10, levelM: 3 }],
    })
    expect(step.ok || step.problems[0]?.what).toContain('Stations 3 and 4')
    const upwards = surfaceFrom({
      ...profile,
      stations: profile.stations.map(({ distanceM, levelM }) => ({ distanceM: 10 - distanceM, levelM })),
    })
    expect(upwards.ok || upwards.problems[0]?.what).toContain('higher than the first')
    const single = surfaceFrom({ ...profile, stations: profile.stations.slice(0, 1) })
    expect(single.ok || single.problems[0]?.what).toContain('at least 2')
  })
})

describe('levels', () => {
  const plane = (eastM: number, northM: number) => 20 + 0.1 * eastM - 0.25 * northM
  const point = (eastM: number, northM: number) => ({ eastM, northM, levelM: plane(eastM, northM) })
  const points = [point(0, 0), point(30, 2), point(28, 25), point(-3, 22), point(12, 11), point(20, 8)]

  it('exact solution: levels of a plane give that plane in every cell, in the hull and beyond it', () => {
    const drawn = ring([-4, -1], [31, -1], [30, 26], [-4, 24])
    for (const ground of [
      surface({ kind: 'levels', points }),
      surface({ kind: 'levels', points }, { boundary: drawn }),
    ])
      for (const { eastM, northM, levelM } of levels(ground))
        expect(levelM).toBeCloseTo(plane(eastM, northM), 8)
  })

  it('exact solution: the boundary is the hull when none is drawn', () => {
    const ground = surface({ kind: 'levels', points })
    expect(planM2(ground)).toBeCloseTo(ringAreaM2(ring([0, 0], [30, 2], [28, 25], [-3, 22])), 6)
    expect(ground.facesDeg).toBeCloseTo((Math.atan2(-0.1, 0.25) * 180) / Math.PI + 360, 6)
    expect(ground.fallM).toBeCloseTo(plane(30, 2) - plane(-3, 22), 9)
  })

  it('property: beyond the survey no level strays more than half the fall', () => {
    const ground = surface(
      { kind: 'levels', points: [...points, { eastM: 30.2, northM: 13, levelM: 40 }] },
      { boundary: ring([-7, -4], [34, -4], [34, 29], [-7, 29]) },
    )
    const [mostM, leastM] = [ground.highestM + ground.fallM / 2, ground.lowestM - ground.fallM / 2]
    for (const { levelM } of levels(ground)) {
      expect(levelM).toBeLessThanOrEqual(mostM)
      expect(levelM).toBeGreaterThanOrEqual(leastM)
    }
  })

  it('property: a closer survey gets finer cells', () => {
    const close = Array.from({ length: 40_000 }, (_, at) => point(at % 200, Math.floor(at / 200)))
    const { frame } = surface({ kind: 'levels', points: close })
    expect(frame.cellM).toBe(1)
  }, 60_000)

  it('names both rows of one place with two levels', () => {
    const twice = [...points, { eastM: 12, northM: 11, levelM: 3, mark: 'A7' }]
    const outcome = surfaceFrom({ kind: 'levels', points: twice })
    expect(outcome.ok).toBe(false)
    if (outcome.ok) return
    expect(outcome.problems[0]?.where).toBe('survey.ground.points[6]')
    expect(outcome.problems[0]?.what).toContain('Rows 5 and 7 (A7)')
    expect(surfaceFrom({ kind: 'levels', points: [...points, point(12, 11)] }).ok).toBe(true)
  })

  it('refuses points in one line and fewer than three', () => {
    const line = [0, 1, 2, 3].map((at) => point(at * 3, at * 5))
    const inLine = surfaceFrom({ kind: 'levels', points: line })
    expect(inLine.ok || inLine.problems[0]?.what).toContain('in one line')
    const few = surfaceFrom({ kind: 'levels', points: points.slice(0, 2) })
    expect(few.ok || few.problems[0]?.what).toContain('at least 3')
  })

  it.each([
    ['crosses itself', ring([0, 0], [20, 20], [20, 0], [0, 20])],
    ['do not meet', ring([500, 500], [520, 500], [520, 520])],
    ['was surveyed', ring([0, 0], [200, 0], [200, 200], [0, 200])],
    ['at least 3', ring([0, 0], [1, 1])],
    ['holds no area', ring([0, 0], [1, 1], [0, 0.0001])],
  ])('refuses a boundary that %s', (words, boundary) => {
    const outcome = surfaceFrom({ kind: 'levels', points }, { boundary })
    expect(outcome.ok).toBe(false)
    if (outcome.ok) return
    expect(outcome.problems[0]?.where).toBe('survey.boundary')
    expect(outcome.problems[0]?.what).toContain(words)
    expect(outcome.problems[0]?.mend.length).toBeGreaterThan(10)
  })
})

describe('grid', () => {
  const grid: GroundSurvey = {
    kind: 'grid',
    columns: 6,
    rows: 4,
    cellM: 2,
    westM: 0,
    southM: 0,
    levelsM: Array.from({ length: 24 }, (_, cell) => (cell === 0 ? null : 10 + Math.floor(cell / 6))),
  }

  it('exact solution: null levels lie outside', () => {
    const ground = surface(grid)
    expect(ground.share[0]).toBe(0)
    expect(planM2(ground)).toBe(23 * 4)
    expect(ground.tin).toBeUndefined()
    expect(ground.fallM).toBe(3)
    expect(ground.facesDeg).toBeCloseTo(0, 0)
  })

  it('exact solution: a boundary cuts cells and crops the grid', () => {
    const ground = surface(grid, { boundary: ring([3, 1], [9, 1], [9, 5], [3, 5]) })
    expect(planM2(ground)).toBeCloseTo(24, 9)
    expect(ground.frame).toEqual({ columns: 4, rows: 3, cellM: 2, westM: 2, southM: 0 })
  })

  it('exact solution: coarser cells are means of blocks', () => {
    const ground = surface(grid, { cellM: 4 })
    expect(ground.frame).toEqual({ columns: 3, rows: 2, cellM: 4, westM: 0, southM: 0 })
    expect(ground.levelM[1]).toBe(10.5)
    expect(ground.levelM[0]).toBeCloseTo(32 / 3, 9)
  })

  it('refuses a wrong count, an empty grid, a cell that does not fit and a boundary elsewhere', () => {
    const wrong = surfaceFrom({ ...grid, levelsM: grid.levelsM.slice(1) })
    expect(wrong.ok || wrong.problems[0]?.what).toContain('23 levels')
    const empty = surfaceFrom({ ...grid, levelsM: grid.levelsM.map(() => null) })
    expect(empty.ok || empty.problems[0]?.what).toContain('no level')
    const misfit = surfaceFrom(grid, { cellM: 3 })
    expect(misfit.ok || misfit.problems[0]?.where).toBe('survey.cellM')
    for (const boundary of [ring([90, 90], [99, 90], [99, 99]), ring([8, 4], [90, 4], [90, 90])]) {
      const elsewhere = surfaceFrom(grid, { boundary })
      expect(elsewhere.ok || elsewhere.problems[0]?.where).toBe('survey.boundary')
    }
  })
})

describe('the plan’s schema', () => {
  it('refuses a grid that holds more or fewer levels than cells', () => {
    const grid = { kind: 'grid', columns: 2, rows: 2, cellM: 1, westM: 0, southM: 0 }
    expect(groundSurveySchema.safeParse({ ...grid, levelsM: [1, 2, 3, null] }).success).toBe(true)
    const short = groundSurveySchema.safeParse({ ...grid, levelsM: [1, 2, 3] })
    expect(short.error?.issues.map(({ path, message }) => [path.join('.'), message])).toEqual([
      ['levelsM', 'the grid must hold columns × rows levels'],
    ])
  })
})
