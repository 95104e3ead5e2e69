import { describe, expect, it } from 'vitest'
import { cellCentre } from '#core/geometry'
import { surfaceFrom } from '#core/survey'
import { edge, levelAtM, said, spot, surfaceOf, volumeM3 } from './survey-of'

/** A bank 20 m wide that falls 2 m between a top edge at 12 m north and a foot at 8 m, surveyed at few points. */
const top = 12
const toe = 8
const bankM = (northM: number) => Math.max(0, Math.min(2, ((northM - toe) / (top - toe)) * 2))
const corners = [spot(0, 0, 0), spot(20, 0, 0), spot(20, 20, 2), spot(0, 20, 2)]
const lines = [edge('top', [0, top, 2], [20, top, 2]), edge('toe', [20, toe, 0], [0, toe, 0])]

describe('breaklines', () => {
  it('exact solution: a bank between its top and toe lines has the right level in every cell', () => {
    const surface = surfaceOf({ kind: 'levels', points: corners, breaklines: lines }, { cellM: 0.25 })
    surface.share.forEach((share, cell) => {
      if (share === 0) return
      expect(surface.levelM[cell]).toBeCloseTo(bankM(cellCentre(surface.frame, cell).northM), 9)
    })
    // End areas: half the width of a 4 m face 2 m high, and the 8 m of level top, over 20 m.
    expect(volumeM3(surface)).toBeCloseTo(20 * ((4 * 2) / 2 + 8 * 2), 6)
  })

  it('exact solution: without the lines the same corners make one plane, and the crest is lost', () => {
    const surface = surfaceOf({ kind: 'levels', points: corners }, { cellM: 0.25 })
    expect(levelAtM(surface, { eastM: 10.1, northM: 12.1 })).toBeCloseTo(12.125 / 10, 9)
  })

  it('exact solution: a roof-shaped prism holds half its box, the level of a crest without levels read beside it', () => {
    const eaves = [0, 4, 10].flatMap((eastM) => [spot(eastM, 0, 0), spot(eastM, 6, 0)])
    const ridge = edge('ridge', [0, 3, 3], [10, 3, 3])
    const box = { cellM: 0.1 }
    const crossing = edge('across', [5, 1], [5, 5])
    const surface = surfaceOf({ kind: 'levels', points: eaves, breaklines: [ridge, crossing] }, box)
    expect(volumeM3(surface)).toBeCloseTo((10 * 6 * 3) / 2, 6)
    expect(said(surface, 'split')).toEqual(['“across” and “ridge” cross; both are split there, at 3 m.'])
    expect(said(surface, 'disagreement')).toEqual([])
  })

  it('names lines that disagree where they cross, and takes the mean', () => {
    const surface = surfaceOf({
      kind: 'levels',
      points: corners.map((point) => ({ ...point, levelM: 1 })),
      breaklines: [edge('a', [2, 10, 1], [18, 10, 1]), edge('b', [10, 2, 1], [10, 18, 1.5])],
    })
    expect(said(surface, 'disagreement')).toEqual([
      'Where they cross, “a” has 1 m and “b” 1.25 m; 1.125 m is used.',
    ])
  })

  it('takes points into lines, joins corners with points, and says so', () => {
    const surface = surfaceOf({
      kind: 'levels',
      points: [...corners, spot(5, top, 2, 'T1'), spot(9, top + 0.0005, 2.2)],
      breaklines: [edge('top', [0, top, 2], [9, top, 2], [20, top, 2], [20, top, 2])],
    })
    // With 2.2 m at its second corner the line rises to 2 + 0.2 × 5/9 m.
    expect(said(surface, 'snapped')).toEqual([
      'Row 5 (T1) lies on “top”, which now goes through it; the line had 2.111 m there, 2 m holds.',
    ])
    expect(said(surface, 'merged')).toEqual([
      'Corner 4 of “top” repeats the one beside it and is taken out.',
      'Corner 2 of “top” lies within 1 mm of row 6 and is joined to it.',
    ])
    expect(said(surface, 'disagreement')).toEqual([
      'Corner 2 of “top” has the level 2 m, but 2.2 m is used at its place, where row 6 lies too.',
    ])
  })

  it('takes out spikes and lines of no length, and corners that nothing gives a level', () => {
    const surface = surfaceOf({
      kind: 'levels',
      points: corners,
      breaklines: [
        edge('spiky', [2, 2], [9, 2], [4, 2], [4, 6]),
        edge('dot', [3, 3, 1], [3, 3.0001, 1]),
        edge('far', [10, 10], [10, 40]),
      ],
    })
    expect(said(surface, 'spike')).toEqual([
      'Corner 2 of “spiky” is a spike, where the line doubles back; it is taken out.',
    ])
    expect(said(surface, 'left-out')).toEqual([
      'The line “dot” has no length and is left out.',
      'Corner 2 of “far” has no level of its own and lies beyond the levels measured; it is left out.',
    ])
  })

  it('joins a place measured twice, and refuses two levels there, far from any wall', () => {
    const twice = surfaceOf({ kind: 'levels', points: [...corners, spot(4, 4, 1), spot(4, 4.0006, 1.004)] })
    expect(said(twice, 'merged')).toEqual([
      'Rows 5 and 6 are one place measured twice; their mean is used, 1.002 m.',
    ])
    const two = surfaceFrom({
      kind: 'levels',
      points: [...corners, spot(4, 4, 1), spot(4, 4, 1.5)],
      breaklines: lines,
    })
    expect(two.ok || two.problems.map(({ where }) => where)).toEqual(['survey.ground.points[5]'])
  })

  it('lists a hundred notes of a kind and counts the rest', () => {
    const points = Array.from({ length: 130 }, (_, at) => spot(at, (at * 7) % 13, 0))
    const surface = surfaceOf({ kind: 'levels', points: [...points, ...points] })
    const merged = said(surface, 'merged')
    expect(merged).toHaveLength(101)
    expect(merged[100]).toBe('30 more places were joined.')
  })

  it('prismoidal formula: a frustum from 10 × 10 m to 5 × 5 m, 12 m high, holds 700 m³, to 0.1 %', () => {
    const square = (halfM: number, levelM: number): [number, number, number][] => [
      [-halfM, -halfM, levelM],
      [halfM, -halfM, levelM],
      [halfM, halfM, levelM],
      [-halfM, halfM, levelM],
      [-halfM, -halfM, levelM],
    ]
    const ridges = [0, 1, 2, 3].map((at) => edge(`ridge ${at}`, square(5, 0)[at]!, square(2.5, 12)[at]!))
    const points = square(5, 0)
      .slice(0, 4)
      .map(([eastM, northM, levelM]) => spot(eastM, northM, levelM))
    const surface = surfaceOf(
      { kind: 'levels', points, breaklines: [...ridges, edge('top', ...square(2.5, 12))] },
      { cellM: 0.05 },
    )
    expect(Math.abs(volumeM3(surface) - 700)).toBeLessThan(0.7)
  })

  it('exact solution: levelling a 10 m square at 20 % cuts and fills w² × w g / 8 = 25 m³, a line across it or not', () => {
    const tilted = [spot(0, 0, 0), spot(10, 0, 2), spot(10, 10, 2), spot(0, 10, 0)]
    for (const breaklines of [[], [edge('across', [1, 2], [9, 7.3])]]) {
      const { share, levelM, frame } = surfaceOf(
        { kind: 'levels', points: tilted, breaklines },
        { cellM: 0.5 },
      )
      const sumM3 = (height: (riseM: number) => number) =>
        share.reduce((sum, part, cell) => sum + part * height(levelM[cell]! - 1), 0) * frame.cellM ** 2
      expect(sumM3((riseM) => Math.max(0, riseM))).toBeCloseTo(25, 9)
      expect(sumM3((riseM) => Math.max(0, -riseM))).toBeCloseTo(25, 9)
    }
  })
})
