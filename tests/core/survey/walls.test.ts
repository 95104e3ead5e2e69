import { describe, expect, it } from 'vitest'
import { cellCentre, lineRails } from '#core/geometry'
import { surfaceFrom } from '#core/survey'
import { edge, levelAtM, said, spot, surfaceOf, volumeM3, wall } from './survey-of'

/** Ground at 0 m west of 10 m east and at 1 m east of it. */
const corners = [spot(0, 0, 0), spot(20, 0, 1), spot(20, 20, 1), spot(0, 20, 0)]
const straight = wall('w', [10, 0, 0, 1], [10, 20, 0, 1])

describe('walls', () => {
  it.each([
    ['between cells', 0.5],
    ['through the centres of cells', 0.8],
  ])('exact solution: a wall of 1 m steps in one cell when it runs %s', (_, cellM) => {
    const surface = surfaceOf({ kind: 'levels', points: corners, breaklines: [straight] }, { cellM })
    surface.share.forEach((share, cell) => {
      if (share === 0) return
      const { eastM } = cellCentre(surface.frame, cell)
      // A centre right on the line takes the lower ground.
      expect(surface.levelM[cell]).toBeCloseTo(eastM > 10 + 1e-9 ? 1 : 0, 9)
    })
    expect(surface.notes).toEqual([])
  })

  it('exact solution: left and right change with the direction the wall is drawn in', () => {
    const back = wall('w', [10, 20, 1, 0], [10, 0, 1, 0])
    const there = surfaceOf({ kind: 'levels', points: corners, breaklines: [straight] }, { cellM: 0.5 })
    const again = surfaceOf({ kind: 'levels', points: corners, breaklines: [back] }, { cellM: 0.5 })
    expect(again.levelM).toEqual(there.levelM)
    expect(volumeM3(there)).toBeCloseTo(10 * 20, 6)
  })

  it('exact solution: a raised bed holds its area times its height', () => {
    const bed = wall(
      'bed',
      [5, 5, 0.5, 0],
      [15, 5, 0.5, 0],
      [15, 12, 0.5, 0],
      [5, 12, 0.5, 0],
      [5, 5, 0.5, 0],
    )
    const level = corners.map((point) => ({ ...point, levelM: 0 }))
    const surface = surfaceOf({ kind: 'levels', points: level, breaklines: [bed] }, { cellM: 0.5 })
    expect(volumeM3(surface)).toBeCloseTo(10 * 7 * 0.5, 6)
  })

  it('lets a wall explain two levels at one place, and gives each to its side', () => {
    const measured = [spot(10, 8, 0.1, 'F'), spot(10, 8, 1.1, 'K'), spot(10, 14, 0.6)]
    const surface = surfaceOf(
      { kind: 'levels', points: [...corners, ...measured], breaklines: [straight] },
      { cellM: 0.5 },
    )
    expect(levelAtM(surface, { eastM: 9.9, northM: 8.1 })).toBeGreaterThan(0.08)
    expect(levelAtM(surface, { eastM: 10.1, northM: 8.1 })).toBeGreaterThan(1.08)
    expect(said(surface, 'snapped')).toEqual([
      'Row 5 (F) lies on the wall “w” and is taken as the level of the left side.',
      'Row 6 (K) lies on the wall “w” and is taken as the level of the right side.',
    ])
    expect(said(surface, 'left-out')).toEqual([
      'Row 7 lies on the wall “w” but its level of 0.6 m fits neither side (0 m on the left, 1 m on the right); it is left out.',
    ])
    const clash = surfaceFrom({
      kind: 'levels',
      points: [...corners, spot(10, 8, 0.1), spot(10, 8, 0.2)],
      breaklines: [straight],
    })
    expect(clash.ok || clash.problems.map(({ where }) => where)).toEqual(['survey.ground.points[5]'])
  })

  it('gives a level on a low kerb to both sides', () => {
    const kerb = wall('kerb', [10, 0, 0.5, 0.5], [10, 20, 0.5, 0.5])
    const surface = surfaceOf({ kind: 'levels', points: [...corners, spot(10, 5, 0.52)], breaklines: [kerb] })
    expect(said(surface, 'snapped')).toEqual([
      'Row 5 lies on the wall “kerb” and is taken as the level of both sides.',
    ])
  })

  it('exact solution: a line that ends on a wall stays on its own side', () => {
    const surface = surfaceOf(
      { kind: 'levels', points: corners, breaklines: [straight, edge('path', [2, 10, 0], [10, 10, 0.4])] },
      { cellM: 0.5 },
    )
    for (const northM of [9.9, 10.1]) expect(levelAtM(surface, { eastM: 9.9, northM })).toBeCloseTo(0, 9)
    expect(said(surface, 'snapped')).toEqual([
      'Corner 2 of “path” lies on the wall “w”; it is taken to the wall’s left side, at the wall’s level instead of its own 0.4 m.',
    ])
  })

  it('cuts a line that passes a wall, and leaves out one that runs along it', () => {
    const surface = surfaceOf(
      {
        kind: 'levels',
        points: corners,
        breaklines: [
          straight,
          edge('across', [2, 10, 0], [10, 10, 0], [18, 10, 1]),
          edge('along', [10, 2, 0], [10, 6, 0]),
        ],
      },
      { cellM: 0.5 },
    )
    expect(said(surface, 'snapped')).toHaveLength(1)
    expect(said(surface, 'snapped')[0]).toContain('the line is cut there')
    expect(said(surface, 'left-out')).toHaveLength(2)
    expect(volumeM3(surface)).toBeCloseTo(10 * 20, 6)
  })
})

describe('rails beside a line', () => {
  it('exact solution: round a square the rails are squares 2 m smaller and larger', () => {
    const square = [
      { eastM: 0, northM: 0 },
      { eastM: 10, northM: 0 },
      { eastM: 10, northM: 10 },
      { eastM: 0, northM: 10 },
    ]
    const { left, right } = lineRails(square, 1, true)
    const [inner, outer] = [left[2]!, right[2]!]
    expect(
      [inner.eastM, inner.northM, outer.eastM, outer.northM].map((value) => Number(value.toFixed(9))),
    ).toEqual([9, 9, 11, 11])
    expect(() => lineRails(square.slice(0, 1), 1, false)).toThrow(RangeError)
    expect(() => lineRails(square, 0, false)).toThrow(RangeError)
  })
})
