import { describe, expect, it } from 'vitest'
import { booksOut, eachMonth } from '#core/units'
import { textureClasses } from '#core/soil'
import {
  slopePlaces,
  waterYear,
  type WaterCover,
  type WaterMonth,
  type WaterUnit,
  type WaterYear,
} from '#core/water'
import { climate, climates, slope, soilOf, waterTables, yearSum } from './water-fixtures'

const here = climate('temperate north')
const run = (units: readonly WaterUnit[], weather = here, aboveM = 0) =>
  waterYear(units, weather, waterTables, { aboveM })

const covers = waterTables.curveNumbers.map((row) => row.cover)
/** Least that a month of any unit has more than the same month of the unit above it. */
const leastGain = (units: readonly WaterYear[], figure: (month: WaterMonth) => number): number =>
  Math.min(
    ...units.slice(1).flatMap((lower, at) =>
      lower.months.map((month, of) => {
        const above = units[at]?.months[of]
        return above ? figure(month) - figure(above) : Number.NaN
      }),
    ),
  )
/** Depths must close this far [mm]. */
const CLOSES_MM = 1e-6
/** Rounding of the machine over a year of sums [ratio]. */
const ROUNDING = 1e-12

describe('no water is lost', () => {
  it.each(Object.entries(climates))('every month, year, unit and the plot book out: %s', (_, weather) => {
    for (const cover of covers)
      for (const texture of ['sand', 'silt', 'clay'] as const)
        for (const aboveM of [0, 60]) {
          const units = slope({ cover, soil: soilOf(texture), referenceEtMm: weather.referenceEtMm })
          const plot = run(units, weather, aboveM)
          for (const { months, account } of plot.units) {
            const gaps = months.map((m) => {
              const comes = m.rainMm + m.runOnMm + m.lateralInMm
              const goes = m.actualEtMm + m.runoffMm + m.lateralOutMm + m.drainageMm + m.storedChangeMm
              return Math.abs(comes - goes)
            })
            expect(Math.max(...gaps)).toBeLessThan(CLOSES_MM)
            expect(booksOut(account)).toBe(true)
            expect(Math.abs(account.total)).toBeLessThan(CLOSES_MM)
          }
          expect(Math.abs(plot.account.total)).toBeLessThan(CLOSES_MM)
        }
  })

  it('what one unit hands on arrives at the next, by area', () => {
    const [top, ...rest] = slope()
    if (!top) throw new Error('the slope is empty')
    const { units } = run([{ ...top, planAreaM2: 40, lengthM: 40 }, ...rest])
    expect(yearSum(units[1], 'runOnMm')).toBeCloseTo(10 * yearSum(units[0], 'runoffMm'), 8)
    expect(yearSum(units[1], 'lateralInMm')).toBeCloseTo(10 * yearSum(units[0], 'lateralOutMm'), 8)
  })

  it('the year ends as it began', () => {
    for (const weather of Object.values(climates))
      for (const { months } of run(slope({ referenceEtMm: weather.referenceEtMm }), weather).units)
        expect(Math.abs(months.reduce((sum, month) => sum + month.storedChangeMm, 0))).toBeLessThan(1e-6)
  })

  it('reports what runs off, what moves through the soil and what drains apart', () => {
    const ids = run(slope()).account.lines.map((line) => line.id)
    expect(ids).toEqual([
      'rain',
      'run-on',
      'lateral-in',
      'used',
      'runoff',
      'lateral-out',
      'drainage',
      'stored',
    ])
  })
})

