import { describe, expect, it } from 'vitest'
import { dayOnGround, usualDayOnGround, type DayOnGround } from '#core/shade'
import { squareTo, sunSteps, usualSteps } from '#core/sun'
import { crown, oneCell, planeGround, screen, thing } from './things-scenes'
import { tolerances } from './tolerances'

const choice = { latitudeDeg: 47, elevationM: 300, linke: 3, albedo: 0.25, dayOfYear: 105 }
const usual = { levelWhPerM2: 3900, diffuseShare: 0.48 }
const scene = (slopeDeg = 0, aspectDeg = 0) => planeGround(oneCell(0, 0), slopeDeg, aspectDeg)
const total = ({ beamWhPerM2, diffuseWhPerM2, reflectedWhPerM2 }: DayOnGround) =>
  beamWhPerM2[0]! + diffuseWhPerM2[0]! + reflectedWhPerM2[0]!

describe('usualDayOnGround', () => {
  it('exact solution: open level ground gets what the usual sky lets through, and its hours are the clear day’s', () => {
    const { ground, cells } = scene()
    const open = { ground, standing: [], far: [] }
    const day = usualDayOnGround(open, cells, choice, usual)
    expect(total(day)).toBeCloseTo(usual.levelWhPerM2, 1)
    expect(day.reflectedWhPerM2[0]).toBe(0)
    expect(day.sunHours).toEqual(dayOnGround(open, cells, choice).sunHours)
  })

  it.each([
    [15, 180],
    [30, 90],
    [25, 340],
    [60, 210],
  ])(
    'Hay & Davies 1980: on an open slope of %s° facing %s° the ring turns with the beam and the rest is (1 + cos slope) / 2',
    (slopeDeg, aspectDeg) => {
      const { ground, cells } = scene(slopeDeg, aspectDeg)
      const day = usualDayOnGround({ ground, standing: [], far: [] }, cells, choice, usual)
      const square = squareTo(slopeDeg, aspectDeg)
      let [direct, even] = [0, 0]
      for (const { step, directWPerM2, evenWPerM2 } of usualSteps(sunSteps(choice), usual)) {
        const { sun, hours } = step
        const cosine = square.east * sun.east + square.north * sun.north + square.up * sun.up
        direct += Math.max(0, cosine) * directWPerM2 * hours
        even += evenWPerM2 * hours
      }
      const view = (1 + square.up) / 2
      expect(day.beamWhPerM2[0]! / direct).toBeCloseTo(1, 5)
      expect(day.diffuseWhPerM2[0]! / (view * even)).toBeCloseTo(1, 2)
      const back = choice.albedo * usual.levelWhPerM2 * (1 - view)
      expect(Math.abs(day.reflectedWhPerM2[0]! - back)).toBeLessThan(0.005 * usual.levelWhPerM2)
    },
  )

  it('Johnson & Watson 1984: before a long wall to the north the sky is the wall’s, the sun that of the open', () => {
    const { ground, cells } = scene()
    const winter = { ...choice, dayOfYear: 355 }
    const wall = thing({ screens: [screen([-1e5, 2], [1e5, 2], 3)] })
    const day = usualDayOnGround({ ground, standing: [wall], far: [] }, cells, winter, usual)
    const open = usualDayOnGround({ ground, standing: [], far: [] }, cells, winter, usual)
    const view = (1 + Math.cos(Math.atan(3 / 2))) / 2
    expect(day.beamWhPerM2[0]).toBe(open.beamWhPerM2[0])
    expect(Math.abs(day.diffuseWhPerM2[0]! / open.diffuseWhPerM2[0]! - view)).toBeLessThan(
      tolerances.thingsSky,
    )
    const back = (1 - view) * choice.albedo * usual.levelWhPerM2
    expect(Math.abs(day.reflectedWhPerM2[0]! / back - 1)).toBeLessThan(0.02)
  })

  it('without shadows and skyline, things and far hills take nothing', () => {
    const { ground, cells } = scene(20, 120)
    const standing = [thing({ crowns: [crown([0, 0], 3, 2, 8)], screens: [screen([-9, -1], [9, -1], 6)] })]
    const far = [{ azimuthDeg: 0, angleDeg: 30 }]
    const bare = { ...choice, castShadows: false, skyline: false }
    expect(usualDayOnGround({ ground, standing, far }, cells, bare, usual)).toEqual(
      usualDayOnGround({ ground, standing: [], far: [] }, cells, bare, usual),
    )
    expect(dayOnGround({ ground, standing, far }, cells, bare)).toEqual(
      dayOnGround({ ground, standing: [], far: [] }, cells, bare),
    )
  })

  it('a leafless month’s day takes the bare branches’ share', () => {
    const { ground, cells } = scene()
    const tree = thing({ crowns: [crown([0, 0], 400, 2, 80)] }, (month) => (month === 3 ? 0.5 : 0.1))
    const shading = { ground, standing: [tree], far: [] }
    const open = usualDayOnGround({ ground, standing: [], far: [] }, cells, choice, usual)
    const april = usualDayOnGround(shading, cells, choice, usual)
    const may = usualDayOnGround(shading, cells, { ...choice, dayOfYear: 121 }, usual)
    expect(april.sunHours[0]! / open.sunHours[0]!).toBeCloseTo(0.5, 5)
    expect(april.beamWhPerM2[0]! / open.beamWhPerM2[0]!).toBeCloseTo(0.5, 5)
    expect(april.diffuseWhPerM2[0]! / open.diffuseWhPerM2[0]!).toBeCloseTo(0.5, 2)
    expect(may.sunHours[0]! / open.sunHours[0]!).toBeLessThan(0.12)
  })

  it('refuses an impossible usual sky and day', () => {
    const { ground, cells } = scene()
    const open = { ground, standing: [], far: [] }
    const of =
      (change: object, sky = usual) =>
      () =>
        usualDayOnGround(open, cells, { ...choice, ...change }, sky)
    expect(of({}, { ...usual, diffuseShare: 1.1 })).toThrow(
      'share of diffuse light [1] must be from 0 to 1, got 1.1',
    )
    expect(of({}, { ...usual, levelWhPerM2: -1 })).toThrow(RangeError)
    expect(of({ latitudeDeg: NaN })).toThrow(RangeError)
    expect(of({ dayOfYear: 400 })).toThrow(RangeError)
  })
})
