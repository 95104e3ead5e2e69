import { expect, it } from 'vitest'
import { coldAirC } from '#core/climate'

it('Hocevar & Martsolf 1971: 6.2 °C in 100 m, half of it felt at an open foot', () => {
  expect(coldAirC(50, 0)).toBeCloseTo(6.2 * 0.5 * 0.5, 9)
})

it('is coldest at the foot and gone from half way up (common practice, no source)', () => {
  expect(coldAirC(20, 0)).toBeGreaterThan(coldAirC(20, 0.3))
  expect(coldAirC(20, 0.5)).toBe(0)
  expect(coldAirC(0, 0)).toBe(0)
})

it('refuses places that are none', () => {
  expect(() => coldAirC(-1, 0)).toThrow(RangeError)
  expect(() => coldAirC(1, 1.2)).toThrow(RangeError)
})
