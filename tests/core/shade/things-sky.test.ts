import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sunOnGround, type FarPoint, type Standing, type SunOnGround } from '#core/shade'
import { directionTo, squareTo } from '#core/sun'
import { eachMonth } from '#core/units'
import { crown, oneCell, planeGround, rad, screen, thing } from './things-scenes'
import { tolerances } from './tolerances'

const sky = {
  site: { latitudeDeg: 52, elevationM: 100, linke: 3, albedo: 0.2 },
  usual: eachMonth(() => ({ levelWhPerM2: 3000, diffuseShare: 0.6 })),
}

interface Around {
  readonly standing?: readonly Standing[]
  readonly far?: readonly FarPoint[]
  readonly slopeDeg?: number
  readonly aspectDeg?: number
}

/** One cell of ground, its centre at 0, 0, 0. */
function sunOf({ standing = [], far = [], slopeDeg = 0, aspectDeg = 0 }: Around): SunOnGround {
  const { ground, cells } = planeGround(oneCell(0, 0), slopeDeg, aspectDeg)
  return sunOnGround({ ground, standing, far }, cells, sky)
}

const viewOf = (around: Around): number => sunOf(around).skyView[0]!
const near = (view: number, expected: number) =>
  expect(Math.abs(view - expected)).toBeLessThan(tolerances.thingsSky)

const longWall = (distanceM: number, heightM: number) =>
  thing({ screens: [screen([-1e5, distanceM], [1e5, distanceM], heightM)] })

describe('sky beside walls', () => {
  it.each([
    [1, 5],
    [2, 3],
    [3, 3],
    [6, 2],
  ])(
    'Johnson & Watson 1984: level ground %s m from a long wall %s m high sees (1 + cos(atan(height / distance))) / 2 of the sky',
    (distanceM, heightM) => {
      const expected = (1 + Math.cos(Math.atan(heightM / distanceM))) / 2
      near(viewOf({ standing: [longWall(distanceM, heightM)] }), expected)
    },
  )

  it('Johnson & Watson 1984: midway between two long walls 4 m high and 6 m apart it sees cos(atan(4 / 3))', () => {
    near(viewOf({ standing: [longWall(3, 4), longWall(-3, 4)] }), 0.6)
  })

  it('Johnson & Watson 1984: a third of the light through the wall, a third of the hidden sky comes back', () => {
    const fence = { ...longWall(2, 3), through: eachMonth(() => 1 / 3) }
    const hidden = (1 - Math.cos(Math.atan(3 / 2))) / 2
    near(viewOf({ standing: [fence] }), 1 - (2 / 3) * hidden)
  })

  it('exact solution: far hills all around at 12° leave cos² 12°; a wall below them takes nothing more', () => {
    const far = [{ azimuthDeg: 0, angleDeg: 12 }]
    near(viewOf({ far }), Math.cos(rad(12)) ** 2)
    const low = longWall(10, 10 * Math.tan(rad(11)))
    expect(viewOf({ far, standing: [low] })).toBeCloseTo(viewOf({ far }), 5)
  })
})

/** Share of a plane element's half-space that a disc parallel to it takes: radius, height over it, distance aside. */
function discShare(radius: number, high: number, aside: number): number {
  const sum = radius ** 2 + high ** 2 + aside ** 2
  return (1 - (sum - 2 * radius ** 2) / Math.sqrt(sum ** 2 - 4 * (radius * aside) ** 2)) / 2
}

