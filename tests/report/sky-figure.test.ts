import { Body, Equator, Horizon, Observer, SearchHourAngle } from 'astronomy-engine'
import { describe, expect, it } from 'vitest'
import type { PlaceSky } from '#core/shade'
import { placeSky } from '#core/shade'
import { SunPathFigure, sunPathTable } from '#report'
import { pathsOf, skyPaths } from '../../src/report/figures/sun/sky-paths'
import { skyScale, type SkyScale } from '../../src/report/figures/sun/sky-scale'
import { skyShapes } from '../../src/report/figures/sun/sky-shapes'
import { skyTakers } from '../../src/report/figures/sun/sky-takers'
import { dayOfMonth, pathDays } from '../../src/report/figures/sun/sun-days'
import { numbersOf, wordsOf, written } from './hung'

const OPEN = 360

/** The sky from level ground with nothing around. */
function openSky(): PlaceSky {
  const none = () => new Float32Array(OPEN)
  return {
    at: { eastM: 0, northM: 0 },
    levelM: 0,
    slopeDeg: 0,
    aspectDeg: -1,
    groundDeg: none(),
    farDeg: none(),
    things: [],
  }
}

/** Level ground 40 m square, a cell to the metre, with things on it. */
function levelGround(standing: Parameters<typeof placeSky>[0]['standing']) {
  const frame = { westM: -20, southM: -20, columns: 40, rows: 40, cellM: 1 }
  const count = frame.columns * frame.rows
  return {
    shading: {
      ground: { frame, levelM: new Float64Array(count), share: new Float64Array(count).fill(1) },
      standing,
      far: [],
    },
    cells: { slopeDeg: new Float64Array(count), aspectDeg: new Float64Array(count).fill(-1) },
  }
}

const always = (share: number) =>
  [share, share, share, share, share, share, share, share, share, share, share, share] as const

const WIDTH_PX = 900

function drawn(sky: PlaceSky, latitudeDeg: number, dayOfYear: number) {
  const days = pathDays(latitudeDeg, dayOfYear)
  const scale = skyScale(sky, latitudeDeg, pathsOf(latitudeDeg, days), WIDTH_PX)
  return { scale, paths: skyPaths(sky, latitudeDeg, days, scale) }
}

/** Places of a drawn line, read back as directions and heights [°]. */
function readBack(line: string, scale: SkyScale) {
  const perDeg = (scale.rightPx - scale.leftPx) / (scale.halfDeg * 2)
  const upPerDeg = perDeg * scale.stretch
  return [...line.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({
    azimuthDeg: scale.middleDeg - scale.halfDeg + (Number(x) - scale.leftPx) / perDeg,
    heightDeg: (scale.basePx - Number(y)) / upPerDeg,
  }))
}

/** Distance from nothing to a stretch of line. */
function gapTo([x1 = 0, y1 = 0]: readonly number[], [x2 = 0, y2 = 0]: readonly number[]): number {
  const long = (x2 - x1) ** 2 + (y2 - y1) ** 2
  const share = long === 0 ? 0 : Math.min(1, Math.max(0, -(x1 * (x2 - x1) + y1 * (y2 - y1)) / long))
  return Math.hypot(x1 + share * (x2 - x1), y1 + share * (y2 - y1))
}

