import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { clipRing, ringAreaM2, sharedAreaM2, type Ring } from '#core/geometry'
import { surfaceFrom, type GroundSurvey, type SurfaceOptions } from '#core/survey'
import { planM2, said, spot, surfaceOf } from './survey-of'

const ring = (...corners: [number, number][]): Ring => corners.map(([eastM, northM]) => ({ eastM, northM }))
const square: GroundSurvey = {
  kind: 'levels',
  points: [spot(0, 0, 0), spot(20, 0, 2), spot(20, 20, 2), spot(0, 20, 0)],
}
const grid = (levelsM: (number | null)[], columns: number): GroundSurvey => ({
  kind: 'grid',
  columns,
  rows: levelsM.length / columns,
  cellM: 2,
  westM: 0,
  southM: 0,
  levelsM,
})
const plain = grid(new Array<number>(100).fill(1), 10)

function whereOf(ground: GroundSurvey, options: SurfaceOptions) {
  const outcome = surfaceFrom(ground, options)
  return outcome.ok ? [] : outcome.problems.map(({ where, what }) => `${where}: ${what}`)
}

describe('holes', () => {
  const pond = ring([5.3, 5.1], [9.7, 6.2], [8.1, 10.4])

  it.each([
    ['spot levels', square],
    ['a grid', plain],
  ])('exact solution: a plot of %s loses the area of its ponds', (_, ground) => {
    const bed = ring([12, 12], [15, 12], [15, 13], [13, 13], [13, 16], [12, 16])
    const surface = surfaceOf(ground, { holes: [pond, bed] })
    expect(planM2(surface)).toBeCloseTo(400 - ringAreaM2(pond) - 6, 6)
    expect(surface.holes).toEqual([pond, bed])
  })

  it('exact solution: a house that stands across a bent boundary takes only what is inside', () => {
    const boundary = ring([1, 1], [18, 2], [13.3, 9.1], [17, 18], [2, 16])
    const house = ring([11, 6], [19, 7], [18, 13], [10, 11])
    const surface = surfaceOf(square, { boundary, holes: [house], cellM: 0.5 })
    // The house has no hollow, so clipping the boundary by it gives what they share.
    const sharedM2 = ringAreaM2(clipRing(boundary, house))
    expect(sharedAreaM2(boundary, house)).toBeCloseTo(sharedM2, 9)
    expect(planM2(surface)).toBeCloseTo(ringAreaM2(boundary) - sharedM2, 6)
  })

  it('exact solution: two holes that cut one cell both count', () => {
    const halves = [
      ring([4.1, 4], [4.4, 4], [4.4, 8], [4.1, 8]),
      ring([4.5, 4], [4.9, 4], [4.9, 8], [4.5, 8]),
    ]
    expect(planM2(surfaceOf(square, { holes: halves, cellM: 1 }))).toBeCloseTo(400 - 4 * 0.7, 9)
  })

  it('second method: the area two outlines share is that of clipping when one has no hollow', () => {
    const corner = fc.tuple(
      fc.double({ min: 0, max: 9, noNaN: true }),
      fc.double({ min: 0, max: 9, noNaN: true }),
    )
    fc.assert(
      fc.property(corner, corner, corner, (one, two, three) => {
        const window = ring(one, two, three)
        const star = ring([1, 1], [5, 4], [9, 2], [6, 6], [8, 9], [4, 7], [0, 8], [3, 5])
        fc.pre(ringAreaM2(window) > 0.01)
        expect(sharedAreaM2(star, window)).toBeCloseTo(ringAreaM2(clipRing(star, window)), 6)
        expect(sharedAreaM2(window, star)).toBeCloseTo(ringAreaM2(clipRing(star, window)), 6)
      }),
    )
  })

  it('refuses holes outside, over everything, over one another, and unsound ones', () => {
    expect(whereOf(square, { holes: [ring([30, 30], [40, 30], [40, 40])] })).toEqual([
      'survey.holes[0]: Hole 1 lies outside the plot.',
    ])
    expect(whereOf(plain, { holes: [ring([-1, -1], [30, -1], [30, 30], [-1, 30])] })).toEqual([
      'survey.holes[0]: Hole 1 covers the whole plot, so no ground is left.',
    ])
    expect(whereOf(square, { holes: [pond, ring([6, 6], [8, 6], [7, 9])] })).toEqual([
      'survey.holes[1]: Holes 1 and 2 overlap.',
    ])
    expect(whereOf(square, { holes: [pond, ring([12, 12], [14, 14], [14, 12], [12, 14])] })[0]).toContain(
      'survey.holes[1]: Hole 2 crosses itself: the side from corner 1 to 2 cuts the side from corner 3 to 4',
    )
  })
})

