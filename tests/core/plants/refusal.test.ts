import { describe, expect, it } from 'vitest'
import { plantVerdict, type Plant, type Site } from '#core/plants'
import type { MatchBrief } from '../../../src/core/plants/match.types'
import { fitParts } from '../../../src/core/plants/fit-parts'
import { refusalRules } from '../../../src/core/plants/refusal-rules'
import { trialPlant, trialSite } from './trial-plants'

const none = { legal: [], toxicity: [] }

/** What refuses the trial plant, by rule: changes of plant, of site, of brief. */
const cases: Readonly<
  Record<string, { plant?: Partial<Plant>; site?: Partial<Site>; brief?: Partial<MatchBrief> }>
> = {
  'too-dry': { site: { moistureClass: 2.9 }, plant: { drought: 4 } },
  'too-wet': { site: { moistureClass: 7.1 } },
  'too-dark': { site: { lightClass: 2.9 } },
  'too-bright': { plant: { light: { from: 2, best: 3, to: 5 } } },
  'too-acid': { site: { ph: 4.9 } },
  'too-limy': { site: { ph: 8.1 } },
  texture: { plant: { textures: { sand: true, loam: false, clay: true } } },
  'hard-winter': { site: { hardWinterC: -25.1 } },
  waterlogged: { site: { wetDays: 111 } },
  'wet-winter-dry-summer': { site: { wetWinterDrySummer: true }, plant: { wetWinterDrySummer: false } },
  drought: { site: { moistureClass: 3.5 }, plant: { drought: 1 } },
  'shallow-soil': { site: { soilDepthM: 0.13 } },
  'tall-tree-on-steep-bank': {
    site: { slopeDeg: 31 },
    plant: { lifeForm: 'tree', heightM: 12 },
  },
  'not-sold-here': { plant: { sold: ['europe'] } },
  'too-tall': { brief: { heightLimitM: 0.19 } },
  'not-wanted': { brief: { without: ['trial-plant'] } },
}

const verdictOf = (id: string) => {
  const { plant, site, brief } = cases[id] ?? {}
  return plantVerdict(trialPlant(plant), trialSite(site), none, { children: false, pets: false, ...brief })
}

describe('refusals', () => {
  it('offers the trial plant on the trial site', () => {
    const verdict = plantVerdict(trialPlant(), trialSite(), none)
    expect(verdict.offered).toBe(true)
    expect(verdict.fit).toBeGreaterThan(50)
  })

  for (const id of Object.keys(cases))
    it(`refuses for one reason alone: ${id}`, () => {
      const verdict = verdictOf(id)
      expect(verdict.offered).toBe(false)
      expect(verdict.fit).toBe(0)
      const refusals = verdict.reasons.filter((reason) => refusalRules.some((rule) => rule.id === reason.id))
      expect(refusals.map((reason) => reason.id)).toEqual([id])
      expect(refusals[0]?.because.length).toBeGreaterThan(10)
    })

  it('has a case here, or in the law and poison tests, for every rule', () => {
    const elsewhere = ['barred-by-law', 'poisonous-with-children-or-pets', 'poisonous-in-hay']
    expect(refusalRules.map(({ id }) => id).sort()).toEqual([...Object.keys(cases), ...elsewhere].sort())
  })

  it('gives rules and parts of the fit their own ids', () => {
    const ids = [...refusalRules.map(({ id }) => id), ...fitParts.map(({ id }) => id)]
    expect(new Set(ids).size).toBe(ids.length)
  })

  it('a pH that nobody measured refuses nothing, but warns of lime-haters', () => {
    const heath = trialPlant({ ph: { from: 3.5, to: 6 } })
    const verdict = plantVerdict(heath, trialSite({ ph: undefined }), none)
    expect(verdict.offered).toBe(true)
    expect(verdict.reasons.map(({ id }) => id)).toContain('ph-unknown')
  })

  it('fit falls from the best place to the end of the range, on either side', () => {
    const fitAt = (moistureClass: number) =>
      plantVerdict(trialPlant(), trialSite({ moistureClass }), none).fit
    expect(fitAt(5)).toBeGreaterThan(fitAt(6))
    expect(fitAt(6)).toBeGreaterThan(fitAt(7))
    expect(fitAt(5)).toBeGreaterThan(fitAt(4))
    expect(fitAt(4)).toBeGreaterThan(fitAt(3.2))
  })

  it('roots count on a steep bank and not on the level', () => {
    const weak = trialPlant({ binding: { mat: 0, depth: 0, regrowth: 0, yearRound: 0 } })
    const fits = (plant: Plant, slopeDeg: number) => plantVerdict(plant, trialSite({ slopeDeg }), none).fit
    expect(fits(weak, 2)).toBe(fits(trialPlant(), 2))
    expect(fits(weak, 30)).toBeLessThan(fits(trialPlant(), 30))
  })

  it('fit stays within 0 and 100 and every reason has a source', () => {
    for (const moistureClass of [1, 3, 5, 7, 9, 12])
      for (const lightClass of [1, 3, 5, 7, 9]) {
        const verdict = plantVerdict(trialPlant(), trialSite({ moistureClass, lightClass }), none)
        expect(verdict.fit).toBeGreaterThanOrEqual(0)
        expect(verdict.fit).toBeLessThanOrEqual(100)
        expect(verdict.reasons.every(({ source, because }) => source !== '' && because !== '')).toBe(true)
      }
  })

  it('refuses a site without figures', () => {
    expect(() => plantVerdict(trialPlant(), trialSite({ moistureClass: Number.NaN }), none)).toThrow(
      RangeError,
    )
    expect(() => plantVerdict(trialPlant(), trialSite({ hardWinterC: Infinity }), none)).toThrow(RangeError)
  })
})
