import { describe, expect, it } from 'vitest'
import { climateYear, demandOnSlope, hardWinterC, type Climate } from '#core/climate'
import { eachMonth, months } from '#core/units'
import { netLongwaveMjPerM2 } from '../../../src/core/climate/net-radiation'
import { clearnessFromSunshine } from '../../../src/core/climate/solar-from-sunshine'

/** The same month all year round. */
const always = (tMinC: number, tMaxC: number, elevationM = 0): Climate => ({
  from: 'typed',
  elevationM,
  coast: false,
  months: eachMonth(() => ({ tMinC, tMaxC, rainMm: 60 })).slice(),
})

/** A year like that of southern England. */
const temperate: Climate = {
  from: 'typed',
  elevationM: 50,
  coast: false,
  months: eachMonth((month) => {
    const season = -Math.cos(((month - 0.5) * Math.PI) / 6)
    return { tMinC: 6.5 + 5.5 * season, tMaxC: 15 + 7.5 * season, rainMm: 55 }
  }).slice(),
}

describe('climateYear', () => {
  it('FAO-56 example 20: Lyon in July from temperature alone: 22.3 MJ/m² and 4.56 mm/d; Hargreaves 5.0', () => {
    const july = climateYear(always(14.8, 26.6, 200), { latitudeDeg: 45.72, elevationM: 200 })[6]
    // Our July stands on the 17th (Klein), the example on the 15th: the clearness is compared under its own 40.55 MJ/m².
    expect(Math.abs(july.clearness * 40.55 - 22.29)).toBeLessThan(0.03)
    expect(Math.abs(july.vapourKPa - 1.68)).toBeLessThan(0.01)
    expect(Math.abs(july.referenceEtMmPerDay - 4.56)).toBeLessThan(0.03)
    expect(july.hargreavesEtMmPerDay).toBeCloseTo(5, 1)
  })

  it('FAO-56 example 10: Rio de Janeiro in May by 7.1 h of sunshine: 14.5 MJ/m², clear sky 18.8, and says so', () => {
    const rio = { ...always(19, 25), coast: true }
    const sunny = { ...rio, months: rio.months.map((month) => ({ ...month, sunshineHours: 220 / 31 })) }
    const may = climateYear(sunny, { latitudeDeg: -22.9, elevationM: 0 })[4]
    expect(may.solarFrom).toBe('sunshine')
    // Our May stands on the 15th, as the example does.
    expect(Math.abs(may.solarMjPerM2 - 14.45)).toBeLessThan(0.06)
    expect(Math.abs(may.solarMjPerM2 / may.clearness - 25.1)).toBeLessThan(0.06)
  })

  it('FAO-56 example 18: Uccle on 6 July, 9.25 h of sunshine: 3.71 MJ/m² of heat radiated away net, with its own humidity', () => {
    // Net long-wave radiation of the example (memory), from Rs 22.07 over Rso 30.90, 12.3 and 21.5 °C and 1.409 kPa.
    expect(
      Math.abs(
        netLongwaveMjPerM2({
          tMinC: 12.3,
          tMaxC: 21.5,
          vapourKPa: 1.409,
          clearSkyRatio: clearnessFromSunshine(9.25, 16.1, 100).ofClearSky,
        }) - 3.71,
      ),
    ).toBeLessThan(0.02)
  })

  it('FAO-56 ch. 3: measured radiation goes before sunshine, and sunshine before temperature', () => {
    const site = { latitudeDeg: 45.72, elevationM: 200 }
    const lyon = always(14.8, 26.6, 200)
    const withMore = (more: object) =>
      climateYear({ ...lyon, months: lyon.months.map((month) => ({ ...month, ...more })) }, site)[6]
    expect(withMore({ solarMjPerM2: 20, sunshineHours: 9 })).toMatchObject({ solarFrom: 'radiation' })
    expect(withMore({ solarMjPerM2: 20, sunshineHours: 9 }).solarMjPerM2).toBeCloseTo(20, 10)
    expect(withMore({ sunshineHours: 9 }).solarFrom).toBe('sunshine')
    expect(withMore({}).solarFrom).toBe('temperature')
  })

  it('FAO-56 eq. 37: never brighter than a clear sky, 0.754 of what is above the air at 200 m', () => {
    const lyon = always(14.8, 26.6, 200)
    const months45 = lyon.months.map((month) => ({ ...month, solarMjPerM2: 40 }))
    const july = climateYear({ ...lyon, months: months45 }, { latitudeDeg: 45.72, elevationM: 200 })[6]
    expect(july.clearness).toBeCloseTo(0.754, 10)
    expect(july.solarMjPerM2).toBeCloseTo(0.754 * july.extraterrestrialMjPerM2, 10)
  })

  it('common practice, no source: a month without sun is told by its temperatures, whatever sunshine is given', () => {
    const polar = always(-25, -18)
    const given = {
      ...polar,
      months: polar.months.map((month) => ({ ...month, sunshineHours: 0, solarMjPerM2: 0 })),
    }
    const december = climateYear(given, { latitudeDeg: 80, elevationM: 10 })[11]
    expect(december).toMatchObject({ solarMjPerM2: 0, solarFrom: 'temperature' })
    for (const value of Object.values(december)) expect(value).not.toBeNaN()
  })

  it('FAO-56 eq. 43 and example 13: soil takes 0.33 MJ/m² when the mean rises from 14.1 to 18.8 °C', () => {
    const months12 = eachMonth((month) => {
      const mean = month === 2 ? 14.1 : month === 4 ? 18.8 : 16.1
      return { tMinC: mean - 5, tMaxC: mean + 5, rainMm: 0 }
    }).slice()
    const year = climateYear({ ...always(0, 1), months: months12 }, { latitudeDeg: 40, elevationM: 0 })
    expect(year[3].soilHeatMjPerM2).toBeCloseTo(0.33, 2)
  })

  it('FAO-56 eq. 7: free air cools 0.65 °C for each 100 m the plot lies above the station', () => {
    const higher = climateYear(always(5, 15, 100), { latitudeDeg: 52, elevationM: 300 })
    expect(higher[4].tMinC).toBeCloseTo(5 - 1.3, 10)
    expect(higher[4].tMaxC).toBeCloseTo(15 - 1.3, 10)
  })

  it('FAO-56 ch. 3: wind of 2 m/s stands in where none is known', () => {
    const site = { latitudeDeg: 52, elevationM: 50 }
    expect(climateYear(temperate, site)[6].windMPerS).toBe(2)
    const windy = climateYear({ ...temperate, windMPerS: 4 }, site)
    expect(windy[6].referenceEtMmPerDay).toBeGreaterThan(climateYear(temperate, site)[6].referenceEtMmPerDay)
  })

  it('common practice, no source: southern English grass uses some 3 mm/d in July and next to nothing in December', () => {
    const year = climateYear(temperate, { latitudeDeg: 51.5, elevationM: 50 })
    expect(year[6].referenceEtMmPerDay).toBeGreaterThan(2.5)
    expect(year[6].referenceEtMmPerDay).toBeLessThan(4.5)
    expect(year[11].referenceEtMmPerDay).toBeLessThan(0.8)
    expect(year[6].growing).toBe(true)
    expect(year[0].growing).toBe(false)
    for (const month of year) {
      expect(month.clearness).toBeLessThanOrEqual(0.76)
      expect(month.diffuseShare).toBeGreaterThan(0.1)
      expect(month.diffuseShare).toBeLessThan(0.8)
    }
  })

  it('common practice, no source: a polar winter has no sun, little thirst, and no NaN', () => {
    const year = climateYear(always(-25, -18), { latitudeDeg: 80, elevationM: 10 })
    expect(year[11]).toMatchObject({ solarMjPerM2: 0, daylightHours: 0 })
    for (const month of year) for (const value of Object.values(month)) expect(value).not.toBeNaN()
  })

  it('from memory of UK Met Office averages: some 7 to 8 nights of air frost at a January minimum of 2.7 °C, 10 to 12 at 1.4 °C', () => {
    const frost = (tMinC: number) =>
      climateYear(always(tMinC, tMinC + 6), { latitudeDeg: 52, elevationM: 0 })[0].frostNights
    expect(frost(2.7)).toBeGreaterThan(6.5)
    expect(frost(2.7)).toBeLessThan(8.5)
    expect(frost(1.4)).toBeGreaterThan(10)
    expect(frost(1.4)).toBeLessThan(12)
    expect(frost(20)).toBeLessThan(0.001)
    expect(frost(-20)).toBeCloseTo(31, 3)
  })

  it('refuses places off the globe and short years', () => {
    expect(() => climateYear(temperate, { latitudeDeg: 95, elevationM: 0 })).toThrow(RangeError)
    expect(() => climateYear(temperate, { latitudeDeg: 50, elevationM: 7000 })).toThrow(RangeError)
    const short = { ...temperate, months: temperate.months.slice(0, 11) }
    expect(() => climateYear(short, { latitudeDeg: 50, elevationM: 0 })).toThrow(
      /twelve months are needed, got 11/,
    )
  })
})

