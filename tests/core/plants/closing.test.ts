import { describe, expect, it } from 'vitest'
import { coverAfter, timeStretch, yearsToClose } from '../../../src/core/plants/closing'
import { monthsToCover } from '../../../src/core/plants/cover-over-time'
import { needed, realTables } from './read-plants'
import { practiceTruth } from './read-truth'
import { trialPlant, trialSite } from './trial-plants'

describe('time to closed cover', () => {
  it('hexagonal lattice, by hand: 0.30 m apart, 0.05 m at planting, 0.15 m a year closes in 0.82 years', () => {
    // (0.30/√3 − 0.05)/0.15 = (0.1732 − 0.05)/0.15
    expect(yearsToClose(trialPlant())).toBeCloseTo(0.8214, 3)
  })

  it('says when a plant never closes: too narrow, or standing still', () => {
    expect(yearsToClose(trialPlant({ rootHabit: ['tussock'], spreadM: 0.3 }))).toBeUndefined()
    expect(yearsToClose(trialPlant({ spreadMPerYear: 0 }))).toBeUndefined()
    expect(yearsToClose(trialPlant({ spacingM: 0.05 }))).toBe(0)
  })

  it('a clump stops at its width, a runner goes on', () => {
    const clump = trialPlant({ rootHabit: ['tussock'], spreadM: 0.2 })
    const runner = trialPlant({ rootHabit: ['stolon'], spreadM: 0.2 })
    // 0.1 m discs, 0.3 m apart: 12.83 × π × 0.01
    expect(coverAfter(clump, 10, 1, false)).toBeCloseTo(0.403, 3)
    expect(coverAfter(runner, 10, 1, false)).toBe(1)
  })

  it('grows by half in the first year and in full after it', () => {
    const slow = trialPlant({ spreadMPerYear: 0.04, unitRadiusM: 0 })
    // After a year 0.02 m, after two 0.06 m: cover goes with the square.
    expect(coverAfter(slow, 2, 1, false) / coverAfter(slow, 1, 1, false)).toBeCloseTo(9, 9)
  })

  it('annuals count for nothing', () => {
    expect(coverAfter(trialPlant({ lifeForm: 'annual' }), 1, 1, true)).toBe(0)
  })

  it('takes longer on poor ground, and later is never less covered', () => {
    const sharing = [{ plant: trialPlant(), share: 1, sown: false }]
    const good = monthsToCover(sharing, timeStretch(trialSite()))
    const poor = monthsToCover(sharing, timeStretch(trialSite({ moistureClass: 2 })))
    expect(poor?.from).toBeGreaterThan(good?.from ?? Infinity)
    expect(good?.to).toBeGreaterThan(good?.from ?? Infinity)
    const covers = Array.from({ length: 121 }, (_, month) => coverAfter(trialPlant(), month / 12, 1, false))
    expect(covers.every((cover, month) => month === 0 || cover >= (covers[month - 1] ?? 0))).toBe(true)
  })

  it('is not said when cover stays open for ten years', () => {
    const thin = trialPlant({ rootHabit: ['tussock'], spreadM: 0.2 })
    expect(monthsToCover([{ plant: thin, share: 1, sown: false }], { from: 1, to: 1.5 })).toBeUndefined()
    expect(monthsToCover([], { from: 1, to: 1.5 })).toBeUndefined()
  })

  const tables = realTables()
  for (const { name, from, to } of practiceTruth.monthsToCover)
    it(`common practice, no source: ${name} covers in ${from} to ${to} months; ours meets it within a half more`, () => {
      const ours = monthsToCover(
        [{ plant: needed(tables, name), share: 1, sown: false }],
        timeStretch(trialSite()),
      )
      expect(ours).toBeDefined()
      expect(ours?.from).toBeLessThanOrEqual(to * 1.5)
      expect(ours?.to).toBeGreaterThanOrEqual(from / 1.5)
    })
})
