import { describe, expect, it } from 'vitest'
import { toRadians } from '#core/units'
import { hayDavies } from '../../../src/core/sun/hay-davies'
import { directionTo, incidenceDeg, squareTo } from '../../../src/core/sun/sun-vector'

/** Radiation above the air, square to the sun, in all of pvlib's vectors [W/m²]. */
const ABOVE_AIR_W_PER_M2 = 1321.16558

describe('hayDavies', () => {
  it.each([
    [82.85457044, 66.71410338, 316.1949056, 40.46149818, 27.1775, 0],
    [10.56413562, 144.76567754, 939.95469881, 118.45831879, 102.9949, 72.813],
    [72.41687122, 287.04104128, 646.22886049, 62.03376265, 33.1909, 5.2071],
  ])(
    'pvlib test vectors (Hay & Davies 1980): sun at zenith %s° and azimuth %s°, beam %s, sky %s W/m²: %s W/m² on 40° facing south, %s of it from the ring',
    (zenith, azimuth, beam, sky, onSlope, fromRing) => {
      const sun = directionTo(azimuth, 90 - zenith)
      const { ringWPerM2, evenWPerM2 } = hayDavies(sky, beam / ABOVE_AIR_W_PER_M2, sun.up)
      const facing = Math.max(0, Math.cos(toRadians(incidenceDeg(squareTo(40, 180), sun))))
      expect(Math.abs(ringWPerM2 * facing - fromRing)).toBeLessThan(1e-4)
      const even = (evenWPerM2 * (1 + Math.cos(toRadians(40)))) / 2
      expect(Math.abs(ringWPerM2 * facing + even - onSlope)).toBeLessThan(1e-4)
    },
  )

  it('Hay & Davies 1980: without beam the sky is even, and level ground gets all of it either way', () => {
    expect(hayDavies(100, 0, 0.5)).toEqual({ ringWPerM2: 0, evenWPerM2: 100 })
    const { ringWPerM2, evenWPerM2 } = hayDavies(100, 0.6, 0.5)
    expect(ringWPerM2 * 0.5 + evenWPerM2).toBeCloseTo(100, 12)
  })
})
