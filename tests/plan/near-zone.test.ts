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
