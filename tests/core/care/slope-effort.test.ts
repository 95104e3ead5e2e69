import { describe, expect, it } from 'vitest'
import { roundTripPenalty, walkingSpeedKmh } from '#core/care'
import { truth } from './tables'

describe('walking a slope', () => {
  it('Tobler 1993: 5.04 km/h on the level, 6 km/h at most, 5 % downhill', () => {
    expect(walkingSpeedKmh(0)).toBeCloseTo(truth.tobler.flatKmh, 2)
    expect(walkingSpeedKmh(-0.05)).toBe(6)
    expect(walkingSpeedKmh(0.3)).toBeLessThan(walkingSpeedKmh(-0.3))
  })

  it.each(truth.tobler.roundTrip)(
    'Tobler 1993: there and back at $deg° takes $ratio times as long',
    ({ deg, ratio }) => {
      expect(Math.abs(roundTripPenalty(deg) - ratio)).toBeLessThan(0.005)
    },
  )

  it('is 1 on the level and only grows', () => {
    expect(roundTripPenalty(0)).toBeCloseTo(1, 12)
    for (let deg = 1; deg < 45; deg++)
      expect(roundTripPenalty(deg)).toBeGreaterThan(roundTripPenalty(deg - 1))
  })

  it('refuses what is no slope', () => {
    expect(() => roundTripPenalty(90)).toThrow(/0 to below 90°, got 90|0 to below 90, got 90/)
    expect(() => roundTripPenalty(-1)).toThrow(RangeError)
    expect(() => walkingSpeedKmh(NaN)).toThrow(/must be finite/)
  })
})
