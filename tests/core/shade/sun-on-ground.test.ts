import { describe, expect, it } from 'vitest'
import { dayOnGround, dayOnPlane, sunOnGround, sunOnPlane, usualDayOnGround } from '#core/shade'
import { representativeDays, ruralLinke } from '#core/sun'
import { eachMonth, months } from '#core/units'
import { yearSky } from './usual-place'
import { volcano } from './volcano'

const sky = yearSky(52, 3)
const { site } = sky

/** The twelve clear days of a lone slope. */
function clearDays(slopeDeg: number, aspectDeg: number, place = site) {
  return eachMonth((month) =>
    dayOnPlane({ slopeDeg, aspectDeg }, { ...place, linke: 3, dayOfYear: representativeDays[month] }),
  )
}

describe('sunOnPlane', () => {
  it('common practice, no source: a slope facing the midday sun gets more beam than level ground, one facing away less', () => {
    const level = sunOnPlane({ slopeDeg: 0, aspectDeg: -1 }, sky).openLevel
    const [south, north] = [clearDays(20, 180), clearDays(20, 0)]
    for (const month of months) {
      expect(north[month].beamWhPerM2[0]!).toBeLessThan(level[month].beamWhPerM2)
      expect(south[month].beamWhPerM2[0]!).toBeGreaterThan(level[month].beamWhPerM2)
    }
  })

  it('common practice, no source: south of the equator the sense turns over and the seasons change places', () => {
    const southern = yearSky(-40, 3)
    const [sunny, shady] = [
      sunOnPlane({ slopeDeg: 20, aspectDeg: 0 }, southern),
      sunOnPlane({ slopeDeg: 20, aspectDeg: 180 }, southern),
    ]
    const [bright, dim] = [clearDays(20, 0, southern.site), clearDays(20, 180, southern.site)]
    for (const month of months) {
      expect(bright[month].beamWhPerM2[0]!).toBeGreaterThan(dim[month].beamWhPerM2[0]!)
      expect(sunny.usualWhPerM2[month][0]!).toBeGreaterThan(shady.usualWhPerM2[month][0]!)
    }
    expect(sunny.openLevel[0].sunHours).toBeGreaterThan(sunny.openLevel[6].sunHours)
  })

  it('common practice, no source: polar day and night, and twelve hours of day at the equator', () => {
    const polar = sunOnPlane({ slopeDeg: 10, aspectDeg: 90 }, yearSky(78))
    expect(polar.openLevel[5].sunHours).toBeCloseTo(24, 5)
    expect(polar.openLevel[11]).toMatchObject({ sunHours: 0, beamWhPerM2: 0, diffuseWhPerM2: 0 })
    expect(polar.usualWhPerM2[11][0]).toBe(0)
    for (const day of sunOnPlane({ slopeDeg: 0, aspectDeg: -1 }, yearSky(0)).openLevel)
      expect(day.sunHours).toBeCloseTo(12, 5)
    expect(sunOnPlane({ slopeDeg: 0, aspectDeg: -1 }, yearSky(90)).openLevel[5].sunHours).toBeCloseTo(24, 5)
  })

  it('property: level ground is the open level day, and east and west slopes are mirror twins', () => {
    const level = sunOnPlane({ slopeDeg: 0, aspectDeg: -1 }, sky)
    const clear = clearDays(0, -1)
    const [east, west] = [clearDays(25, 90), clearDays(25, 270)]
    expect(level.skyView[0]).toBe(1)
    for (const month of months) {
      const open = level.openLevel[month]
      expect(clear[month].beamWhPerM2[0]! / open.beamWhPerM2).toBeCloseTo(1, 6)
      expect(clear[month].diffuseWhPerM2[0]! / open.diffuseWhPerM2).toBeCloseTo(1, 6)
      expect(clear[month].reflectedWhPerM2[0]).toBe(0)
      expect(level.usualWhPerM2[month][0]! / open.usualWhPerM2).toBeCloseTo(1, 4)
      expect(east[month].beamWhPerM2[0]!).toBeCloseTo(west[month].beamWhPerM2[0]!, 2)
    }
  })

  it('takes a haziness for each month: hazier air dims the beam and brightens the sky', () => {
    const flat = { slopeDeg: 0, aspectDeg: 0 }
    const clear = sunOnPlane(flat, yearSky(52, 2)).openLevel
    const byMonth = sunOnPlane(flat, yearSky(52)).openLevel
    expect(byMonth[6].beamWhPerM2).toBeLessThan(clear[6].beamWhPerM2)
    expect(byMonth[6].diffuseWhPerM2).toBeGreaterThan(clear[6].diffuseWhPerM2)
    expect(ruralLinke(-40)[0]).toBe(ruralLinke(40)[6])
  })

  it('refuses a vertical plane and an impossible site', () => {
    expect(() => sunOnPlane({ slopeDeg: 90, aspectDeg: 0 }, sky)).toThrow(RangeError)
    const plane = { slopeDeg: 10, aspectDeg: 0 }
    expect(() => sunOnPlane(plane, { ...sky, site: { ...site, latitudeDeg: 95 } })).toThrow(RangeError)
    const linke = eachMonth((month) => (month === 3 ? 20 : 3))
    expect(() => sunOnPlane(plane, { ...sky, site: { ...site, linke } })).toThrow(RangeError)
  })
})

