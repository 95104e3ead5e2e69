import { describe, expect, it } from 'vitest'
import { degToGradient, gradientToDeg, slopeAreaFactor } from '#core/units'
import { truth } from '../terrain/truth'

describe('gradients and angles', () => {
  it.each(truth.gradients)('trigonometry: 1 in $runPerRise is $percent % and $slopeDeg°', (row) => {
    expect(gradientToDeg(1 / row.runPerRise)).toBeCloseTo(row.slopeDeg, 4)
    expect(gradientToDeg(row.percent / 100)).toBeCloseTo(row.slopeDeg, 4)
    expect(degToGradient(row.slopeDeg)).toBeCloseTo(1 / row.runPerRise, 4)
  })

  it.each(truth.areaFactors)('trigonometry: ground of $slopeDeg° is $factor times its plan', (row) => {
    expect(slopeAreaFactor(row.slopeDeg)).toBeCloseTo(row.factor, 6)
  })

  it('refuses upright ground', () => {
    expect(() => degToGradient(90)).toThrow(RangeError)
    expect(() => slopeAreaFactor(90)).toThrow(RangeError)
    expect(() => gradientToDeg(Infinity)).toThrow(RangeError)
  })
})
