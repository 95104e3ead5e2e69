import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { dayOnGround, sunOnGround, type FarPoint, type Standing, type SunOnGround } from '#core/shade'
import { daySun, representativeDays, sunSteps } from '#core/sun'
import { eachMonth, months } from '#core/units'
import { box, centre, crown, oneCell, planeGround, rad, screen, thing } from './things-scenes'

const site = { latitudeDeg: 50, elevationM: 100, linke: 3, albedo: 0.2 }
const usual = eachMonth(() => ({ levelWhPerM2: 3000, diffuseShare: 0.55 }))
const frame = { columns: 30, rows: 30, cellM: 1, westM: -15, southM: -15 }

interface Around {
  readonly standing?: readonly Standing[]
  readonly far?: readonly FarPoint[]
  readonly latitudeDeg?: number
}

/** Twelve days at one cell of level ground at the plan's origin. */
function sunOf({ standing = [], far = [], latitudeDeg = 50 }: Around): SunOnGround {
  const { ground, cells } = planeGround(oneCell(0, 0))
  return sunOnGround({ ground, standing, far }, cells, { site: { ...site, latitudeDeg }, usual })
}

/** Hours of a clear day there, in steps of a hundredth of an hour. */
function hoursOf({ standing = [], far = [], latitudeDeg = 50 }: Around, dayOfYear: number): number {
  const { ground, cells } = planeGround(oneCell(0, 0))
  const choice = { ...site, latitudeDeg, dayOfYear, stepHours: 0.01 }
  return dayOnGround({ ground, standing, far }, cells, choice).sunHours[0]!
}

/** Longest time step of the twelve days [h]. */
const STEP_H = 0.5

/** Hours for which the sun stands higher than an angle: sin a = sin lat sin dec + cos lat cos dec cos hourAngle. */
function hoursAbove(angleDeg: number, latitudeDeg: number, dayOfYear: number): number {
  const { declinationRad } = daySun(dayOfYear)
  const latitude = rad(latitudeDeg)
  const cosine =
    (Math.sin(rad(angleDeg)) - Math.sin(latitude) * Math.sin(declinationRad)) /
    (Math.cos(latitude) * Math.cos(declinationRad))
  return (24 / Math.PI) * Math.acos(Math.min(1, Math.max(-1, cosine)))
}

describe('sun and far hills', () => {
  it.each([0, 35, -35, 52, -52, 68, 78])(
    'spherical trigonometry: at latitude %s° hills of 9° all around leave the hours for which the sun stands higher',
    (latitudeDeg) => {
      const far = [{ azimuthDeg: 200, angleDeg: 9 }]
      const sun = sunOf({ far, latitudeDeg })
      for (const month of months) {
        const expected = hoursAbove(9, latitudeDeg, representativeDays[month])
        expect(Math.abs(hoursOf({ far, latitudeDeg }, representativeDays[month]) - expected)).toBeLessThan(
          0.03,
        )
        expect(Math.abs(sun.sunHours[month][0]! - expected)).toBeLessThan(2 * STEP_H)
      }
    },
  )

  it('spherical trigonometry: hills to the east take the morning only', () => {
    const far = [
      { azimuthDeg: 1, angleDeg: 20 },
      { azimuthDeg: 179, angleDeg: 20 },
      { azimuthDeg: 181, angleDeg: 0 },
      { azimuthDeg: 359, angleDeg: 0 },
    ]
    const [open, hilly] = [sunOf({}), sunOf({ far })]
    for (const month of months) {
      const afternoon = (sun: SunOnGround) => sun.sunHours[month][0]! - sun.morningHours[month][0]!
      expect(afternoon(open)).toBeCloseTo(open.morningHours[month][0]!, 4)
      expect(Math.abs(afternoon(hilly) - afternoon(open))).toBeLessThan(STEP_H)
      const left = hoursAbove(20, 50, representativeDays[month]) / 2
      expect(Math.abs(hilly.morningHours[month][0]! - left)).toBeLessThan(STEP_H)
    }
  })
})

