import { describe, expect, it } from 'vitest'
import { representativeDays, sunAtHourAngle, sunSteps, usualSteps, type UsualStep } from '#core/sun'
import { months, toRadians } from '#core/units'
import { diffuseShare } from '../../../src/core/climate/diffuse-share'
import { daylightHours, extraterrestrialMjPerM2 } from '../../../src/core/climate/extraterrestrial'
import { cellPlanes, openSky } from '../../../src/core/shade/cell-planes'
import { collectUsualDay } from '../../../src/core/shade/collect-usual-day'
import { hayDavies } from '../../../src/core/sun/hay-davies'
import { readTruth } from './read-truth'
import { aboveAirWPerM2, cooperRad, stepsWithoutAir } from './without-air'

const madison = readTruth<
  Record<'levelMjPerM2' | 'groundAlbedo' | 'beamRatio' | 'slopeMjPerM2', number[]> & {
    latitudeDeg: number
    slopeDeg: number
  }
>('climate-madison')

const WH_PER_MJ = 1e6 / 3600

/** A day's light on one slope facing south [MJ/m²]. */
function onSlope(
  steps: readonly UsualStep[],
  { slopeDeg, albedo, levelMj }: { slopeDeg: number; albedo: number; levelMj: number },
) {
  const planes = cellPlanes({ slopeDeg: Float64Array.of(slopeDeg), aspectDeg: Float64Array.of(180) })
  const usual = { levelWhPerM2: levelMj * WH_PER_MJ, diffuseShare: 0 }
  const day = collectUsualDay(steps, { planes, skyView: openSky(planes), albedo, usual, lightAt: undefined })
  const [beam, diffuse, reflected] = [day.beamWhPerM2, day.diffuseWhPerM2, day.reflectedWhPerM2].map(
    (whPerM2) => whPerM2[0]! / WH_PER_MJ,
  )
  return { beam: beam!, diffuse: diffuse!, reflected: reflected!, total: beam! + diffuse! + reflected! }
}

describe('collectUsualDay', () => {
  // 40° north, 20 February, 9 to 10: 1.04 MJ/m² of 2.34 above the air, 0.7655 of it diffuse.
  const sun = sunAtHourAngle(toRadians(40), cooperRad(51), toRadians(-37.5))
  const levelMj = 1.04
  const skyMj = 0.7655 * levelMj
  const beamMj = levelMj - skyMj
  const bare = { sun, altitudeRad: Math.asin(sun.up), solarHour: 9.5, hours: 1, beamShare: 0 }
  const step = { ...bare, beamWPerM2: (beamMj * WH_PER_MJ) / sun.up, diffuseWPerM2: skyMj * WH_PER_MJ }
  const slope = { slopeDeg: 60, albedo: 0.6, levelMj }

  it('Duffie & Beckman example 2.15.1 (even sky of Liu & Jordan 1963): beam 0.418, sky 0.597, ground 0.156, together 1.17 MJ/m²', () => {
    const light = onSlope([{ step, directWPerM2: step.beamWPerM2, evenWPerM2: step.diffuseWPerM2 }], slope)
    expect(Math.abs(light.beam - 0.418)).toBeLessThan(0.002)
    expect(Math.abs(light.diffuse - 0.597)).toBeLessThan(0.001)
    expect(Math.abs(light.reflected - 0.156)).toBeLessThan(0.001)
    expect(Math.abs(light.total - 1.17)).toBeLessThan(0.003)
  })

  it('Duffie & Beckman example 2.16.1: 1.28 MJ/m² with a ring around the sun (Hay & Davies 1980) and the book’s bright horizon, which we leave out', () => {
    const { ringWPerM2, evenWPerM2 } = hayDavies(step.diffuseWPerM2, beamMj / 2.34, sun.up)
    const light = onSlope([{ step, directWPerM2: step.beamWPerM2 + ringWPerM2, evenWPerM2 }], slope)
    const horizonMj = light.diffuse * Math.sqrt(beamMj / levelMj) * Math.sin(toRadians(30)) ** 3
    expect(Math.abs(light.total + horizonMj - 1.28)).toBeLessThan(0.005)
    expect(horizonMj / light.total).toBeLessThan(0.03)
  })

  it('pvlib test vectors, even sky: 100 W/m² diffuse on 40° is 88.3022, 900 W/m² reflected at 0.25 is 26.32', () => {
    const dull = { ...step, beamWPerM2: 0, diffuseWPerM2: 100 }
    const even = [{ step: dull, directWPerM2: 0, evenWPerM2: 100 }]
    const light = onSlope(even, { slopeDeg: 40, albedo: 0.25, levelMj: 900 / WH_PER_MJ })
    expect(light.diffuse * WH_PER_MJ).toBeCloseTo(88.30222215594891, 4)
    expect(light.reflected * WH_PER_MJ).toBeCloseTo(26.32000014911496, 4)
  })

  it.each(months)(
    'Duffie & Beckman example 2.20.1 (Erbs, Klein & Duffie 1982; even sky), Madison, month %s: beam ratio and light on 60°',
    (month) => {
      const day = representativeDays[month]
      const { latitudeDeg, slopeDeg } = madison
      const levelWh = madison.levelMjPerM2[month]! * WH_PER_MJ
      const clearness = madison.levelMjPerM2[month]! / extraterrestrialMjPerM2(latitudeDeg, day)
      const share = diffuseShare(clearness, daylightHours(latitudeDeg, day))
      const airless = stepsWithoutAir(latitudeDeg, cooperRad(day), aboveAirWPerM2(day))
      const sum = airless.reduce((wh, one) => wh + one.beamWPerM2 * one.sun.up * one.hours, 0)
      const even = airless.map((one) => ({
        step: one,
        directWPerM2: (one.beamWPerM2 * levelWh * (1 - share)) / sum,
        evenWPerM2: (one.beamWPerM2 * one.sun.up * levelWh * share) / sum,
      }))
      const light = onSlope(even, {
        slopeDeg,
        albedo: madison.groundAlbedo[month]!,
        levelMj: madison.levelMjPerM2[month]!,
      })
      const beamRatio = light.beam / (madison.levelMjPerM2[month]! * (1 - share))
      expect(Math.abs(beamRatio - madison.beamRatio[month]!)).toBeLessThan(0.01)
      expect(Math.abs(light.total - madison.slopeMjPerM2[month]!)).toBeLessThan(0.15)
    },
  )
})