describe('the sun’s path over a place', () => {
  it.each([
    [52, 172],
    [52, 355],
    [35, 79],
    [-37.6, 172],
    [-37.6, 355],
  ])(
    'astronomy-engine: at %s° latitude on day %s the sun stands on the drawn line',
    (latitudeDeg, dayOfYear) => {
      const { paths, scale } = drawn(openSky(), latitudeDeg, dayOfYear)
      const line = paths.find(({ day }) => day.picked)?.lines.sun ?? ''
      const places = readBack(line, scale)
      const observer = new Observer(latitudeDeg, 0, 0)
      const midnight = new Date(Date.UTC(2026, 0, dayOfYear))
      let seen = 0
      for (const hourAngle of [21, 22, 23, 0, 1, 2, 3]) {
        const { time } = SearchHourAngle(Body.Sun, observer, hourAngle, midnight)
        const { ra, dec } = Equator(Body.Sun, time, observer, true, true)
        const { azimuth, altitude } = Horizon(time, observer, ra, dec)
        if (altitude < 2) continue
        seen += 1
        const aside = (azimuthDeg: number) => ((azimuthDeg - scale.middleDeg + 540) % 360) - 180
        const across = Math.cos((altitude * Math.PI) / 180)
        const flat = places.map((place) => [
          (aside(place.azimuthDeg) - aside(azimuth)) * across,
          place.heightDeg - altitude,
        ])
        // The line holds the day's declination and is written to a tenth of a pixel: half a degree is a sun's width.
        expect(Math.min(...flat.slice(1).map((end, at) => gapTo(flat[at] ?? end, end)))).toBeLessThan(0.5)
      }
      expect(seen).toBeGreaterThanOrEqual(5)
    },
  )

  it('exact solution: at the March equinox on the equator the sun stands in the zenith at noon', () => {
    const { paths, scale } = drawn(openSky(), 0, 79)
    const top = Math.max(
      ...paths.filter(({ day }) => day.key === 'equinox').map(({ noon }) => scale.basePx - (noon?.yPx ?? 0)),
    )
    const upPerDeg = ((scale.rightPx - scale.leftPx) / (scale.halfDeg * 2)) * scale.stretch
    expect(top / upPerDeg).toBeGreaterThan(89)
  })

  it('has the south in the middle in the north and the north in the south, morning left and right', () => {
    const north = skyScale(openSky(), 52, [], WIDTH_PX)
    const south = skyScale(openSky(), -37, [], WIDTH_PX)
    const middlePx = (north.leftPx + north.rightPx) / 2
    expect(north.x(180)).toBeCloseTo(middlePx, 9)
    expect(south.x(0)).toBeCloseTo(middlePx, 9)
    expect(north.x(90)).toBeLessThan(middlePx)
    expect(south.x(90)).toBeGreaterThan(middlePx)
  })

  it('exact solution: a wall 2 m high and 5 m to the south stands 21.8° high, and hides what is lower', () => {
    const { shading, cells } = levelGround([
      {
        id: 'wall',
        name: 'Wall',
        crowns: [],
        through: always(0),
        screens: [
          { from: { eastM: -15, northM: -5 }, to: { eastM: 15, northM: -5 }, topFromM: 2, topToM: 2 },
        ],
      },
    ])
    const sky = placeSky(shading, cells, { eastM: 0, northM: 0 })
    if (!sky) throw new Error('the place is on the plot')
    const { scale, paths } = drawn(sky, 52, 355)
    const [wall] = skyShapes(sky, 11, scale).things
    expect(wall?.look).toBe('solid')
    expect(wall?.top.heightDeg).toBeCloseTo((Math.atan(2 / 5) * 180) / Math.PI, 1)
    const winter = paths.find(({ day }) => day.picked)
    // At 52° the midwinter sun is 14.6° high: it stays behind the wall all day.
    expect(winter?.lines.sun).toBe('')
    expect(winter?.placeDay.sunHours).toBeLessThan(0.2)
    const takers = skyTakers(sky, 52, winter?.placeDay ?? { dayOfYear: 355, spells: [], sunHours: 0 })
    expect(takers[0]?.name).toBe('Wall')
  })

  it('draws sun through a crown as dots, never thick, and says how much comes through', () => {
    const { shading, cells } = levelGround([
      {
        id: 'tree',
        name: 'Tree',
        screens: [],
        through: [0.5, 0.5, 0.5, 0.5, 0.03, 0.03, 0.03, 0.03, 0.03, 0.5, 0.5, 0.5],
        crowns: [{ at: { eastM: 0, northM: -8 }, radiusM: 4, baseM: 2, topM: 12 }],
      },
    ])
    const sky = placeSky(shading, cells, { eastM: 0, northM: 0 })
    if (!sky) throw new Error('the place is on the plot')
    const { paths, scale } = drawn(sky, 52, 79)
    const spring = paths.find(({ day }) => day.picked)
    expect(spring?.lines.leaves).not.toBe('')
    expect(skyShapes(sky, 2, scale).things[0]?.look).toBe('bare')
    expect(skyShapes(sky, 5, scale).things[0]?.look).toBe('leafy')
    const row = sunPathTable({ sky, latitudeDeg: 52, month: 2 }).rows.find(([day]) =>
      day?.startsWith('equinox'),
    )
    expect(row?.[2]).toContain('50 % comes through')
    expect(row?.[3]).toContain('Tree')
  })

  it.each([
    [75, 0],
    [75, 5],
    [-80, 11],
    [0, 2],
    [15, 5],
  ])(
    'is drawn without a gap in its figures in polar night and day and in the tropics: %s°, month %s',
    async (latitudeDeg, month) => {
      for (const widthPx of [320, 1440]) {
        const html = await written(SunPathFigure, { sky: openSky(), latitudeDeg, month, widthPx, hour: 12 })
        expect(html).not.toMatch(/NaN|Infinity|undefined/)
        for (const x of numbersOf(html, 'x')) expect(x).toBeLessThanOrEqual(widthPx)
      }
      const table = sunPathTable({ sky: openSky(), latitudeDeg, month: month === 5 ? 5 : 2 })
      expect(table.rows.length).toBeGreaterThanOrEqual(3)
    },
  )

  it('tells the time by the clock where one is known, else by the sun', async () => {
    const asked = { sky: openSky(), latitudeDeg: 52, month: 5 as const, widthPx: 768 }
    const bySun = wordsOf(await written(SunPathFigure, asked))
    expect(bySun).toContain('Hours by the sun.')
    const byClock = wordsOf(await written(SunPathFigure, { ...asked, clock: () => '13:07' }))
    expect(byClock).toContain('12 is 13:07 on the clock')
    expect(sunPathTable({ ...asked, clock: () => '13:07' }).columns[2]).toBe('When, by the clock')
  })

  it('draws a day near a solstice once, and keeps the equinox of the same half year', () => {
    expect(pathDays(52, 174).map(({ key }) => key)).toEqual(['equinox', 'midwinter', 'picked'])
    expect(pathDays(52, dayOfMonth(3)).find(({ key }) => key === 'equinox')?.dayOfYear).toBe(79)
    expect(pathDays(52, dayOfMonth(9)).find(({ key }) => key === 'equinox')?.dayOfYear).toBe(266)
    expect(pathDays(-37, dayOfMonth(5)).find(({ picked }) => picked)?.key).toBe('midwinter')
  })
})