describe('the way of the water', () => {
  it('level ground hands nothing sideways through the soil', () => {
    for (const { months } of run(slope({ slopeDeg: 0 })).units)
      for (const month of months) expect(month.lateralOutMm).toBe(0)
  })

  it.each(Object.entries(climates).filter(([name]) => name !== 'no rain at all'))(
    'common practice, no source: other things equal, the higher place is the drier, on every soil: %s',
    (_, weather) => {
      for (const texture of textureClasses)
        for (const depthM of [0.3, 0.8, 1.5])
          for (const slopeDeg of [3, 12, 30])
            for (const cover of ['mown', 'shrubs', 'bare'] as const) {
              const soil = soilOf(texture, { depthM })
              const { units } = run(
                slope({ soil, slopeDeg, cover, referenceEtMm: weather.referenceEtMm }),
                weather,
              )
              const what = `${texture}, ${depthM} m, ${slopeDeg}°, ${cover}`
              expect(yearSum(units[4], 'fullness'), what).toBeGreaterThan(yearSum(units[0], 'fullness'))
              expect(
                leastGain(units, ({ fullness }) => fullness),
                what,
              ).toBeGreaterThan(-ROUNDING)
              expect(
                leastGain(units, ({ wetDays }) => wetDays),
                what,
              ).toBeGreaterThanOrEqual(0)
              expect(
                leastGain(units, ({ dryDays }) => -dryDays),
                what,
              ).toBeGreaterThanOrEqual(0)
            }
    },
  )

  it('common practice, no source: with ground above as well, no place is drier than the one above it', () => {
    for (const name of ['temperate north', 'wet north', 'dry summers'])
      for (const texture of textureClasses)
        for (const aboveM of [3, 10, 20, 60]) {
          const weather = climate(name)
          const soil = soilOf(texture)
          const { units } = run(slope({ soil, referenceEtMm: weather.referenceEtMm }), weather, aboveM)
          const what = `${name}, ${texture}, ${aboveM} m above`
          expect(
            leastGain(units, ({ fullness }) => fullness),
            what,
          ).toBeGreaterThan(-ROUNDING)
          expect(yearSum(units[4], 'runOnMm'), what).toBeGreaterThanOrEqual(yearSum(units[0], 'runOnMm'))
        }
  })

  it('turning the slope upside down turns the order of wetness', () => {
    const down = slope({ soil: soilOf('silt') })
    const turned = down.map((unit, at) => ({
      ...unit,
      levelM: -unit.levelM,
      handsOn: at === 0 ? [] : [{ to: slopePlaces[at - 1] ?? '', share: 1 }],
    }))
    const wetness = (units: readonly WaterUnit[]) => run(units).units.map((unit) => yearSum(unit, 'fullness'))
    expect(wetness(turned)).toEqual([...wetness(down)].reverse())
    const [top, , , , foot] = wetness(down)
    expect(foot).toBeGreaterThan(top ?? 0)
  })

  it('does not mind the order in which units are given', () => {
    const there = slope()
    const shuffled = [3, 0, 4, 2, 1].flatMap((at) => there[at] ?? [])
    const back = run(shuffled).units
    for (const unit of run(there).units) expect(back.find((other) => other.id === unit.id)).toEqual(unit)
    expect(back.map((unit) => unit.id)).toEqual(shuffled.map((unit) => unit.id))
  })

  it('breaks circles by level: an uphill link goes to the receivers that are lower', () => {
    const [top, second, ...rest] = slope()
    if (!top || !second) throw new Error('the slope is too short')
    const circular = {
      ...second,
      handsOn: [
        { to: 'crest', share: 0.25 },
        { to: 'mid', share: 0.75 },
      ],
    }
    expect(run([top, circular, ...rest])).toEqual(run([top, second, ...rest]))
  })

  it('ground above the plot wets its top, and more of it wets it more', () => {
    const top = (aboveM: number) => run(slope({ soil: soilOf('clay') }), here, aboveM)
    expect(yearSum(top(20).units[0], 'fullness')).toBeGreaterThan(yearSum(top(0).units[0], 'fullness'))
    expect(yearSum(top(20).units[0], 'runOnMm')).toBeGreaterThan(0)
    const runOn = (aboveM: number) => top(aboveM).account.lines.find((line) => line.id === 'run-on')?.amount
    expect(runOn(0)).toBeCloseTo(0, 12)
    expect(runOn(200)).toBeGreaterThan(runOn(20) ?? Infinity)
  })
})