describe('sun and walls', () => {
  it.each([
    [2, 4],
    [5, 5],
    [3, 1],
  ])(
    'plane geometry: at the equator with the sun in its plane, a wall %s m to the east and %s m high takes atan(height / distance) / 15° hours',
    (distanceM, heightM) => {
      const wall = thing({ screens: [screen([distanceM, -1e5], [distanceM, 1e5], heightM)] })
      const tilt = (day: number) => Math.abs(daySun(day).declinationRad)
      const equinox = [78, 79, 80, 81, 82].reduce((best, day) => (tilt(day) < tilt(best) ? day : best))
      expect(tilt(equinox)).toBeLessThan(rad(0.2))
      const takenH = (Math.atan(heightM / distanceM) * 180) / Math.PI / 15
      const hours = hoursOf({ standing: [wall], latitudeDeg: 0 }, equinox)
      expect(Math.abs(hours - (12 - takenH))).toBeLessThan(0.02)
    },
  )

  it('spherical trigonometry: a wall towards the equator takes the midday of winter, in both hemispheres', () => {
    const wall = (northM: number) => thing({ screens: [screen([-1e5, northM], [1e5, northM], 3)] })
    const [north, south] = [sunOf({ standing: [wall(-3)] }), sunOf({ standing: [wall(3)], latitudeDeg: -50 })]
    const turned = [sunOf({ standing: [wall(3)] }), sunOf({ standing: [wall(-3)], latitudeDeg: -50 })]
    expect([north.sunHours[11][0], south.sunHours[5][0]]).toEqual([0, 0])
    expect(turned[0]!.sunHours[11]).toEqual(sunOf({}).sunHours[11])
    expect(turned[1]!.sunHours[5]).toEqual(sunOf({ latitudeDeg: -50 }).sunHours[5])
    expect(north.sunHours[5][0]!).toBeGreaterThan(0.5 * sunOf({}).sunHours[5][0]!)
    expect(south.sunHours[11][0]!).toBeGreaterThan(0.5 * sunOf({ latitudeDeg: -50 }).sunHours[11][0]!)
  })

  it('spherical trigonometry: in polar day four high walls leave the hours for which the sun stands over them', () => {
    const round = Array.from({ length: 720 }, (_, at): [number, number] => [
      10 * Math.sin(rad(at / 2)),
      10 * Math.cos(rad(at / 2)),
    ])
    const ring = thing({
      screens: round.map((from, at) => screen(from, round[(at + 1) % round.length]!, 10 * Math.tan(rad(25)))),
    })
    const hours = hoursOf({ standing: [ring], latitudeDeg: 78 }, 172)
    expect(Math.abs(hours - hoursAbove(25, 78, 172))).toBeLessThan(0.05)
    expect(sunOf({ standing: [ring], latitudeDeg: 78 }).sunHours[11][0]).toBe(0)
  })

  it('property: on level ground the twelve days are the same as each day by itself, on every cell to its edge', () => {
    const { ground, cells } = planeGround(frame)
    const house = thing({ screens: box([-6.3, -4.1], [3.2, 2.7], 5) })
    const tree = thing({ crowns: [crown([6.1, -7.2], 3.4, 2, 9)] }, 0.25)
    const shading = { ground, standing: [house, tree], far: [{ azimuthDeg: 140, angleDeg: 6 }] }
    const sun = sunOnGround(shading, cells, { site, usual })
    for (const month of [0, 3, 5, 11] as const) {
      const day = dayOnGround(shading, cells, { ...site, dayOfYear: representativeDays[month] })
      expect(day.sunHours).toEqual(sun.sunHours[month])
    }
  })

  it('within the walls of a house nothing is NaN, and low sun does not come in', () => {
    const { ground, cells } = planeGround(frame)
    const house = thing({ screens: box([-6.3, -4.1], [3.2, 2.7], 5) })
    const sun = sunOnGround({ ground, standing: [house], far: [] }, cells, { site, usual })
    for (const month of months)
      for (const grid of [sun.sunHours[month], sun.usualWhPerM2[month], sun.skyView])
        expect(grid.every((value) => value >= 0)).toBe(true)
    for (let cell = 0; cell < ground.levelM.length; cell += 1) {
      const { eastM, northM } = centre(frame, cell)
      if (eastM > -6 && eastM < 3 && northM > -4 && northM < 2) expect(sun.sunHours[11][cell]).toBe(0)
    }
  })
})

