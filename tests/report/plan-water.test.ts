import { describe, expect, it } from 'vitest'
import { loadTables } from '#io'
import { createDeriver, newPlan } from '#plan'
import { planView } from '#report'

const { places } = loadTables()

/** A bank that faces a direction, 10 m long and 2 m high. */
function bankView(facesDeg: number) {
  const plan = newPlan({
    name: 'Bank',
    ground: { kind: 'bank', lengthM: 10, riseM: 2, facesDeg, widthM: 12 },
    latitudeDeg: 52,
    longitudeDeg: 0,
    places,
  })
  const outcome = createDeriver(loadTables()).derive(plan)
  if (!outcome.ok) throw new Error('a plain bank is derived')
  return planView(plan, outcome.value)
}

describe('water that leaves, on the plan', () => {
  it.each([0, 90, 180, 270])(
    'exact solution: all the water of a plain bank facing %i° leaves that way',
    (facesDeg) => {
      const { leaving } = bankView(facesDeg).water
      const main = leaving[0]
      expect(main?.share).toBeGreaterThan(0.9)
      const offDeg = Math.abs((((main?.towardsDeg ?? NaN) - facesDeg + 540) % 360) - 180)
      expect(offDeg).toBeLessThan(1)
    },
  )
})
