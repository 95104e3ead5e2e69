import { describe, expect, it } from 'vitest'
import { plantVerdict } from '#core/plants'
import { toxicityOf } from '../../../src/core/plants/toxicity'
import { needed, realTables } from './read-plants'
import { factsTruth } from './read-truth'
import { trialPlant, trialSite } from './trial-plants'

const tables = realTables()
const poisonOf = (name: string) => toxicityOf(trialPlant({ name }), tables.toxicity)

describe('poisonous plants', () => {
  for (const name of factsTruth.severelyPoisonous.names)
    it(`P57 list of potentially harmful plants (HTA): ${name} is severely poisonous if eaten`, () => {
      const { flags, reasons } = plantVerdict(needed(tables, name), trialSite(), tables)
      expect(flags.toxicity?.ingestion).toBe('severe')
      expect(reasons.some(({ id, because }) => id === 'poisonous' && because.startsWith('Severely'))).toBe(
        true,
      )
    })

  it('P59 veterinary knowledge, from memory: Colchicum autumnale is never offered in a meadow', () => {
    const plant = needed(tables, 'Colchicum autumnale')
    for (const moistureClass of [3, 5, 7])
      for (const lightClass of [5, 7, 9]) {
        const site = trialSite({ moistureClass, lightClass })
        const verdict = plantVerdict(plant, site, tables, { children: false, pets: false, cover: 'meadow' })
        expect(verdict.offered).toBe(false)
        expect(verdict.reasons.map(({ id }) => id)).toContain('poisonous-in-hay')
      }
  })

  it('list of potentially harmful plants (HTA): a genus entry covers its species', () => {
    expect(poisonOf('Aconitum napellus')?.name).toBe('Aconitum spp.')
    expect(poisonOf('Euphorbia polychroma')?.name).toBe('Euphorbia spp.')
  })

  it('takes the entry of the taxon itself before that of its genus', () => {
    expect(poisonOf('Colchicum autumnale')?.name).toBe('Colchicum autumnale')
    expect(poisonOf('Vinca minor')?.ingestion).toBe('low')
    expect(poisonOf('Exemplum vulgare')).toBeUndefined()
  })

  it('keeps severe poisons from children and pets, and warns all others', () => {
    const yew = trialPlant({ name: 'Taxus baccata' })
    const forBrief = (children: boolean, pets: boolean) =>
      plantVerdict(yew, trialSite(), tables, { children, pets })
    expect(forBrief(false, false).offered).toBe(true)
    for (const verdict of [forBrief(true, false), forBrief(false, true)]) {
      expect(verdict.offered).toBe(false)
      expect(verdict.fit).toBe(0)
      expect(verdict.reasons.map(({ id }) => id)).toContain('poisonous-with-children-or-pets')
    }
  })
})
