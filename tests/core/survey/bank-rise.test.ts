import { describe, expect, it } from 'vitest'
import { riseFromAngleM, riseFromPercentM, riseFromRatioM } from '#core/survey'
import { truth } from '../terrain/truth'

describe('rise of a bank', () => {
  it.each(truth.gradients)(
    'trigonometry: 20 m at 1 in $runPerRise, $percent % or $slopeDeg° rise alike',
    (row) => {
      const riseM = 20 * Math.sin((row.slopeDeg * Math.PI) / 180)
      expect(riseFromAngleM(20, row.slopeDeg)).toBeCloseTo(riseM, 9)
      expect(riseFromRatioM(20, row.runPerRise)).toBeCloseTo(riseM, 3)
      expect(riseFromPercentM(20, row.percent)).toBeCloseTo(riseM, 3)
    },
  )

  it('exact solution: 13 m at 5 in 12 rise 5 m', () => {
    expect(riseFromRatioM(13, 12 / 5)).toBeCloseTo(5, 12)
    expect(riseFromPercentM(13, 500 / 12)).toBeCloseTo(5, 12)
  })

  it('refuses what no bank can be', () => {
    expect(() => riseFromAngleM(-1, 10)).toThrow(RangeError)
    expect(() => riseFromAngleM(1, 91)).toThrow(RangeError)
    expect(() => riseFromRatioM(1, 0)).toThrow(RangeError)
    expect(() => riseFromPercentM(1, -5)).toThrow(RangeError)
  })
})