describe('usualSteps', () => {
  /** Shares of the day's level light and of its diffuse light that fall in an hour, by their published curves. */
  function published(sunsetRad: number, hourAngleRad: number) {
    const low = Math.cos(hourAngleRad) - Math.cos(sunsetRad)
    const diffuse = ((Math.PI / 24) * low) / (Math.sin(sunsetRad) - sunsetRad * Math.cos(sunsetRad))
    const a = 0.409 + 0.5016 * Math.sin(sunsetRad - Math.PI / 3)
    const b = 0.6609 - 0.4767 * Math.sin(sunsetRad - Math.PI / 3)
    return { total: diffuse * (a + b * Math.cos(hourAngleRad)), diffuse }
  }

  it.each([
    [52, 0, 0.27],
    [52, 2, 0.38],
    [52, 5, 0.46],
    [52, 8, 0.42],
    [52, 11, 0.26],
    [40, 5, 0.6],
    [40, 11, 0.5],
    [60, 2, 0.4],
  ] as const)(
    'Collares-Pereira & Rabl 1979 and Liu & Jordan 1960 for the course of the day, %s° north, month %s, clearness %s: a slope gets the same within 1.2 %%',
    (latitudeDeg, month, clearness) => {
      const dayOfYear = representativeDays[month]
      const levelMjPerDay = clearness * extraterrestrialMjPerM2(latitudeDeg, dayOfYear)
      const levelWhPerM2 = levelMjPerDay * WH_PER_MJ
      const share = diffuseShare(clearness, daylightHours(latitudeDeg, dayOfYear))
      const place = { latitudeDeg, elevationM: 50, linke: 3, albedo: 0.2 }
      const clear = sunSteps({ ...place, dayOfYear, stepHours: 0.1 })
      const sunsetRad = (Math.PI / 24) * clear.length * clear[0]!.hours
      const curves = clear.map((one) => published(sunsetRad, ((one.solarHour - 12) * Math.PI) / 12))
      const beams = curves.map(({ total, diffuse }) => Math.max(0, total - share * diffuse))
      const scale = (1 - share) / beams.reduce((sum, beam, at) => sum + beam * clear[at]!.hours, 0)
      const theirs = clear.map((one, at) => {
        const beamWPerM2 = (levelWhPerM2 * scale * beams[at]!) / one.sun.up
        const aboveAir = one.beamWPerM2 / one.beamShare
        const sky = levelWhPerM2 * share * curves[at]!.diffuse
        const { ringWPerM2, evenWPerM2 } = hayDavies(sky, beamWPerM2 / aboveAir, one.sun.up)
        return { step: one, directWPerM2: beamWPerM2 + ringWPerM2, evenWPerM2 }
      })
      const ours = usualSteps(clear, { levelWhPerM2, diffuseShare: share })
      for (const slopeDeg of [10, 20, 35]) {
        const on = { slopeDeg, albedo: 0.2, levelMj: levelMjPerDay }
        expect(Math.abs(onSlope(ours, on).total / onSlope(theirs, on).total - 1)).toBeLessThan(0.012)
      }
    },
  )

  it('Hay & Davies 1980: the steps add up to the month’s light and its diffuse share, and a month without light has none', () => {
    const clear = sunSteps({ latitudeDeg: 52, elevationM: 50, linke: 3, albedo: 0.2, dayOfYear: 105 })
    const steps = usualSteps(clear, { levelWhPerM2: 4000, diffuseShare: 0.5 })
    const level = steps.reduce(
      (sum, { step: one, directWPerM2, evenWPerM2 }) =>
        sum + (directWPerM2 * one.sun.up + evenWPerM2) * one.hours,
      0,
    )
    expect(level).toBeCloseTo(4000, 6)
    for (const { directWPerM2, evenWPerM2 } of usualSteps(clear, { levelWhPerM2: 0, diffuseShare: 0.5 }))
      expect([directWPerM2, evenWPerM2]).toEqual([0, 0])
    expect(usualSteps([], { levelWhPerM2: 0, diffuseShare: 1 })).toEqual([])
  })
})