describe('soils and covers', () => {
  it('common practice, no source: sand drains through, clay stays wet longest after rain', () => {
    const weather = climate('wet north')
    const of = (texture: 'sand' | 'loam' | 'clay') =>
      run(slope({ soil: soilOf(texture), referenceEtMm: weather.referenceEtMm }), weather).units[0]
    expect(yearSum(of('sand'), 'drainageMm') + yearSum(of('sand'), 'lateralOutMm')).toBeGreaterThan(
      yearSum(of('loam'), 'drainageMm') + yearSum(of('loam'), 'lateralOutMm'),
    )
    expect(yearSum(of('sand'), 'runoffMm')).toBeLessThan(yearSum(of('clay'), 'runoffMm'))
    expect(yearSum(of('clay'), 'wetDays')).toBeGreaterThan(yearSum(of('loam'), 'wetDays'))
    expect(yearSum(of('loam'), 'wetDays')).toBeGreaterThanOrEqual(yearSum(of('sand'), 'wetDays'))
  })

  it('common practice, no source: sand is the first to dry out and leaves plants shortest of water', () => {
    for (const name of ['temperate north', 'dry summers', 'temperate south']) {
      const weather = climate(name)
      const first = (texture: 'sand' | 'loam' | 'clay') =>
        run(slope({ soil: soilOf(texture), referenceEtMm: weather.referenceEtMm }), weather).units[0]
      const shortMm = (texture: 'sand' | 'loam' | 'clay') =>
        yearSum(first(texture), 'demandMm') - yearSum(first(texture), 'actualEtMm')
      expect(shortMm('sand'), name).toBeGreaterThan(shortMm('loam'))
      expect(shortMm('sand'), name).toBeGreaterThan(shortMm('clay'))
    }
    const easyMm = (texture: 'sand' | 'loam' | 'clay') => 0.4 * soilOf(texture).availableWaterMm
    expect(easyMm('sand')).toBeLessThan(easyMm('clay'))
    expect(easyMm('sand')).toBeLessThan(easyMm('loam'))
  })

  it('common practice, no source: terraces keep more rain in the soil than the same planting on the slope', () => {
    for (const [name, weather] of Object.entries(climates))
      for (const texture of textureClasses) {
        const kept = (cover: WaterCover) => {
          const { units } = run(
            slope({ cover, soil: soilOf(texture), referenceEtMm: weather.referenceEtMm }),
            weather,
          )
          const all = (figure: Parameters<typeof yearSum>[1]) =>
            units.reduce((sum, unit) => sum + yearSum(unit, figure), 0)
          return {
            soil: all('availableMm'),
            sheds: (units[4] && yearSum(units[4], 'runoffMm') + yearSum(units[4], 'lateralOutMm')) ?? 0,
          }
        }
        const what = `${name}, ${texture}`
        expect(kept('terrace').soil, what).toBeGreaterThanOrEqual(kept('ground-cover').soil)
        expect(kept('terrace').sheds, what).toBeLessThanOrEqual(kept('ground-cover').sheds)
      }
  })

  it('common practice, no source: bare ground sheds the most, trees and meadow the least', () => {
    const weather = climate('wet north')
    const sheds = (cover: WaterCover) =>
      yearSum(run(slope({ cover, referenceEtMm: weather.referenceEtMm }), weather).units[0], 'runoffMm')
    for (const cover of ['mown', 'meadow', 'shrubs', 'trees'] as const)
      expect(sheds('bare')).toBeGreaterThan(sheds(cover))
    expect(sheds('mown')).toBeGreaterThan(sheds('meadow'))
  })

  it('a steeper slope sheds more over the surface', () => {
    const weather = climate('wet north')
    const sheds = (slopeDeg: number) =>
      yearSum(run(slope({ slopeDeg, referenceEtMm: weather.referenceEtMm }), weather).units[0], 'runoffMm')
    expect(sheds(20)).toBeGreaterThan(sheds(5))
    expect(sheds(5)).toBeGreaterThan(sheds(0))
  })

  it('a sunnier slope uses more and has more dry days', () => {
    const of = (times: number) =>
      run(slope({ referenceEtMm: eachMonth((month) => times * here.referenceEtMm[month]) })).units[2]
    expect(yearSum(of(1.2), 'dryDays')).toBeGreaterThan(yearSum(of(1), 'dryDays'))
  })
})

describe('what is refused, and how fast it is', () => {
  const [top, second, ...rest] = slope()
  if (!top || !second) throw new Error('the slope is too short')

  it.each([
    ['two units of one id', [top, { ...second, id: 'crest' }]],
    ['a link to nowhere', [{ ...top, handsOn: [{ to: 'nowhere', share: 1 }] }]],
    ['a link to itself', [{ ...top, handsOn: [{ to: 'crest', share: 1 }] }]],
    ['more than all', [{ ...top, handsOn: [{ to: 'upper', share: 1.2 }] }, second, ...rest]],
    ['less than nothing', [{ ...top, handsOn: [{ to: 'upper', share: -0.2 }] }, second, ...rest]],
    ['no area', [{ ...top, planAreaM2: 0, handsOn: [] }]],
    ['no level', [{ ...top, levelM: Number.NaN, handsOn: [] }]],
    ['a wall', [{ ...top, slopeDeg: 90, handsOn: [] }]],
  ])('refuses %s', (_, units) => {
    expect(() => run(units)).toThrow(RangeError)
  })

  it('refuses ground above of less than nothing, rain below nothing and a missing row', () => {
    expect(() => run(slope(), here, -1)).toThrow(RangeError)
    expect(() => run(slope(), { ...here, rainMm: [-1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0] })).toThrow(RangeError)
    expect(() => waterYear(slope(), here, { ...waterTables, coverUse: [] }, { aboveM: 0 })).toThrow(
      RangeError,
    )
  })

  it('settles five units in well under 20 ms', () => {
    run(slope())
    const times = Array.from({ length: 7 }, () => {
      const start = performance.now()
      run(slope({ soil: soilOf('clay') }))
      return performance.now() - start
    })
    expect(Math.min(...times)).toBeLessThan(20)
  })
})