describe('outlines with spare corners', () => {
  it('takes out repeated corners and spikes and says which', () => {
    const boundary = ring([1, 1], [1, 1], [19, 1], [19, 19], [1, 19], [1, 25], [1, 19], [1, 1.0005])
    const surface = surfaceOf(square, { boundary })
    expect(surface.boundary).toEqual(ring([1, 1], [19, 1], [19, 19], [1, 19]))
    expect(said(surface, 'merged')).toEqual([
      'Corner 2 of the boundary repeats the one beside it and is taken out.',
      'Corner 7 of the boundary repeats the one beside it and is taken out.',
      'Corner 8 of the boundary repeats the one beside it and is taken out.',
    ])
    expect(said(surface, 'spike')).toEqual([
      'Corner 6 of the boundary is a spike, where the line doubles back; it is taken out.',
    ])
    expect(planM2(surface)).toBeCloseTo(18 * 18, 6)
  })

  it('counts corners as they were drawn when sides cross', () => {
    const crossed = ring([1, 1], [1, 1], [19, 19], [19, 1], [1, 19])
    expect(whereOf(square, { boundary: crossed })[0]).toContain(
      'from corner 1 to 3 cuts the side from corner 4 to 5',
    )
  })
})

describe('islands of a grid', () => {
  const islands = grid([1, 1, null, 1, 1, 1, null, null, null, null, null, 1], 4)

  it('names each island that is left out, with its area', () => {
    const surface = surfaceOf(islands)
    expect(planM2(surface)).toBe(4 * 4)
    expect(said(surface, 'left-out')).toEqual([
      'An island of levels near 7 m east, 5 m north (4 m²) does not touch the rest and is left out. Draw a boundary round both to keep it.',
      'An island of levels near 7 m east, 1 m north (4 m²) does not touch the rest and is left out. Draw a boundary round both to keep it.',
    ])
  })

  it('exact solution: inside a drawn boundary every island is kept', () => {
    const surface = surfaceOf(islands, { boundary: ring([0, 0], [8, 0], [8, 6], [0, 6]) })
    expect(planM2(surface)).toBe(6 * 4)
    expect(surface.notes).toEqual([])
  })

  it('counts the smaller ones together', () => {
    const dots = Array.from({ length: 51 * 3 }, (_, cell) => (cell % 2 === 0 ? 1 : null))
    const notes = said(surfaceOf(grid([...dots, ...new Array<number>(51).fill(1)], 51)), 'left-out')
    expect(notes).toHaveLength(11)
    expect(notes[10]).toContain('smaller islands of levels')
  })
})

describe('cells', () => {
  it('exact solution: a grid of 1000 × 1000 keeps its cells, a larger one is joined and says so', () => {
    const large = { ...plain, columns: 1000, rows: 1000, levelsM: new Array<number>(1e6).fill(2) }
    const surface = surfaceOf(large)
    expect([surface.frame.columns, surface.frame.rows, surface.frame.cellM]).toEqual([1000, 1000, 2])
    expect(surface.notes).toEqual([])
    const larger = { ...plain, columns: 1002, rows: 1000, levelsM: new Array<number>(1_002_000).fill(2) }
    const joined = surfaceOf(larger)
    expect([joined.frame.columns, joined.frame.rows, joined.frame.cellM]).toEqual([501, 500, 4])
    expect(said(joined, 'merged')[0]).toContain('blocks of 2 × 2 are joined to cells of 4 m')
  })

  it('exact solution: up to a million cells when asked for, never more', () => {
    const surface = surfaceOf(square, { cellM: 0.02 })
    expect(surface.frame.columns * surface.frame.rows).toBe(1_000_000)
    surface.share.forEach((share, cell) => {
      if (share > 0 && cell % 997 === 0)
        expect(surface.levelM[cell]).toBeCloseTo((((cell % 1000) + 0.5) * 0.02) / 10, 9)
    })
    expect(whereOf(square, { cellM: 0.015 })[0]).toContain('the most is 1000000')
  })
})
