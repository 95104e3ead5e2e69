import { describe, expect, it } from 'vitest'
import { triangleOverlaps } from '#core/geometry'
import { surfaceFrom, type LevelsSurvey } from '#core/survey'
import { edge, levelAtM, planM2, said, spot, surfaceOf } from './survey-of'

const square = [spot(0, 0, 0), spot(10, 0, 0), spot(10, 10, 4), spot(0, 10, 0)]
const given = (
  faces: NonNullable<LevelsSurvey['faces']>,
  more: Partial<LevelsSurvey> = {},
): LevelsSurvey => ({
  kind: 'levels',
  points: square,
  faces,
  ...more,
})

describe('triangles that come with a survey', () => {
  it('exact solution: either diagonal of a square gives its own ground', () => {
    const near = surfaceOf(
      given([
        [0, 1, 3],
        [2, 1, 3],
      ]),
      { cellM: 0.5 },
    )
    const far = surfaceOf(
      given([
        [0, 1, 2],
        [3, 2, 0],
      ]),
      { cellM: 0.5 },
    )
    expect(levelAtM(near, { eastM: 4.9, northM: 4.9 })).toBeCloseTo(0, 9)
    expect(levelAtM(far, { eastM: 4.9, northM: 4.9 })).toBeCloseTo((4.75 / 10) * 4, 9)
    expect([...near.notes, ...far.notes]).toEqual([])
  })

  it('says what it left out: triangles without area, rows without a triangle, lines', () => {
    const surface = surfaceOf(
      given(
        [
          [0, 1, 3],
          [2, 1, 3],
          [0, 0, 1],
        ],
        {
          points: [...square, spot(5, 5, 9, 'P')],
          breaklines: [edge('top', [0, 0, 0], [10, 10, 4])],
        },
      ),
    )
    expect(said(surface, 'left-out')).toEqual([
      '1 of the survey’s 3 triangles have no area and are left out.',
      'No triangle of the survey uses row 5 (P); left out of the surface.',
      'The survey came with its own triangles, which are used as they are: its 1 lines are drawn but bend no triangle.',
    ])
  })

  it('names triangles that lie over one another', () => {
    const surface = surfaceOf(
      given([
        [0, 1, 3],
        [2, 1, 3],
        [0, 1, 2],
      ]),
    )
    expect(said(surface, 'overlap')).toHaveLength(2)
    expect(said(surface, 'overlap')[0]).toContain('Triangles 1, 2 and 4 and 1, 2 and 3')
    const { tin } = surface
    expect(triangleOverlaps(tin!, 9)).toEqual([
      [0, 2],
      [1, 2],
    ])
    expect(triangleOverlaps(tin!, 1)).toHaveLength(1)
  })

  it('exact solution: the plot is what the triangles cover, without their gaps, and with what a boundary adds', () => {
    const frame = [
      ...[
        [0, 0],
        [9, 0],
        [9, 9],
        [0, 9],
        [3, 3],
        [6, 3],
        [6, 6],
        [3, 6],
      ].map(([eastM, northM]) => spot(eastM!, northM!, 1)),
      spot(20, 0, 1),
      spot(24, 0, 1),
      spot(20, 4, 1),
    ]
    const faces: NonNullable<LevelsSurvey['faces']> = [
      ...[0, 1, 2, 3].flatMap((at): [number, number, number][] => [
        [at, (at + 1) % 4, 4 + at],
        [(at + 1) % 4, 4 + ((at + 1) % 4), 4 + at],
      ]),
      [8, 9, 10],
    ]
    const ground: LevelsSurvey = { kind: 'levels', points: frame, faces }
    const surface = surfaceOf(ground)
    expect(planM2(surface)).toBeCloseTo(81 - 9, 6)
    expect(said(surface, 'left-out')).toEqual([
      'A part of the survey’s triangles near 20 m east, 0 m north (8 m²) does not touch the rest and is left out.',
      'A gap in the survey’s triangles near 6 m east, 3 m north (9 m²) is no ground unless a boundary or holes are drawn.',
    ])
    expect(planM2(surfaceOf(ground, { holes: [] }))).toBeCloseTo(81, 6)
    const boundary = surface.boundary
    expect(planM2(surfaceOf(ground, { boundary }))).toBeCloseTo(81, 6)
  })

  it('refuses rows that are not there, and triangles none of which has area', () => {
    const stray = surfaceFrom(
      given([
        [0, 1, 3],
        [0, 1, 4],
        [7, 8, 9],
      ]),
    )
    expect(stray.ok || stray.problems[0]?.where).toBe('survey.ground.faces[1]')
    expect(stray.ok || stray.problems[0]?.what).toContain('1 more')
    const flat = surfaceFrom(given([[0, 0, 1]]))
    expect(flat.ok || flat.problems[0]?.where).toBe('survey.ground.faces')
  })
})