describe('sunOnGround', () => {
  const { ground, shading, cells, compared } = volcano()
  const sun = sunOnGround(shading, cells, sky)

  it('Klein 1977: the twelve representative days', () => {
    expect(representativeDays).toEqual([17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344])
    expect(sun.openLevel.map((day) => day.dayOfYear)).toEqual([...representativeDays])
  })

  it.each([0, 2, 5, 11] as const)(
    'month %s: skylines read between 48 directions give the same hours as exact sweeps towards each sun (Dozier, Bruno & Downey 1981)',
    (month) => {
      const choice = { ...site, linke: 3, dayOfYear: representativeDays[month] }
      const [day, usual] = [
        dayOnGround(shading, cells, choice),
        usualDayOnGround(shading, cells, choice, sky.usual[month]),
      ]
      const off = compared.map((cell) => Math.abs(day.sunHours[cell]! - sun.sunHours[month][cell]!))
      expect(off.reduce((sum, one) => sum + one, 0) / off.length).toBeLessThan(0.25)
      const whole = (of: (cell: number) => number) => compared.reduce((sum, cell) => sum + of(cell), 0)
      const exact = whole(
        (cell) => usual.beamWhPerM2[cell]! + usual.diffuseWhPerM2[cell]! + usual.reflectedWhPerM2[cell]!,
      )
      expect(Math.abs(exact / whole((cell) => sun.usualWhPerM2[month][cell]!) - 1)).toBeLessThan(0.01)
    },
  )

  it('property: shade never adds hours, and the skyline never adds sky', () => {
    const choice = { ...site, linke: 3, dayOfYear: 17, castShadows: false, skyline: false }
    const open = dayOnGround(shading, cells, choice)
    const planes = cells.slopeDeg.map((slope) => (1 + Math.cos((slope * Math.PI) / 180)) / 2)
    for (const cell of compared) {
      expect(sun.sunHours[0][cell]!).toBeLessThanOrEqual(open.sunHours[cell]! + 1e-5)
      expect(sun.skyView[cell]!).toBeLessThanOrEqual(planes[cell]! + 1e-6)
    }
  })

  it('collects nothing outside the plot, and never NaN', () => {
    const share = ground.share.map((_, cell) => (cell % 87 < 40 ? 1 : 0))
    const slopeDeg = cells.slopeDeg.map((slope, cell) => (cell % 87 < 40 ? slope : NaN))
    const cut = { ...shading, ground: { ...ground, share } }
    const half = sunOnGround(cut, { ...cells, slopeDeg }, sky)
    const day = dayOnGround(cut, { ...cells, slopeDeg }, { ...site, linke: 3, dayOfYear: 162 })
    const grids = [
      half.skyView,
      half.sunHours[5],
      half.morningHours[5],
      half.usualWhPerM2[5],
      day.beamWhPerM2,
      day.diffuseWhPerM2,
      day.reflectedWhPerM2,
    ]
    for (const grid of grids)
      grid.forEach((value, cell) =>
        cell % 87 < 40 ? expect(value).toBeGreaterThanOrEqual(0) : expect(value).toBe(0),
      )
  })

  it('refuses grids that do not fit', () => {
    expect(() => sunOnGround(shading, { ...cells, aspectDeg: new Float64Array(2) }, sky)).toThrow(RangeError)
  })
})
