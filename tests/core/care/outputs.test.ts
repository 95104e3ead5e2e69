import { describe, expect, it } from 'vitest'
import { machineOf } from '#core/cover'
import { bank, careOf, named, sumHours, tables, truth } from './tables'

/** An acre [m²] and a thousand square feet [m²]. */
const ACRE_M2 = 4046.856
const SQ_FT_1000_M2 = 92.903

describe('hours on the flat against published time studies', () => {
  it('JKILA 50-4 Table 5: weeding new ground cover goes at 51.15 m²/h', () => {
    const [job] = named(careOf(bank({ choice: 'ground-cover' })), 'weed-cover-new')
    expect(200 / (job?.hours ?? 0)).toBeCloseTo(truth.jkila.weedingM2PerH, 6)
  })

  it('JKILA 50-4 Table 5: a third of the shrubs pruned at 102.92 m²/h', () => {
    const [job] = named(careOf(bank({ choice: 'shrubs' })), 'prune-shrubs')
    expect((200 * 0.33) / (job?.hours ?? 0)).toBeCloseTo(truth.jkila.clippingM2PerH, 6)
  })

  it('NRPA 1986 (from memory): walk-behind mowing takes 2.8 hours an acre', () => {
    const acre = careOf(bank({ choice: 'mown', slopeAreaM2: ACRE_M2 }))
    const cuts = named(acre, 'mow').reduce((sum, { times }) => sum + times, 0)
    expect(sumHours(named(acre, 'mow')) / cuts).toBeCloseTo(truth.nrpa.walkBehindHoursPerAcre, 2)
  })

  it('NRPA 1986 (from memory): raking takes 0.42 hours per 1000 square feet', () => {
    const [job] = named(careOf(bank({ choice: 'meadow' })), 'rake-meadow')
    expect(((job?.hours ?? 0) / 200) * SQ_FT_1000_M2).toBeCloseTo(truth.nrpa.rakingHoursPer1000SqFt, 2)
  })

  it('scythe reference site: an acre in a day of 8 hours', () => {
    expect(machineOf('scythe', tables.cover).outputM2PerH * 8).toBeCloseTo(truth.scytheHaPerDay * 10_000, -1)
  })

  it('US extension columns: 25 L/m² a week in the first summer, rain counted in', () => {
    const [may] = named(careOf(bank({ choice: 'ground-cover' })), 'water-cover')
    const weeks = 31 / 7
    const missingL = (truth.waterLPerM2Week - 60 / weeks) * 200
    expect(may?.times).toBe(4)
    expect((may?.hours ?? 0) / 4).toBeCloseTo(missingL / 2700, 6)
  })

  it('US extension columns: no watering in a month that rains enough', () => {
    const wet = careOf(bank({ choice: 'ground-cover' }), {
      ratePerHourMinor: undefined,
      legalRegion: undefined,
      months: Array.from({ length: 12 }, () => ({ tMinC: 8, tMaxC: 16, rainMm: 115 })),
    })
    expect(named(wet, 'water-cover')).toEqual([])
  })

  it('a visit takes its least time however small the zone (common practice, no source)', () => {
    const tiny = careOf(bank({ choice: 'mown', slopeAreaM2: 2 }))
    expect(named(tiny, 'mow')[0]?.hours).toBeCloseTo(2 * 0.25, 9)
  })
})
