import { describe, expect, it } from 'vitest'
import {
  plantingOf,
  type Plant,
  type PlantingWish,
  type PlantRegion,
  type Site,
  type ZonePlanting,
} from '#core/plants'
import type { CoverKind } from '#core/cover'
import { realTables } from './read-plants'
import { trialPlant, trialSite } from './trial-plants'

const tables = realTables()
const byId = new Map(tables.plants.map((plant) => [plant.id, plant]))
const plantOf = (id: string): Plant => byId.get(id) ?? trialPlant({ id })

const wish = (changes: Partial<PlantingWish> = {}): PlantingWish => ({
  cover: 'ground-cover',
  children: false,
  pets: false,
  nativeShare: 0,
  ...changes,
})

const planted: readonly CoverKind[] = ['ground-cover', 'shrubs', 'trees', 'terrace']
const regions: readonly PlantRegion[] = ['british-isles', 'europe', 'north-america', 'australia-nz']

/** A spread of zones over wetness, light, slope, soil and region. */
const zones: readonly Site[] = regions.flatMap((region) =>
  [3, 4.5, 6, 7.5].flatMap((moistureClass) =>
    [3.5, 5, 7, 9].flatMap((lightClass) =>
      [5, 20, 35].map((slopeDeg) =>
        trialSite({ region, moistureClass, lightClass, slopeDeg, hardWinterC: -8, slopeAreaM2: 90 }),
      ),
    ),
  ),
)

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
const layersIn = ({ mix }: ZonePlanting) => [...new Set(mix.map(({ layer }) => layer))]

describe('mixes for planted covers', () => {
  for (const cover of planted) {
    const plantings = zones.map((site) => ({ site, planting: plantingOf(site, tables, wish({ cover })) }))

    it(`${cover}: shares never exceed the zone, and every plant of a mix is offered`, () => {
      for (const { planting } of plantings) {
        expect(sum(planting.mix.map(({ share }) => share))).toBeLessThanOrEqual(1 + 1e-9)
        const offered = new Set(planting.offered.map(({ plant }) => plant.id))
        expect(planting.mix.filter(({ plantId }) => !offered.has(plantId))).toEqual([])
        expect(new Set(planting.mix.map(({ plantId }) => plantId)).size).toBe(planting.mix.length)
      }
    })

    it(`${cover}, common practice, no source: spreaders of class 3 keep to 40 %, of class 4 to 20 %, of class 5 out`, () => {
      for (const { planting } of plantings) {
        const alone = planting.mix.length === 1
        for (const { plantId, share } of planting.mix) {
          const { dominance } = plantOf(plantId)
          expect(dominance).toBeLessThan(5)
          if (!alone && dominance === 4) expect(share).toBeLessThanOrEqual(0.2 + 1e-9)
          if (!alone && dominance === 3) expect(share).toBeLessThanOrEqual(0.4 + 1e-9)
        }
      }
    })

    it(`${cover}, common practice, no source: partners differ by less than 2 in dominance and less than 3-fold in height`, () => {
      for (const { planting } of plantings)
        for (const layer of layersIn(planting)) {
          const partners = planting.mix
            .filter((line) => line.layer === layer)
            .map((line) => plantOf(line.plantId))
          const dominances = partners.map(({ dominance }) => dominance)
          const heights = partners.map(({ heightM }) => heightM)
          expect(Math.max(...dominances) - Math.min(...dominances)).toBeLessThan(2)
          expect(Math.max(...heights) / Math.min(...heights)).toBeLessThan(3)
          const families = new Set(partners.map(({ family }) => family))
          if (partners.length > 1) expect(families.size).toBeGreaterThan(1)
        }
    })

    it(`hexagonal lattice, ${cover}: the count is share × slope area × 1.1547/s², rounded up`, () => {
      for (const { site, planting } of plantings) {
        const areaM2 =
          cover === 'terrace'
            ? site.slopeAreaM2 * Math.cos((site.slopeDeg * Math.PI) / 180)
            : site.slopeAreaM2
        for (const line of planting.mix) {
          const exact = (line.share * areaM2 * 2) / Math.sqrt(3) / line.spacingM ** 2
          expect(line.count).toBeGreaterThanOrEqual(exact - 1e-6)
          expect(line.count).toBeLessThan(exact + 1)
        }
      }
    })

    it(`${cover}: cover grows from year to year and stays within the ground there is`, () => {
      for (const { planting } of plantings.filter(({ planting: { mix } }) => mix.length > 0)) {
        expect(planting.coverByYear).toHaveLength(11)
        planting.coverByYear.forEach((share, year) => {
          expect(share).toBeGreaterThanOrEqual(planting.coverByYear[year - 1] ?? 0)
          expect(share).toBeLessThanOrEqual(1 + 1e-9)
        })
        expect(planting.costClass).toBeGreaterThanOrEqual(1)
        expect(planting.costClass).toBeLessThanOrEqual(5)
      }
    })
  }

  it('says why when nothing can be planted', () => {
    const bog = trialSite({ moistureClass: 12, wetDays: 366, lightClass: 1 })
    const planting = plantingOf(bog, tables, wish())
    expect(planting.mix).toEqual([])
    expect(planting.none).toContain('No plant')
    expect(planting.refused.length).toBeGreaterThan(0)
  })

  it('plants nothing on mown ground or ground left alone, and says so', () => {
    for (const cover of ['mown', 'leave'] as const) {
      const planting = plantingOf(trialSite(), tables, wish({ cover }))
      expect(planting.mix).toEqual([])
      expect(planting.none).toBeDefined()
    }
  })

  it('gives the same planting for the same zone', () => {
    const twice = [0, 1].map(() => JSON.stringify(plantingOf(trialSite(), tables, wish({ cover: 'trees' }))))
    expect(twice[0]).toBe(twice[1])
  })
})

