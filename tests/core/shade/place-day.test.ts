import { Body, MakeTime, Observer, SearchAltitude } from 'astronomy-engine'
import { describe, expect, it } from 'vitest'
import { cellCentre } from '#core/geometry'
import { dayOnGround, placeDay, placeSky, sunPath, type Standing } from '#core/shade'
import { eachMonth, toDegrees, toRadians } from '#core/units'
import { daySun } from '../../../src/core/sun/day-sun'
import { levelScene, MIDDLE, thing, tiltedScene, wall } from './scenes'

const open = levelScene()
const openSky = placeSky(open.shading, open.cells, MIDDLE)!

/** Sky from the middle of a level plot with things on it. */
function skyWith(...standing: Standing[]) {
  const { shading, cells } = levelScene(standing)
  return placeSky(shading, cells, MIDDLE)!
}

describe('placeDay in the open', () => {
  /** Days of FAO-56 table 2.7: the 15th of each month. */
  const days = [15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349]
  /** The table is rounded to 0.1 h; its declination leaves out the oval path and is 1.2° off in autumn: 0.2 h at 52° [h]. */
  const DAYLIGHT_H = 0.25
  it.each(
    [8.0, 9.7, 11.5, 13.6, 15.4, 16.5, 16.0, 14.4, 12.4, 10.3, 8.5, 7.5].map((hours, at) => [
      days[at]!,
      hours,
    ]),
  )('FAO-56 table 2.7, 52° north, day %s: %s hours of daylight', (day, hours) => {
    const { spells, sunHours } = placeDay(openSky, 52, day)
    expect(spells).toHaveLength(1)
    expect(Math.abs(sunHours - hours)).toBeLessThan(DAYLIGHT_H)
    expect(12 - spells[0]!.fromH).toBeCloseTo(spells[0]!.toH - 12, 3)
  })

  it('FAO-56 example 9: 11.7 hours at 20° south on 3 September', () => {
    expect(Math.abs(placeDay(openSky, -20, 246).sunHours - 11.7)).toBeLessThan(0.1)
  })

  it.each([
    [52, 17],
    [52, 258],
    [52, 288],
    [-35, 105],
    [60, 162],
    [10, 344],
  ])(
    'astronomy-engine: %s° of latitude, day %s: from the rise to the set of the sun’s middle',
    (latitudeDeg, day) => {
      const noon = MakeTime(new Date(Date.UTC(2027, 0, day, 12)))
      const observer = new Observer(latitudeDeg, 0, 0)
      const rise = SearchAltitude(Body.Sun, observer, 1, noon.AddDays(-0.7), 1, 0)!
      const set = SearchAltitude(Body.Sun, observer, -1, noon, 1, 0)!
      expect(Math.abs(placeDay(openSky, latitudeDeg, day).sunHours - (set.ut - rise.ut) * 24)).toBeLessThan(
        0.05,
      )
    },
  )

  it('exact geometry (the sun does not set): 24 hours at 70° north at midsummer, none at midwinter', () => {
    expect(placeDay(openSky, 70, 172).spells).toEqual([{ fromH: 0, toH: 24, through: 1 }])
    expect(placeDay(openSky, 70, 355)).toEqual({ dayOfYear: 355, spells: [], sunHours: 0 })
    expect(placeDay(openSky, -70, 355).sunHours).toBe(24)
  })
})

