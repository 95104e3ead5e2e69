import { describe, expect, it } from 'vitest'
import { dayOnGround, sunOnGround, sunOnPlane } from '#core/shade'
import { representativeDays, ruralLinke } from '#core/sun'
import { eachMonth, months } from '#core/units'
import { volcano } from './volcano'

const site = { latitudeDeg: 52, elevationM: 100, linke: 3, albedo: 0.2 }
const at = (latitudeDeg: number) => ({ ...site, latitudeDeg })

describe('sunOnPlane', () => {
  it('common practice, no source: a slope facing the midday sun gets more beam than level ground, one facing away less', () => {
    const [south, north] = [
      sunOnPlane({ slopeDeg: 20, aspectDeg: 180 }, site),
      sunOnPlane({ slopeDeg: 20, aspectDeg: 0 }, site),
    ]
    for (const month of months) {
      const level = south.openLevel[month].beamWhPerM2
      expect(north.beamWhPerM2[month][0]!).toBeLessThan(level)
      expect(south.beamWhPerM2[month][0]!).toBeGreaterThan(level)
    }
  })

  it('common practice, no source: south of the equator the sense turns over and the seasons change places', () => {
    const [sunny, shady] = [
      sunOnPlane({ slopeDeg: 20, aspectDeg: 0 }, at(-40)),
      sunOnPlane({ slopeDeg: 20, aspectDeg: 180 }, at(-40)),
    ]
    for (const month of months)
      expect(sunny.beamWhPerM2[month][0]!).toBeGreaterThan(shady.beamWhPerM2[month][0]!)
    expect(sunny.openLevel[0].sunHours).toBeGreaterThan(sunny.openLevel[6].sunHours)
  })

  it('common practice, no source: polar day and night, and twelve hours of day at the equator', () => {
    const polar = sunOnPlane({ slopeDeg: 10, aspectDeg: 90 }, at(78))
    expect(polar.openLevel[5].sunHours).toBeCloseTo(24, 5)
    expect(polar.openLevel[11]).toMatchObject({ sunHours: 0, beamWhPerM2: 0, diffuseWhPerM2: 0 })
    expect(polar.beamWhPerM2[11][0]).toBe(0)
    for (const day of sunOnPlane({ slopeDeg: 0, aspectDeg: -1 }, at(0)).openLevel)
      expect(day.sunHours).toBeCloseTo(12, 5)
    expect(sunOnPlane({ slopeDeg: 0, aspectDeg: -1 }, at(90)).openLevel[5].sunHours).toBeCloseTo(24, 5)
  })

  it('property: level ground is the open level day, and east and west slopes are mirror twins', () => {
    const level = sunOnPlane({ slopeDeg: 0, aspectDeg: -1 }, site)
    const [east, west] = [
      sunOnPlane({ slopeDeg: 25, aspectDeg: 90 }, site),
      sunOnPlane({ slopeDeg: 25, aspectDeg: 270 }, site),
    ]
    expect(level.skyView[0]).toBe(1)
    for (const month of months) {
      expect(level.beamWhPerM2[month][0]).toBe(level.openLevel[month].beamWhPerM2)
      expect(level.diffuseWhPerM2[month][0]).toBe(level.openLevel[month].diffuseWhPerM2)
      expect(level.reflectedWhPerM2[month][0]).toBe(0)
      expect(east.beamWhPerM2[month][0]!).toBeCloseTo(west.beamWhPerM2[month][0]!, 2)
    }
  })

  it('takes a haziness for each month: hazier air dims the beam and brightens the sky', () => {
    const clear = sunOnPlane({ slopeDeg: 0, aspectDeg: 0 }, { ...site, linke: 2 })
    const byMonth = sunOnPlane({ slopeDeg: 0, aspectDeg: 0 }, { ...site, linke: ruralLinke(52) })
    expect(byMonth.beamWhPerM2[6][0]!).toBeLessThan(clear.beamWhPerM2[6][0]!)
    expect(byMonth.diffuseWhPerM2[6][0]!).toBeGreaterThan(clear.diffuseWhPerM2[6][0]!)
    expect(ruralLinke(-40)[0]).toBe(ruralLinke(40)[6])
  })

  it('refuses a vertical plane and an impossible site', () => {
    expect(() => sunOnPlane({ slopeDeg: 90, aspectDeg: 0 }, site)).toThrow(RangeError)
    expect(() => sunOnPlane({ slopeDeg: 10, aspectDeg: 0 }, at(95))).toThrow(RangeError)
    const linke = eachMonth((month) => (month === 3 ? 20 : 3))
    expect(() => sunOnPlane({ slopeDeg: 10, aspectDeg: 0 }, { ...site, linke })).toThrow(RangeError)
  })
})

describe('sunOnGround', () => {
  const { ground, cells, compared } = volcano()
  const sun = sunOnGround(ground, cells, site)

  it('Klein 1977: the twelve representative days', () => {
    expect(representativeDays).toEqual([17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344])
    expect(sun.openLevel.map((day) => day.dayOfYear)).toEqual([...representativeDays])
  })

  it.each([0, 2, 5, 11] as const)(
    'month %s: skylines read between 48 directions give the same hours as exact sweeps towards each sun (Dozier, Bruno & Downey 1981)',
    (month) => {
      const day = dayOnGround(ground, cells, { ...site, dayOfYear: representativeDays[month] })
      const off = compared.map((cell) => Math.abs(day.sunHours[cell]! - sun.sunHours[month][cell]!))
      expect(off.reduce((sum, one) => sum + one, 0) / off.length).toBeLessThan(0.25)
      const beam = (grid: Float32Array) => compared.reduce((sum, cell) => sum + grid[cell]!, 0)
      expect(Math.abs(beam(day.beamWhPerM2) / beam(sun.beamWhPerM2[month]) - 1)).toBeLessThan(0.01)
    },
  )

  it('property: shade never adds beam, and the skyline never adds sky', () => {
    const open = dayOnGround(ground, cells, { ...site, dayOfYear: 17, castShadows: false, skyline: false })
    const planes = cells.slopeDeg.map((slope) => (1 + Math.cos((slope * Math.PI) / 180)) / 2)
    for (const cell of compared) {
      expect(sun.beamWhPerM2[0][cell]!).toBeLessThanOrEqual(open.beamWhPerM2[cell]! + 0.01)
      expect(sun.skyView[cell]!).toBeLessThanOrEqual(planes[cell]! + 1e-6)
    }
  })

  it('collects nothing outside the plot, and never NaN', () => {
    const share = ground.share.map((_, cell) => (cell % 87 < 40 ? 1 : 0))
    const slopeDeg = cells.slopeDeg.map((slope, cell) => (cell % 87 < 40 ? slope : NaN))
    const half = sunOnGround({ ...ground, share }, { ...cells, slopeDeg }, site)
    const grids = [
      half.skyView,
      half.sunHours[5],
      half.beamWhPerM2[5],
      half.diffuseWhPerM2[5],
      half.reflectedWhPerM2[5],
    ]
    for (const grid of grids)
      grid.forEach((value, cell) =>
        cell % 87 < 40 ? expect(value).toBeGreaterThanOrEqual(0) : expect(value).toBe(0),
      )
  })

  it('refuses grids that do not fit', () => {
    expect(() => sunOnGround(ground, { ...cells, aspectDeg: new Float64Array(2) }, site)).toThrow(RangeError)
  })
})
