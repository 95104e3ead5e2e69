import { describe, expect, it } from 'vitest'
import { plantNamed } from '#core/plants'
import { coveringNames, plainName } from '../../../src/core/plants/names'
import { trialPlant } from './trial-plants'

describe('plant names', () => {
  it('reads hybrids and ranks however they are written', () => {
    expect(plainName('Symphoricarpos x chenaultii')).toBe(plainName('Symphoricarpos ×chenaultii'))
    expect(plainName('Lamium galeobdolon ssp. argentatum')).toBe('lamium galeobdolon subsp. argentatum')
    expect(plainName(' Rubus  fruticosus agg.')).toBe('rubus fruticosus')
    expect(plainName('Xanthorhiza simplicissima')).toBe('xanthorhiza simplicissima')
  })

  it('is covered by entries for itself, its species and its genus, closest first', () => {
    expect(coveringNames('Lamium galeobdolon subsp. argentatum')).toEqual([
      'lamium galeobdolon subsp. argentatum',
      'lamium galeobdolon',
      'lamium spp.',
    ])
    expect(coveringNames("Vinca minor 'Example'")).toContain('vinca minor')
  })

  it('keeps a plain species out of reach of entries for its subspecies and its hybrids', () => {
    expect(coveringNames('Lamium galeobdolon')).toEqual(['lamium galeobdolon', 'lamium spp.'])
    expect(coveringNames('Rhododendron ponticum × maximum')).not.toContain('rhododendron ponticum')
    expect(coveringNames('Crocosmia × crocosmiiflora')).toEqual([
      'crocosmia × crocosmiiflora',
      'crocosmia spp.',
    ])
  })

  it('finds a plant by accepted, older and English name and by its key; accepted names win', () => {
    const spicant = trialPlant({
      id: 'struthiopteris-spicant',
      name: 'Struthiopteris spicant',
      synonyms: ['Blechnum spicant'],
      common: 'hard fern',
    })
    const other = trialPlant({ id: 'other', name: 'Blechnum spicant', common: 'another' })
    const tables = { plants: [spicant, other] }
    expect(plantNamed({ plants: [spicant] }, 'blechnum  SPICANT')).toBe(spicant)
    expect(plantNamed(tables, 'Blechnum spicant')).toBe(other)
    expect(plantNamed(tables, 'Hard fern')).toBe(spicant)
    expect(plantNamed(tables, 'struthiopteris-spicant')).toBe(spicant)
    expect(plantNamed(tables, 'Nothing known')).toBeUndefined()
  })
})
