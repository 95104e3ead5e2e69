import { expect, it } from 'vitest'
import type { Obstacle, Plan } from '#plan'
import { found, planOn } from './plans'

const pipe = (ring: Obstacle['ring']): Obstacle => ({ id: 'pipe', kind: 'services', name: 'Gas pipe', ring })

/** Cautions about digging near services on any zone of a bank with this pipe. */
function warned(obstacle: Obstacle): boolean {
  const plan: Plan = planOn({ kind: 'bank', lengthM: 12, riseM: 3, facesDeg: 180, widthM: 20 })
  const { zones } = found({ ...plan, survey: { ...plan.survey, obstacles: [obstacle] } })
  return zones.some(({ cover }) =>
    cover.options.some(({ cautions }) => cautions.some(({ id }) => id === 'services-marked')),
  )
}

it('a pipe that crosses the bank with both ends outside it is warned of', () => {
  expect(
    warned(
      pipe([
        { eastM: -40, northM: 0 },
        { eastM: 40, northM: 0 },
      ]),
    ),
  ).toBe(true)
})

it('a pipe far aside is not', () => {
  expect(
    warned(
      pipe([
        { eastM: -40, northM: 60 },
        { eastM: 40, northM: 60 },
      ]),
    ),
  ).toBe(false)
})

/** Whether any zone of the bank is told that a house stands near for trees. */
function houseTold(kind: Obstacle['kind'], westM: number): boolean {
  const ring = [westM, westM + 6].flatMap((eastM) => [
    { eastM, northM: -3 },
    { eastM, northM: 3 },
  ])
  const [a, b, d, c] = ring
  const outline = [a, b, c, d].flatMap((corner) => (corner ? [corner] : []))
  const shed: Obstacle = { id: 'shed', kind, name: 'Shed', ring: outline, heightM: 3, groundM: 0 }
  const plan: Plan = planOn({ kind: 'bank', lengthM: 12, riseM: 3, facesDeg: 180, widthM: 20 })
  const { zones } = found({ ...plan, survey: { ...plan.survey, cellM: 1, obstacles: [shed] } })
  return zones.some(({ cover }) =>
    cover.options.some(({ fitness }) =>
      fitness.lines.some(({ because }) => because.includes('close to a house')),
    ),
  )
}

it.each([
  ['house', 14, true],
  ['building', 14, true],
  ['building', 30, false],
  ['paving', 14, false],
] as const)(
  'a %s %s m east of the middle of a bank 20 m wide: trees are told of it, %s',
  (kind, westM, told) => {
    expect(houseTold(kind, westM)).toBe(told)
  },
)