describe('what the person wants', () => {
  it('meets the native share where the zone allows it', () => {
    for (const nativeShare of [0.3, 0.6, 0.9, 1]) {
      const { mix } = plantingOf(trialSite(), tables, wish({ nativeShare }))
      const native = mix.filter(({ plantId }) => plantOf(plantId).native.includes('british-isles'))
      expect(
        sum(native.map(({ share }) => share)) / sum(mix.map(({ share }) => share)),
      ).toBeGreaterThanOrEqual(nativeShare - 1e-9)
    }
  })

  it('says so on every line that is not native where the share is missed', () => {
    const strangers = [1, 2, 3].map((n) =>
      trialPlant({ id: `stranger-${n}`, name: `Genus${n} vulgare`, family: `Family${n}`, native: [] }),
    )
    const { mix } = plantingOf(trialSite(), { ...tables, plants: strangers }, wish({ nativeShare: 0.5 }))
    expect(mix.length).toBeGreaterThan(0)
    for (const { because } of mix) expect(because).toContain('Not native')
  })

  it('keeps a plant in that the person insists on, with the objection beside it', () => {
    const dry = trialSite({ moistureClass: 3, lightClass: 9 })
    const { mix, refused } = plantingOf(dry, tables, wish({ insist: ['ajuga-reptans'] }))
    expect(refused.map(({ plant }) => plant.id)).toContain('ajuga-reptans')
    const line = mix.find(({ plantId }) => plantId === 'ajuga-reptans')
    expect(line?.because).toContain('You insist')
    expect(line?.because).toContain('Too dry')
  })

  it('Delaware invasive plant list: what the law bars stays out however much one insists', () => {
    const site = trialSite({ region: 'north-america', legalRegion: 'USA: Delaware' })
    const { mix, refused } = plantingOf(site, tables, wish({ insist: ['vinca-minor'] }))
    expect(mix.map(({ plantId }) => plantId)).not.toContain('vinca-minor')
    const verdict = refused.find(({ plant }) => plant.id === 'vinca-minor')
    expect(verdict?.reasons[0]?.id).toBe('barred-by-law')
  })

  it('refuses a plant that the cover has no place for, and says why', () => {
    const { mix, refused } = plantingOf(trialSite(), tables, wish({ insist: ['alnus-glutinosa'] }))
    expect(mix.map(({ plantId }) => plantId)).not.toContain('alnus-glutinosa')
    const verdict = refused.find(({ plant }) => plant.id === 'alnus-glutinosa')
    expect(verdict?.reasons[0]?.id).toBe('not-for-this-cover')
  })

  it('leaves out what the person does not want, and what grows too tall', () => {
    const first = plantingOf(trialSite(), tables, wish()).mix[0]?.plantId ?? ''
    const { mix, refused } = plantingOf(trialSite(), tables, wish({ without: [first], heightLimitM: 0.3 }))
    expect(mix.map(({ plantId }) => plantId)).not.toContain(first)
    expect(refused.find(({ plant }) => plant.id === first)?.reasons.map(({ id }) => id)).toContain(
      'not-wanted',
    )
    for (const { plantId } of mix) expect(plantOf(plantId).heightM).toBeLessThanOrEqual(0.3)
  })

  it('keeps severe poisons out of every list where children come', () => {
    for (const cover of [...planted, 'meadow'] as const) {
      const { offered } = plantingOf(trialSite(), tables, wish({ cover, children: true }))
      expect(offered.filter(({ flags }) => flags.toxicity?.ingestion === 'severe')).toEqual([])
    }
  })

  it('refuses a zone without area, a cliff and a share beyond the whole', () => {
    expect(() => plantingOf(trialSite({ slopeAreaM2: 0 }), tables, wish())).toThrow(RangeError)
    expect(() => plantingOf(trialSite({ slopeDeg: 90 }), tables, wish())).toThrow(RangeError)
    expect(() => plantingOf(trialSite(), tables, wish({ nativeShare: 1.1 }))).toThrow(RangeError)
  })
})