describe('sun through leaves', () => {
  const canopy = (through: Parameters<typeof thing>[1]) =>
    thing({ crowns: [crown([0, 0], 5000, 2, 900)] }, through)

  it('exact solution: under a wide crown that lets a quarter through, sun hours are a quarter and dappled hours the day', () => {
    const [open, under] = [sunOf({}), sunOf({ standing: [canopy(0.25)] })]
    for (const month of months) {
      expect(under.sunHours[month][0]! / open.sunHours[month][0]!).toBeCloseTo(0.25, 5)
      expect(under.morningHours[month][0]! / open.morningHours[month][0]!).toBeCloseTo(0.25, 5)
      expect(under.dappledHours[month][0]).toBeCloseTo(open.sunHours[month][0]!, 4)
      expect(open.dappledHours[month][0]).toBe(0)
    }
  })

  it('nothing is dappled where nothing or everything comes through, nor in the shade of something dark', () => {
    const leaf = canopy((month) => (month < 6 ? 0 : month < 9 ? 1 : 0.5))
    const wall = thing({ screens: [screen([-1e5, -1], [1e5, -1], 1000)] })
    const sun = sunOf({ standing: [leaf] })
    for (const month of months)
      if (month < 9) expect(sun.dappledHours[month][0]).toBe(0)
      else expect(sun.dappledHours[month][0]!).toBeGreaterThan(0)
    expect(sunOf({ standing: [leaf, wall] }).dappledHours[11][0]).toBe(0)
    expect(sunOf({ standing: [wall, leaf] }).dappledHours[11][0]).toBe(0)
    expect(sunOf({ standing: [leaf], far: [{ azimuthDeg: 0, angleDeg: 60 }] }).dappledHours[11][0]).toBe(0)
  })

  it('two crowns of two trees count one dappled hour, and both shares', () => {
    const [open, under] = [sunOf({}), sunOf({ standing: [canopy(0.5), canopy(0.4)] })]
    expect(under.dappledHours[5][0]).toBeCloseTo(open.sunHours[5][0]!, 4)
    expect(under.sunHours[5][0]! / open.sunHours[5][0]!).toBeCloseTo(0.2, 5)
  })
})

describe('sun past things: properties', () => {
  const metres = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true })
  const tree = fc
    .record({
      east: metres(-9, 9),
      north: metres(-9, 9),
      radius: metres(0.5, 5),
      base: metres(0, 5),
      high: metres(1, 9),
      through: metres(0, 1),
    })
    .map(({ east, north, radius, base, high, through }) =>
      thing({ crowns: [crown([east, north], radius, base, base + high)] }, through),
    )
  const wall = fc
    .record({ a: metres(-9, 9), b: metres(-9, 9), c: metres(-9, 9), d: metres(-9, 9), top: metres(0.3, 9) })
    .map(({ a, b, c, d, top }) => thing({ screens: [screen([a, b], [c, d], top)] }))
  const standing = fc.array(fc.oneof(tree, wall), { minLength: 1, maxLength: 3 })
  const latitude = metres(-89, 89)

  it('property: things that let everything through change nothing', () => {
    fc.assert(
      fc.property(standing, latitude, (things, latitudeDeg) => {
        const clear = things.map((each) => ({ ...each, through: eachMonth(() => 1) }))
        expect(sunOf({ standing: clear, latitudeDeg })).toEqual(sunOf({ latitudeDeg }))
      }),
      { numRuns: 20 },
    )
  })

  it('property: one thing more never adds hours of sun, and adds no light but what it throws back', () => {
    fc.assert(
      fc.property(standing, latitude, (things, latitudeDeg) => {
        const [more, less] = [
          sunOf({ standing: things.slice(1), latitudeDeg }),
          sunOf({ standing: things, latitudeDeg }),
        ]
        for (const month of months) {
          expect(less.sunHours[month][0]!).toBeLessThanOrEqual(more.sunHours[month][0]! + 1e-5)
          expect(less.usualWhPerM2[month][0]!).toBeLessThanOrEqual(
            more.usualWhPerM2[month][0]! + site.albedo * usual[month].levelWhPerM2,
          )
        }
      }),
      { numRuns: 40 },
    )
  })

  it('property: the light of a clear day never exceeds that above the air on a plane square to the sun', () => {
    fc.assert(
      fc.property(
        standing,
        latitude,
        fc.integer({ min: 1, max: 365 }),
        fc.record({ slopeDeg: metres(0, 80), aspectDeg: metres(0, 359) }),
        (things, latitudeDeg, dayOfYear, { slopeDeg, aspectDeg }) => {
          const { ground, cells } = planeGround(oneCell(0, 0), slopeDeg, aspectDeg)
          const choice = { ...site, latitudeDeg, dayOfYear }
          const day = dayOnGround({ ground, standing: things, far: [] }, cells, choice)
          const light = day.beamWhPerM2[0]! + day.diffuseWhPerM2[0]! + day.reflectedWhPerM2[0]!
          const dayHours = sunSteps(choice).reduce((sum, { hours }) => sum + hours, 0)
          expect(light).toBeGreaterThanOrEqual(0)
          expect(light).toBeLessThanOrEqual(daySun(dayOfYear).aboveAirWPerM2 * dayHours + 1e-3)
        },
      ),
      { numRuns: 100 },
    )
  })
})
