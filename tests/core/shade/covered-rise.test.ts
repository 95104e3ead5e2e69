import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { coveredRise } from '#core/shade'
import { crown, rad, screen } from './things-scenes'

const at = (eastM: number, northM: number, levelM = 0) => ({ eastM, northM, levelM })
const rise = { low: NaN, high: NaN }

describe('coveredRise of a screen', () => {
  const wall = screen([-10, 5], [10, 5], 3)

  it.each([0, 30, -45, 60])(
    'plane geometry: a wall 3 m high, 5 m north, rises 3 / (5 / cos azimuth) at azimuth %s°',
    (azimuthDeg) => {
      expect(coveredRise(wall, at(0, 0), rad(azimuthDeg), rise)).toBe(true)
      expect(rise.low).toBe(-Infinity)
      expect(rise.high).toBeCloseTo((3 * Math.cos(rad(azimuthDeg))) / 5, 12)
    },
  )

  it('plane geometry: it stands between its ends and only ahead', () => {
    const endDeg = (Math.atan2(10, 5) * 180) / Math.PI
    expect(coveredRise(wall, at(0, 0), rad(endDeg - 0.001), rise)).toBe(true)
    expect(coveredRise(wall, at(0, 0), rad(endDeg + 0.001), rise)).toBe(false)
    expect(coveredRise(wall, at(0, 0), rad(180), rise)).toBe(false)
    expect(coveredRise(wall, at(0, 6), 0, rise)).toBe(false)
  })

  it('plane geometry: a sloping top is straight between its ends', () => {
    expect(coveredRise(screen([-10, 5], [10, 5], 2, 6), at(0, 0), rad(45), rise)).toBe(true)
    expect(rise.high).toBeCloseTo((2 + (4 * 15) / 20) / Math.hypot(5, 5), 12)
  })

  it('from above its top it is seen below the horizontal', () => {
    expect(coveredRise(wall, at(0, 0, 13), 0, rise)).toBe(true)
    expect(rise.high).toBeCloseTo(-2, 12)
  })

  it('covers all that is ahead of a place on it, nothing above one on its top, and nothing edge-on', () => {
    expect(coveredRise(wall, at(0, 5), 0, rise)).toBe(true)
    expect(rise.high).toBe(Infinity)
    expect(coveredRise(wall, at(0, 5, 4), 0, rise)).toBe(true)
    expect(rise.high).toBe(-Infinity)
    expect(coveredRise(wall, at(-20, 5), rad(90), rise)).toBe(false)
  })
})

describe('coveredRise of a crown', () => {
  it('exact solution: the tangents to a ball are its middle’s height, plus and minus asin(radius / distance)', () => {
    const [away, above, radius] = [12, 5, 3]
    expect(
      coveredRise(crown([away, 0], radius, above - radius, above + radius), at(0, 0), rad(90), rise),
    ).toBe(true)
    const middle = Math.atan2(above, away)
    const half = Math.asin(radius / Math.hypot(away, above))
    expect(rise.low).toBeCloseTo(Math.tan(middle - half), 12)
    expect(rise.high).toBeCloseTo(Math.tan(middle + half), 12)
  })

  it('exact solution: it stands in directions within asin(radius / distance) of its middle', () => {
    const egg = crown([0, 12], 3, 2, 9)
    const half = Math.asin(3 / 12)
    expect(coveredRise(egg, at(0, 0), half - 1e-6, rise)).toBe(true)
    expect(rise.high - rise.low).toBeLessThan(0.01)
    expect(coveredRise(egg, at(0, 0), half + 1e-6, rise)).toBe(false)
    expect(coveredRise(egg, at(0, 0), Math.PI, rise)).toBe(false)
  })

  it('exact solution: a flat disc overhead is covered from its near edge up', () => {
    const disc = crown([0, 0], 4, 6, 6)
    for (const azimuthDeg of [0, 77, 180, 300]) {
      expect(coveredRise(disc, at(0, 0), rad(azimuthDeg), rise)).toBe(true)
      expect(rise.low).toBeCloseTo(6 / 4, 12)
      expect(rise.high).toBe(Infinity)
    }
    expect(coveredRise(disc, at(0, -3), 0, rise)).toBe(true)
    expect(rise.low).toBeCloseTo(6 / 7, 12)
    expect(coveredRise(disc, at(0, -3), Math.PI, rise)).toBe(true)
    expect(rise.low).toBeCloseTo(6 / 1, 12)
  })

  it('a place in it sees nothing else; one above it has it below', () => {
    const egg = crown([0, 0], 4, 0, 6)
    expect(coveredRise(egg, at(1, 1, 2), 2, rise)).toBe(true)
    expect(rise).toEqual({ low: -Infinity, high: Infinity })
    expect(coveredRise(egg, at(1, 1, 8), 2, rise)).toBe(true)
    expect(rise.low).toBe(-Infinity)
    expect(rise.high).toBeLessThan(0)
  })

  it('property: a ray meets the egg (nearer to its middle than its surface, squeezed to a ball) just where it is covered', () => {
    const metres = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true })
    fc.assert(
      fc.property(
        fc.record({
          east: metres(-8, 8),
          north: metres(-8, 8),
          level: metres(-6, 12),
          radius: metres(0.5, 6),
          base: metres(-2, 4),
          high: metres(0.5, 8),
          azimuth: metres(0, 6.28),
          ray: metres(-5, 5),
        }),
        ({ east, north, level, radius, base, high, azimuth, ray }) => {
          const egg = crown([0, 0], radius, base, base + high)
          const stands = coveredRise(egg, at(east, north, level), azimuth, rise)
          const squeezed = (e: number, n: number, u: number): [number, number, number] => [
            e / radius,
            n / radius,
            (2 * u) / high,
          ]
          const from = squeezed(east, north, level - base - high / 2)
          const along = squeezed(Math.sin(azimuth), Math.cos(azimuth), ray)
          const dot = (a: number[], b: number[]) => a.reduce((sum, each, axis) => sum + each * b[axis]!, 0)
          const nearest = Math.max(0, -dot(from, along) / dot(along, along))
          const gap = Math.hypot(...from.map((each, axis) => each + nearest * along[axis]!)) - 1
          fc.pre(Math.abs(gap) > 1e-6)
          const covered = stands && ray >= rise.low && ray <= rise.high
          expect(covered).toBe(gap < 0)
        },
      ),
      { numRuns: 5000 },
    )
  })
})