describe('sown meadows', () => {
  const meadowOn = (changes: Partial<Site>) =>
    plantingOf(trialSite({ lightClass: 8, ...changes }), tables, wish({ cover: 'meadow' }))
  const sownG = ({ mix }: ZonePlanting) =>
    sum(mix.filter(({ share }) => share > 0).map(({ seedG }) => seedG ?? 0))
  const isGrass = (id: string) => ['grass', 'sedge-rush'].includes(plantOf(id).lifeForm)

  it('seed growers’ advice: 4 g/m² on gentle ground, 5 g/m² on a slope that may wash', () => {
    expect(sownG(meadowOn({ slopeDeg: 5 }))).toBeCloseTo(400, 6)
    expect(sownG(meadowOn({ slopeDeg: 25 }))).toBeCloseTo(500, 6)
  })

  it('seed growers’ advice: four parts of grass to one of flowers by weight', () => {
    for (const moistureClass of [3.5, 5, 6.5]) {
      const { mix } = meadowOn({ moistureClass })
      expect(sum(mix.filter(({ plantId }) => isGrass(plantId)).map(({ share }) => share))).toBeCloseTo(0.8, 6)
      expect(sum(mix.map(({ share }) => share))).toBeCloseTo(1, 9)
    }
  })

  it('seed growers’ advice: yellow rattle at 0.1 to 1 g/m², never on steep ground', () => {
    const line = meadowOn({ slopeDeg: 8 }).mix.find(({ plantId }) => plantId === 'rhinanthus-minor')
    expect((line?.seedG ?? 0) / 100).toBeGreaterThanOrEqual(0.1)
    expect((line?.seedG ?? 0) / 100).toBeLessThanOrEqual(1)
    expect(meadowOn({ slopeDeg: 28 }).mix.map(({ plantId }) => plantId)).not.toContain('rhinanthus-minor')
  })

  it('sows no bulbs, counts no plants, and has no flowers without grass', () => {
    const { mix, offered } = meadowOn({})
    expect(mix.filter(({ plantId }) => plantOf(plantId).lifeForm === 'bulb')).toEqual([])
    expect(mix.every(({ count, perM2 }) => count === 0 && perM2 === 0)).toBe(true)
    const flowersOnly = offered.map(({ plant }) => plant).filter(({ id }) => !isGrass(id))
    const without = plantingOf(trialSite(), { ...tables, plants: flowersOnly }, wish({ cover: 'meadow' }))
    expect(without.mix).toEqual([])
    expect(without.none).toContain('grass')
  })
})
