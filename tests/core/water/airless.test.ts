import { describe, expect, it } from 'vitest'
import { airlessFromMm } from '../../../src/core/water/root-zone'
import { waterYear } from '#core/water'
import { climate, slope, soilOf, waterTables, yearSum } from './water-fixtures'

describe('roots short of air', () => {
  it('Wesseling & van Wijk 1957 (from memory): a tenth of the volume must be air', () => {
    // Saxton & Rawls 2006, Table 3, loam over 500 mm: full 160 mm and 70 mm above the wilting and field capacity points.
    expect(airlessFromMm({ holdsMm: 70, fullMm: 160 }, 500)).toBe(110)
  })

  it('a clay whose drainable pores are fewer is short of air from field capacity on', () => {
    expect(airlessFromMm({ holdsMm: 60, fullMm: 95 }, 500)).toBe(60)
  })

  it('refuses a store that holds more than its pores', () => {
    expect(() => airlessFromMm({ holdsMm: 60, fullMm: 50 }, 500)).toThrow(RangeError)
  })

  it('clay is short of air on more days than sand, the foot on no fewer than the top (common practice, no source)', () => {
    const weather = climate('wet north')
    const of = (texture: 'sand' | 'loam' | 'clay') =>
      waterYear(
        slope({ soil: soilOf(texture), referenceEtMm: weather.referenceEtMm }),
        weather,
        waterTables,
        {
          aboveM: 0,
        },
      ).units
    expect(yearSum(of('clay')[0], 'airlessDays')).toBeGreaterThan(yearSum(of('sand')[0], 'airlessDays'))
    for (const texture of ['sand', 'loam', 'clay'] as const) {
      const units = of(texture)
      expect(yearSum(units.at(-1), 'airlessDays')).toBeGreaterThanOrEqual(yearSum(units[0], 'airlessDays'))
    }
  })
})