describe('placeDay on a steep slope that faces the pole', () => {
  /** Hour angle between which the sun is behind the slope, by the equivalent level ground of Lee 1962 [h]. */
  function behindH(latitudeDeg: number, slopeDeg: number, dayOfYear: number): number {
    const equivalent = toRadians(180 - latitudeDeg - slopeDeg)
    return toDegrees(Math.acos(Math.tan(daySun(dayOfYear).declinationRad) * Math.tan(equivalent))) / 15
  }

  it.each([
    [52, 60, 0, 130],
    [45, 70, 0, 172],
  ])(
    'Lee 1962 equivalent slope: %s° north, %s° to the north, day %s %s: two spells, morning and evening',
    (latitudeDeg, slopeDeg, aspectDeg, day) => {
      const { shading, cells } = tiltedScene({ slopeDeg, aspectDeg })
      const { spells } = placeDay(placeSky(shading, cells, MIDDLE)!, latitudeDeg, day)
      const awayH = behindH(latitudeDeg, slopeDeg, day)
      expect(spells).toHaveLength(2)
      expect(spells[0]!.toH).toBeCloseTo(12 - awayH, 1)
      expect(spells[1]!.fromH).toBeCloseTo(12 + awayH, 1)
      const openDay = placeDay(openSky, latitudeDeg, day)
      expect(spells[0]!.fromH).toBeCloseTo(openDay.spells[0]!.fromH, 1)
      expect(spells[1]!.toH).toBeCloseTo(openDay.spells[0]!.toH, 1)
    },
  )

  it('property: the same slope turned to the south pole has the same day half a year on', () => {
    const north = tiltedScene({ slopeDeg: 60, aspectDeg: 0 })
    const south = tiltedScene({ slopeDeg: 60, aspectDeg: 180 })
    const one = placeDay(placeSky(north.shading, north.cells, MIDDLE)!, 52, 172)
    const other = placeDay(placeSky(south.shading, south.cells, MIDDLE)!, -52, 355)
    expect(other.spells).toHaveLength(one.spells.length)
    expect(other.sunHours).toBeCloseTo(one.sunHours, 1)
  })
})

describe('placeDay behind things', () => {
  /** Two degrees of azimuth, about [h]: things are known to the whole degree. */
  const EDGE_H = 0.08

  it('exact geometry (arctangent of height over distance): a short wall to the south takes the hours about noon', () => {
    const short = {
      from: { eastM: 4.5, northM: 2.5 },
      to: { eastM: 16.5, northM: 2.5 },
      topFromM: 3,
      topToM: 3,
    }
    const sky = skyWith(thing('wall', [short]))
    const { spells } = placeDay(sky, 52, 355)
    // On day 355 the noon sun stands at 14.6°, the wall at 20.6°: the sun clears its ends, 36.9° from south.
    const edge = edgeHour(52, 355, 180 - toDegrees(Math.atan(6 / 8)))
    expect(spells).toHaveLength(2)
    expect(Math.abs(spells[0]!.toH - edge)).toBeLessThan(EDGE_H)
    expect(Math.abs(spells[1]!.fromH - (24 - edge))).toBeLessThan(EDGE_H)
    // At midsummer the sun passes over it.
    expect(placeDay(sky, 52, 172).spells).toHaveLength(1)
  })

  it('what comes through a tree counts by its share, and two trees one behind the other let through their product', () => {
    const one = thing('one', [wall('south', 5, 4)], 0.5)
    const other = thing('other', [wall('south', 8, 40)], 0.2)
    const day = placeDay(skyWith(one, other), 52, 355)
    expect(day.spells.map(({ through }) => through)).toEqual([0.1])
    expect(day.sunHours).toBeCloseTo(0.1 * placeDay(openSky, 52, 355).sunHours, 3)
  })

  it('leaves count by the month', () => {
    const through = eachMonth((month) => (month > 3 && month < 10 ? 0 : 1))
    const sky = skyWith({ ...thing('tree', [wall('south', 5, 40)]), through })
    expect(placeDay(sky, 52, 120).sunHours).toBeGreaterThan(placeDay(sky, 52, 121).sunHours + 5)
    expect(placeDay(sky, 52, 304).sunHours).toBeLessThan(placeDay(sky, 52, 305).sunHours)
  })

  it('property: a wall to the east takes from the morning what one to the west takes from the evening', () => {
    const east = placeDay(skyWith(thing('east', [wall('east', 6, 5)])), 48, 100)
    const west = placeDay(skyWith(thing('west', [wall('west', 6, 5)])), 48, 100)
    expect(east.sunHours).toBeCloseTo(west.sunHours, 3)
    expect(east.spells[0]!.fromH).toBeCloseTo(24 - west.spells[0]!.toH, 3)
  })

  it('far hills hide the sun until it has risen over them', () => {
    const far = [0, 180].map((azimuthDeg) => ({ azimuthDeg, angleDeg: 30 }))
    const { shading, cells } = levelScene([], far)
    const { spells } = placeDay(placeSky(shading, cells, MIDDLE)!, 0, 80)
    // On the equator at the equinox the sun climbs 15° an hour.
    expect(spells).toHaveLength(1)
    expect(spells[0]!.fromH).toBeCloseTo(8, 1)
    expect(spells[0]!.toH).toBeCloseTo(16, 1)
  })
})

