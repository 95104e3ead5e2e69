import { describe, expect, it } from 'vitest'
import { heatLoad } from '#core/sun'

describe('heatLoad', () => {
  it.each([
    [52, 0, 0, 0.6108],
    [52, 20, 225, 0.804],
    [52, 20, 45, 0.3582],
    [46, 20, 25, 0.4609],
    [40, 30, 225, 0.9806],
  ])('McCune & Keon 2002 equation 1: %s° north, %s° to %s°: %s', (latitude, slope, aspect, load) => {
    expect(heatLoad(latitude, slope, aspect)).toBeCloseTo(load, 4)
  })

  it('McCune & Keon 2002: on level ground the direction does not matter', () => {
    for (const aspect of [0, 45, 130, 225, 359])
      expect(heatLoad(50, 0, aspect)).toBeCloseTo(heatLoad(50, 0, 0), 12)
  })

  it('common practice, no source: south of the equator the north-west is the warm side, by as much', () => {
    expect(heatLoad(-37, 20, 315)).toBeCloseTo(heatLoad(37, 20, 225), 12)
    expect(heatLoad(-37, 20, 315)).toBeGreaterThan(heatLoad(-37, 20, 135))
  })

  it('refuses latitudes and slopes beyond the method', () => {
    expect(() => heatLoad(65, 10, 0)).toThrow(/latitude \[°\] must be from -60 to 60, got 65/)
    expect(() => heatLoad(50, -1, 0)).toThrow(RangeError)
    expect(() => heatLoad(50, 95, 0)).toThrow(RangeError)
  })
})