describe('sky under and beside crowns', () => {
  it.each([
    [3, 4, 0],
    [10, 3, 0],
    [4, 5, 2],
    [3, 3, 6],
  ])(
    'Howell 1982: a flat dark crown of radius %s m, %s m up and %s m aside, takes the factor of a disc',
    (radius, high, aside) => {
      const disc = thing({ crowns: [crown([0, aside], radius, high, high)] })
      near(viewOf({ standing: [disc] }), 1 - discShare(radius, high, aside))
    },
  )

  it.each([
    [2, 6, 5, 0],
    [3, 2, 7, 100],
    [2.5, 5, 4, 215],
  ])(
    'Howell 1982: a ball of radius %s m, %s m away and %s m up at azimuth %s°, takes (radius / distance)² times the cosine',
    (radius, awayM, upM, azimuthDeg) => {
      const at = [awayM * Math.sin(rad(azimuthDeg)), awayM * Math.cos(rad(azimuthDeg))] as const
      const ball = thing({ crowns: [crown(at, radius, upM - radius, upM + radius)] })
      const distance2 = awayM ** 2 + upM ** 2
      near(viewOf({ standing: [ball] }), 1 - (radius ** 2 / distance2) * (upM / Math.sqrt(distance2)))
      const slope = { slopeDeg: 20, aspectDeg: 300 }
      const square = squareTo(20, 300)
      const to = directionTo(azimuthDeg, (Math.atan2(upM, awayM) * 180) / Math.PI)
      const cosine = square.east * to.east + square.north * to.north + square.up * to.up
      const taken = viewOf(slope) - viewOf({ ...slope, standing: [ball] })
      near(taken, (radius ** 2 / distance2) * cosine)
    },
  )

  it('Howell 1982: through two crowns one behind the other come both shares, multiplied', () => {
    const ball = crown([0, 5], 2, 3, 7)
    const two = [thing({ crowns: [ball] }, 0.5), thing({ crowns: [ball] }, 0.4)]
    const share = (4 / 50) * Math.SQRT1_2
    near(viewOf({ standing: two }), 1 - (1 - 0.5 * 0.4) * share)
    near(viewOf({ standing: [thing({ crowns: [ball, ball] }, 0.5)] }), 1 - 0.5 * share)
  })

  it('a wall in front of its lower half leaves a crown the upper half', () => {
    const ball = thing({ crowns: [crown([0, 6], 2, 3, 7)] }, 0.3)
    const wall = longWall(3, 2.5)
    const whole = longWall(3, 4.5)
    const lost = viewOf({ standing: [wall] }) - viewOf({ standing: [wall, ball] })
    const alone = 1 - viewOf({ standing: [ball] })
    expect(lost).toBeGreaterThan(0.3 * alone)
    expect(lost).toBeLessThan(0.7 * alone)
    expect(viewOf({ standing: [whole, ball] })).toBeCloseTo(viewOf({ standing: [whole] }), 6)
  })

  it('a place in a crown sees what comes through it, and nothing more', () => {
    expect(viewOf({ standing: [thing({ crowns: [crown([0, 0], 3, -2, 4)] }, 0.25)] })).toBeCloseTo(0.25, 4)
  })

  it('Howell 1982: each month’s sky has its own leaves; the one that is shown is their mean', () => {
    const share = discShare(3, 4, 0)
    const tree = thing({ crowns: [crown([0, 0], 3, 4, 4)] }, (month) => (month < 3 ? 0.8 : 0.2))
    const sun = sunOf({ standing: [tree] })
    near(sun.skyView[0]!, 1 - (3 * 0.2 + 9 * 0.8) * (share / 12))
    const dark = { ...sky, usual: eachMonth(() => ({ levelWhPerM2: 1000, diffuseShare: 1 })) }
    const { ground, cells } = planeGround(oneCell(0, 0))
    const { usualWhPerM2 } = sunOnGround({ ground, standing: [tree], far: [] }, cells, dark)
    const expected = (through: number) => 1000 * (1 - 0.8 * (1 - through) * share)
    expect(Math.abs(usualWhPerM2[0][0]! - expected(0.8))).toBeLessThan(1000 * tolerances.thingsSky)
    expect(Math.abs(usualWhPerM2[6][0]! - expected(0.2))).toBeLessThan(1000 * tolerances.thingsSky)
  })
})

describe('sky: properties', () => {
  const metres = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true })
  const things = fc.array(
    fc.oneof(
      fc
        .tuple(metres(-9, 9), metres(-9, 9), metres(-9, 9), metres(-9, 9), metres(0.2, 6), metres(0, 1))
        .map(([a, b, c, d, top, through]) => thing({ screens: [screen([a, b], [c, d], top)] }, through)),
      fc
        .tuple(metres(-9, 9), metres(-9, 9), metres(0.5, 4), metres(-1, 4), metres(0.5, 6), metres(0, 1))
        .map(([a, b, radius, base, high, through]) =>
          thing({ crowns: [crown([a, b], radius, base, base + high)] }, through),
        ),
    ),
    { minLength: 1, maxLength: 4 },
  )

  it('property: each thing takes sky or none, and the order of things is all one', () => {
    fc.assert(
      fc.property(things, metres(0, 40), metres(0, 359), (standing, slopeDeg, aspectDeg) => {
        const all = viewOf({ standing, slopeDeg, aspectDeg })
        expect(all).toBeGreaterThanOrEqual(0)
        expect(all).toBeLessThanOrEqual(viewOf({ standing: standing.slice(1), slopeDeg, aspectDeg }) + 1e-6)
        expect(viewOf({ standing: standing.toReversed(), slopeDeg, aspectDeg })).toBeCloseTo(all, 5)
      }),
      { numRuns: 60 },
    )
  })

  it('property: what lets all light through takes no sky', () => {
    fc.assert(
      fc.property(things, (standing) => {
        const clear = standing.map((each) => ({ ...each, through: eachMonth(() => 1) }))
        expect(viewOf({ standing: clear })).toBe(1)
      }),
      { numRuns: 30 },
    )
  })
})
