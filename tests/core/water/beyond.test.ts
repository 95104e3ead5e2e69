import { describe, expect, it } from 'vitest'
import { waterYear, type EdgeStretch } from '#core/water'
import { climate, slope, waterTables, yearSum } from './water-fixtures'

const units = slope()
const top = units[0]?.id ?? ''
const width = (units[0]?.planAreaM2 ?? 0) / (units[0]?.lengthM ?? 1)

const stretch = (what: EdgeStretch['what'], changes: Partial<EdgeStretch> = {}): EdgeStretch => ({
  id: `the-${what ?? 'brook'}`,
  name: 'what is there',
  what,
  widthM: width,
  uphillM: 12,
  ...changes,
})

const yearWith = (stretches: readonly EdgeStretch[], aboveM = 0, unitId = top, rain = 'temperate north') =>
  waterYear(units, climate(rain), waterTables, {
    aboveM,
    edges: [{ unitId, enteringM: width, stretches }],
  })

const line = (year: ReturnType<typeof yearWith>, id: string): number =>
  year.account.lines.find((one) => one.id === id)?.amount ?? 0

describe('water from beyond the boundary', () => {
  it.each(['neighbour', 'field', 'wood', 'road', 'roof', 'own-garden'] as const)(
    'exact solution: the books close with %s beyond, on the plot and on each unit',
    (what) => {
      for (const name of ['temperate north', 'wet tropics', 'near desert', 'no rain at all']) {
        const year = yearWith([stretch(what)], 0, top, name)
        const sum = year.account.lines.reduce((total, { amount }) => total + amount, 0)
        expect(Math.abs(sum)).toBeLessThan(1e-6)
        for (const { account } of year.units)
          expect(Math.abs(account.lines.reduce((total, { amount }) => total + amount, 0))).toBeLessThan(1e-6)
      }
    },
  )

  it('TR-55 eq. 2-3 and 2-4: a road keeps back no more than its curve number of 98 says, 5.2 mm a rain', () => {
    const year = yearWith([stretch('road')])
    const rainMm = climate('temperate north').rainMm.reduce((sum, month) => sum + month, 0)
    const shedMm = (line(year, 'run-on-the-road') * 1000) / (width * 12)
    expect(shedMm).toBeLessThan(rainMm)
    // 25400 / 98 - 254 = 5.18 mm stand on it at most, and dry off in between.
    expect(shedMm).toBeGreaterThan(0.25 * rainMm)
    expect(line(year, 'lateral-in')).toBeCloseTo(0, 12)
  })

  it('TR-55 table 2-2: pavement sheds more than pasture, pasture more than a wood', () => {
    const shed = (what: 'road' | 'field' | 'wood') =>
      line(yearWith([stretch(what)], 0, top, 'wet north'), `run-on-the-${what}`)
    expect(shed('road')).toBeGreaterThan(shed('field'))
    expect(shed('field')).toBeGreaterThan(shed('wood'))
  })

  it('exact solution: half an edge of road sheds half as much as a whole one', () => {
    const whole = line(yearWith([stretch('road')]), 'run-on-the-road')
    const half = line(yearWith([stretch('road', { widthM: width / 2 })]), 'run-on-the-road')
    expect(half / whole).toBeCloseTo(0.5, 9)
  })

  it('exact solution: an edge described as shedding nothing takes the ground above away, half an edge half of it', () => {
    const above = line(yearWith([], 12, top, 'wet north'), 'run-on')
    expect(above).toBeGreaterThan(0)
    expect(line(yearWith([stretch(undefined)], 12, top, 'wet north'), 'run-on')).toBe(0)
    const half = line(yearWith([stretch(undefined, { widthM: width / 2 })], 12, top, 'wet north'), 'run-on')
    expect(half / above).toBeCloseTo(0.5, 9)
  })

  it('a lower unit takes water over its own edge too, and is wetter for it (common practice, no source)', () => {
    const foot = units.at(-1)?.id ?? ''
    const plain = yearWith([], 0).units.at(-1)
    const fed = yearWith([stretch('roof')], 0, foot).units.at(-1)
    expect(yearSum(fed, 'runOnMm')).toBeGreaterThan(yearSum(plain, 'runOnMm'))
  })

  it('refuses an edge of no unit and a negative width', () => {
    expect(() => yearWith([stretch('road')], 0, 'nowhere')).toThrow(RangeError)
    expect(() => yearWith([stretch('road', { widthM: -1 })])).toThrow(RangeError)
  })

  it('TR-55 table 2-2: curve numbers of woods, open space and pavement are the printed ones', () => {
    const of = (what: string) => {
      const row = waterTables.beyond.find((one) => one.what === what)
      return row && [row.A, row.B, row.C, row.D]
    }
    expect(of('wood')).toEqual([30, 55, 70, 77])
    expect(of('own-garden')).toEqual([39, 61, 74, 80])
    expect(of('road')).toEqual([98, 98, 98, 98])
    expect(of('roof')).toEqual([98, 98, 98, 98])
  })
})
