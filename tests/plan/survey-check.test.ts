import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openPlan } from '#plan'

type Loose = Record<string, unknown>

const bank = readFileSync(
  join(import.meta.dirname, '../../data/demos/bank-below-the-house.lynchet.json'),
  'utf8',
)

/** Where the problems of the demo lie when its survey holds something else. */
function problemsOf(changes: Loose): string[] {
  const plan = JSON.parse(bank) as Loose & { survey: Loose }
  const opened = openPlan(JSON.stringify({ ...plan, survey: { ...plan.survey, ...changes } }))
  return opened.ok ? [] : opened.problems.map(({ where, what }) => `${where}: ${what}`)
}

const place = (eastM: number, northM: number) => ({ eastM, northM })
const level = (eastM: number, northM: number) => ({ eastM, northM, levelM: 0 })
const points = [level(0, 0), level(20, 0), level(20, 20), level(0, 20)]
const boundary = points.map(({ eastM, northM }) => place(eastM, northM))

describe('a survey that contradicts itself', () => {
  it('names ids used twice', () => {
    const line = { id: 'a', kind: 'top', vertices: [place(0, 0), place(5, 5)] }
    const view = { id: 'v', name: 'Kitchen', kind: 'window', at: place(1, 1), eyeM: 1.5 }
    const cut = { id: 's', name: 'B', from: place(0, 0), to: place(9, 9) }
    const next = { id: 'n', name: 'Lane', from: place(0, 0), to: place(9, 0), what: 'road' }
    expect(
      problemsOf({
        ground: { kind: 'levels', points, breaklines: [line, line] },
        viewpoints: [view, view],
        sections: [cut, cut],
        beyond: [next, next],
      }),
    ).toEqual([
      'plan › survey › beyond, row 2: The id “n” is used by another stretch.',
      'plan › survey › viewpoints, row 2: The id “v” is used by another viewpoint.',
      'plan › survey › sections, row 2: The id “s” is used by another section.',
      'plan › survey › ground › breaklines, row 2: The id “a” is used by another line.',
    ])
  })

  it('names triangles of rows that are not there, and walls of one place', () => {
    const corner = { ...place(3, 3), leftM: 0, rightM: 1 }
    const breaklines = [{ id: 'w', kind: 'wall', vertices: [corner, corner] }]
    const faces = [
      [0, 1, 2],
      [0, 2, 4],
    ]
    expect(problemsOf({ ground: { kind: 'levels', points, breaklines, faces } })).toEqual([
      'plan › survey › ground › breaklines, row 1: All corners of the line “w” lie at one place.',
      'plan › survey › ground › faces, row 2: The triangle names a row beyond the survey’s 4 levels.',
    ])
  })

  it('names holes outside the boundary, and lets one across it be', () => {
    const ground = { kind: 'levels', points }
    const away = [place(30, 30), place(40, 30), place(40, 40)]
    const across = [place(18, 5), place(25, 5), place(25, 9)]
    expect(problemsOf({ ground, boundary, holes: [across, away] })).toEqual([
      'plan › survey › holes, row 2: Hole 2 lies outside the plot.',
    ])
    expect(problemsOf({ ground, boundary, holes: [across] })).toEqual([])
    expect(problemsOf({ ground, holes: [across] })).toEqual([])
  })
})
