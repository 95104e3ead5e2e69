import { describe, expect, it } from 'vitest'
import { lawsOver, legalRegions, plantVerdict } from '#core/plants'
import { needed, realTables } from './read-plants'
import { legalTruth } from './read-truth'
import { trialPlant, trialSite } from './trial-plants'

const tables = realTables()
const verdictOn = (name: string, where: string | undefined, synonyms: string[] = []) =>
  plantVerdict(trialPlant({ name, synonyms }), trialSite({ legalRegion: where }), tables)

describe('plant law', () => {
  for (const { id, list, name, where, barred, flagged, year } of legalTruth.facts)
    it(`${id} ${list}: ${name} in ${where} is ${barred ? 'barred' : flagged ? 'flagged, not barred' : 'free'}`, () => {
      for (const plant of [trialPlant({ name }), needed(tables, name)]) {
        const { flags, offered } = plantVerdict(plant, trialSite({ legalRegion: where }), tables)
        expect(flags.legal.length > 0).toBe(flagged)
        expect(flags.barred).toBe(barred)
        if (barred) expect(offered).toBe(false)
        if (year !== undefined) expect(flags.legal.map((row) => row.year)).toContain(year)
      }
    })

  it('Wildlife and Countryside Act 1981: planting in the wild alone is a warning, with its reason', () => {
    const { offered, reasons } = verdictOn('Cotoneaster horizontalis', 'England and Wales')
    expect(offered).toBe(true)
    expect(reasons.some((reason) => reason.id === 'legal-warning' && !reason.for)).toBe(true)
  })

  it('Regulation (EU) 1143/2014 binds in every member state, and not in Switzerland or England', () => {
    expect(verdictOn('Gunnera tinctoria', 'Germany').flags.barred).toBe(true)
    expect(verdictOn('Celastrus orbiculatus', 'Ireland').flags.barred).toBe(true)
    expect(verdictOn('Celastrus orbiculatus', 'Switzerland').flags.barred).toBe(false)
    expect(verdictOn('Celastrus orbiculatus', 'England and Wales').flags.barred).toBe(false)
  })

  it('Great Britain’s list binds in England, Wales and Scotland', () => {
    for (const where of ['England', 'Wales', 'England and Wales', 'Scotland'])
      expect(verdictOn('Ailanthus altissima', where).flags.barred).toBe(true)
    expect(verdictOn('Ailanthus altissima', 'Norway').flags.barred).toBe(false)
  })

  it('finds an older name on a list, and a listed name among a plant’s older names', () => {
    expect(verdictOn('Pennisetum setaceum', 'Spain').flags.barred).toBe(true)
    expect(verdictOn('Cenchrus setaceus', 'Spain').flags.barred).toBe(true)
    expect(verdictOn('Something new', 'Spain', ['Pennisetum setaceum']).flags.barred).toBe(true)
  })

  it('covers kinds within a listed species, and whole genera with their exceptions', () => {
    expect(verdictOn("Vinca minor 'Example'", 'Delaware').flags.barred).toBe(true)
    expect(verdictOn('Salix purpurea', 'Australia: Victoria').flags.barred).toBe(true)
    expect(verdictOn('Salix babylonica', 'Australia: Victoria').flags.barred).toBe(false)
  })

  it('Scotland, Act of 2011: whatever is not native is flagged against planting in the wild', () => {
    const site = trialSite({ legalRegion: 'Scotland' })
    const stranger = plantVerdict(trialPlant({ native: ['north-america'] }), site, tables)
    const native = plantVerdict(trialPlant(), site, tables)
    expect(stranger.flags.legal.map((row) => row.source)).toEqual(['wane-scotland-2011'])
    expect(stranger.offered).toBe(true)
    expect(native.flags.legal).toEqual([])
  })

  it('says nothing where no place is given, and keeps no list for a place it does not know', () => {
    expect(verdictOn('Gunnera tinctoria', undefined).flags.legal).toEqual([])
    expect(lawsOver('Atlantis')).toEqual([])
  })

  it('every region of the legal table binds somewhere in the picking list', () => {
    const bound = new Set(legalRegions.flatMap(lawsOver))
    expect(
      [...new Set(tables.legal.map((row) => row.region))].filter((region) => !bound.has(region)),
    ).toEqual([])
  })
})