/** Hour at which the morning sun stands in a direction, found by trying. */
function edgeHour(latitudeDeg: number, day: number, azimuthDeg: number): number {
  const [before, after] = sunPath(latitudeDeg, day)
    .map((point, at, all) => [point, all[at + 1] ?? point] as const)
    .find(([one, other]) => one.azimuthDeg <= azimuthDeg && other.azimuthDeg > azimuthDeg)!
  const part = (azimuthDeg - before.azimuthDeg) / (after.azimuthDeg - before.azimuthDeg)
  return before.hour + part * (after.hour - before.hour)
}

describe('placeDay beside the same day on the whole grid', () => {
  const roof = { from: { eastM: 2, northM: 3 }, to: { eastM: 9, northM: 3 }, topFromM: 5, topToM: 5 }
  const crowns = [{ at: { eastM: 15, northM: 12 }, radiusM: 3, baseM: 2, topM: 9 }]
  const plot = tiltedScene(
    { slopeDeg: 18, aspectDeg: 130 },
    [thing('house', [roof]), { ...thing('tree', [], 0.3), crowns }],
    [
      { azimuthDeg: 60, angleDeg: 3 },
      { azimuthDeg: 240, angleDeg: 12 },
    ],
  )
  /** Things are known to the whole degree, 4 min of the sun's turn: some edges of a day together [h]. */
  const EDGES_H = 0.2

  it.each([17, 80, 172, 300])(
    'property: day %s, cells up to the edge of the plot: the same hours but for edges of shadows',
    (dayOfYear) => {
      const choice = { latitudeDeg: 50, elevationM: 0, linke: 3, albedo: 0.2, dayOfYear, stepHours: 0.02 }
      const { sunHours } = dayOnGround(plot.shading, plot.cells, choice)
      const { frame } = plot.shading.ground
      for (let row = 0; row < 21; row += 2)
        for (let column = 0; column < 21; column += 4) {
          const cell = row * 21 + column
          const sky = placeSky(plot.shading, plot.cells, cellCentre(frame, cell))!
          expect(Math.abs(placeDay(sky, 50, dayOfYear).sunHours - sunHours[cell]!)).toBeLessThan(EDGES_H)
        }
    },
  )
})

describe('sunPath', () => {
  it('Duffie & Beckman example 1.6.2: 43° north, 13 February 9.30 and 1 July 18.30 by the sun', () => {
    // Cooper's declination of the book is 0.5° off the almanac's on 13 February.
    const february = sunPath(43, 44).find(({ hour }) => hour === 9.5)!
    expect(Math.abs(90 - february.altitudeDeg - 66.5)).toBeLessThan(0.6)
    expect(Math.abs(february.azimuthDeg - 180 + 40)).toBeLessThan(0.6)
    const july = sunPath(43, 182).find(({ hour }) => hour === 18.5)!
    expect(Math.abs(90 - july.altitudeDeg - 79.6)).toBeLessThan(0.2)
    expect(Math.abs(july.azimuthDeg - 180 - 112)).toBeLessThan(0.2)
  })

  it('goes from rise to set by quarters of an hour, and is empty in polar night', () => {
    const path = sunPath(52, 80)
    expect(path[0]!.altitudeDeg).toBeCloseTo(0, 6)
    expect(path.at(-1)!.altitudeDeg).toBeCloseTo(0, 6)
    expect(path.filter(({ hour }) => Number.isInteger(hour)).length).toBeGreaterThan(10)
    expect(path.every(({ hour }, at) => at === 0 || hour > path[at - 1]!.hour)).toBe(true)
    expect(sunPath(70, 355)).toEqual([])
    expect(sunPath(70, 172).map(({ hour }) => hour)).toContain(23.75)
  })

  it('refuses latitudes off the globe and days out of the year', () => {
    expect(() => sunPath(91, 80)).toThrow(/latitude \[°\] must be from -90 to 90, got 91/)
    expect(() => sunPath(50, 0)).toThrow(RangeError)
    expect(() => placeDay(openSky, 50, 367)).toThrow(RangeError)
  })
})