describe('demandOnSlope', () => {
  const year = climateYear(temperate, { latitudeDeg: 52, elevationM: 50 })

  it('FAO-56 on level ground: the demand is exactly that of level ground, and less sun is less thirst', () => {
    for (const month of months) {
      const level = year[month].referenceEtMmPerDay
      expect(demandOnSlope(year[month], 1)).toBe(level)
      expect(demandOnSlope(year[month], 1.2)).toBeGreaterThan(level)
      expect(demandOnSlope(year[month], 0.8)).toBeLessThan(level)
    }
  })

  it('refuses ratios that are none', () => {
    expect(() => demandOnSlope(year[0], -1)).toThrow(RangeError)
    expect(() => demandOnSlope(year[0], NaN)).toThrow(RangeError)
  })
})

describe('hardWinterC', () => {
  const yearOf = (coldest: [number, number], warmest: [number, number]) => {
    const normals = eachMonth((month) => (month === 6 ? warmest : coldest)).map(([tMinC, tMaxC]) => ({
      tMinC,
      tMaxC,
      rainMm: 60,
    }))
    return climateYear({ ...always(0, 1), months: normals }, { latitudeDeg: 50, elevationM: 0 })
  }

  it.each([
    ['London, zone 9a', [3, 8.5], [14, 24], -6.7, -3.9],
    ['Chicago, zone 6a', [-7.5, 0], [19, 29.5], -23.3, -20.6],
    ['Minneapolis, zone 4b to 5a', [-13, -4], [18, 28.5], -31.7, -26.1],
    ['Atlanta, zone 8a', [1, 11.5], [22, 32.5], -12.2, -9.4],
    ['Melbourne, zone 10a', [7.5, 14.5], [15.5, 27], -1.1, 1.7],
  ] as const)(
    'USDA hardiness zones from memory, %s: within 3 °C of the zone',
    (_, coldest, warmest, from, to) => {
      const guess = hardWinterC(yearOf([...coldest], [...warmest]))
      expect(guess).toBeGreaterThan(from - 3)
      expect(guess).toBeLessThan(to + 3)
    },
  )
})
