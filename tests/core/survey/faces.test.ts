import { describe, expect, it } from 'vitest'
import { triangleOverlaps } from '#core/geometry'
import { surfaceFrom, type LevelsSurvey } from '#core/survey'
import { edge, levelAtM, said, spot, surfaceOf } from './survey-of'

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
