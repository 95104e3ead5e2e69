import { describe, expect, it } from 'vitest'
import {
  plantingOf,
  plantRegions,
  plantVerdict,
  type Plant,
  type PlantVerdict,
  type Site,
} from '#core/plants'
import { coverKinds } from '#core/cover'
import { bindingClass } from '../../../src/core/plants/binding'
import { coverAfter } from '../../../src/core/plants/closing'
import { needed, realTables } from './read-plants'
import { factsTruth } from './read-truth'
import { trialSite } from './trial-plants'

const tables = realTables()

/** Every mix of some values, on ground that is otherwise mild, deep and wet as the plant could wish. */
function sweep(values: Readonly<Record<string, readonly (string | number | boolean)[]>>): Site[] {
  return Object.entries(values).reduce<Site[]>(
    (sites, [name, options]) =>
      sites.flatMap((site) => options.map((option) => ({ ...site, [name]: option }))),
    [trialSite({ hardWinterC: -5, soilDepthM: 2, slopeDeg: 12, wetDays: 20 })],
  )
}

const textures = ['sand', 'loam', 'clay'] as const

/** The places that the facts speak of. */
const places: Readonly<Record<string, readonly Site[]>> = {
  'dry top': sweep({
    moistureClass: [1.5, 2, 2.5, 3],
    lightClass: [8, 9],
    ph: [5.5, 6.5, 7.5],
    texture: ['sand', 'loam'],
  }),
  'hot open crest': sweep({
    moistureClass: [2, 3, 4],
    lightClass: [8, 9],
    ph: [5.5, 6.5, 7.5],
    texture: textures,
  }),
  'half shade': sweep({ moistureClass: [5], lightClass: [4, 5], ph: [6.5], texture: textures }),
  'deep shade': sweep({ moistureClass: [3, 4, 5], lightClass: [1, 2, 3], ph: [5, 6, 7], texture: textures }),
  chalk: sweep({ moistureClass: [3, 4, 5, 6, 7], lightClass: [3, 5, 7, 9], ph: [7.5, 8], texture: textures }),
  'above pH 6.5': sweep({
    moistureClass: [3, 4, 5, 6, 7],
    lightClass: [6, 8],
    ph: [6.8, 7.2],
    texture: textures,
  }),
  'above pH 6': sweep({
    moistureClass: [4, 5, 6, 7],
    lightClass: [5, 7],
    ph: [6.2, 6.6, 7.2],
    texture: textures,
  }),
  'acid soil': sweep({
    moistureClass: [2, 3, 4, 5],
    lightClass: [7, 8, 9],
    ph: [4.5, 5, 5.4],
    texture: textures,
  }),
  'damp meadow': sweep({
    moistureClass: [7],
    lightClass: [7, 8],
    ph: [6],
    texture: ['loam', 'clay'],
    wetDays: [120],
  }),
  'dry chalk': sweep({ moistureClass: [3, 3.5], lightClass: [8, 9], ph: [7.5], texture: ['loam'] }),
  'dry sunny bank': sweep({
    moistureClass: [3, 3.5],
    lightClass: [8],
    ph: [6.5, 7.5],
    texture: ['sand', 'loam'],
  }),
  'dry poor sunny top': sweep({ moistureClass: [3], lightClass: [8, 9], ph: [5.5], texture: ['sand'] }),
  'damp foot': sweep({
    moistureClass: [7.5],
    lightClass: [6, 7],
    ph: [6.5],
    texture: ['loam'],
    wetDays: [150],
  }),
  'wet ground': sweep({ moistureClass: [7.5, 8, 9], lightClass: [7, 8, 9], ph: [6, 7], wetDays: [200, 300] }),
  'waterlogged soil': sweep({
    moistureClass: [7.5, 8.5],
    lightClass: [7, 8],
    texture: textures,
    wetDays: [300],
  }),
  'standing water': sweep({
    moistureClass: [10],
    lightClass: [7, 8],
    texture: ['clay', 'loam'],
    wetDays: [366],
  }),
}

/** The verdict as if every nursery had the plant: a fact must hold for its own reason. */
function verdictAt(plant: Plant, site: Site): PlantVerdict {
  return plantVerdict({ ...plant, sold: [...plantRegions] }, site, tables)
}

function sitesOf(where: string): readonly Site[] {
  const sites = places[where]
  if (!sites) throw new Error(`no place is called ${where}`)
  return sites
}

describe('what floras say of single species', () => {
  for (const { id, name, kind, where, because } of factsTruth.facts)
    it(`${id} floras, from memory: ${name} ${kind === 'never' ? 'is never offered for' : 'can grow on'} ${where}`, () => {
      const verdicts = sitesOf(where).map((site) => verdictAt(needed(tables, name), site))
      if (kind === 'can') return expect(verdicts.some(({ offered }) => offered)).toBe(true)
      expect(verdicts.filter(({ offered }) => offered)).toEqual([])
      if (because !== undefined)
        for (const { reasons } of verdicts) expect(reasons.map((reason) => reason.id)).toContain(because)
    })
})

describe('twins that share a name or a look', () => {
  for (const { id, drier, wetter } of factsTruth.twins)
    it(`${id} floras, from memory: ${drier} sits drier than ${wetter}, and they differ`, () => {
      const one = needed(tables, drier)
      const other = needed(tables, wetter)
      expect(one.id).not.toBe(other.id)
      expect(one.moisture).not.toEqual(other.moisture)
      expect(one.moisture.best).toBeLessThan(other.moisture.best)
    })

  it('P35 floras, from memory: Primula veris sits sunnier than Primula vulgaris', () => {
    expect(needed(tables, 'Primula veris').light.best).toBeGreaterThan(
      needed(tables, 'Primula vulgaris').light.best,
    )
  })
})

describe('what a plant does', () => {
  it('P39 floras, from memory: Alnus glutinosa fixes nitrogen and bears wet ground', () => {
    const alder = needed(tables, 'Alnus glutinosa')
    expect(alder.nitrogenFixing).toBe(true)
    expect(alder.waterlogging).toBeGreaterThanOrEqual(3)
  })

  it('P41 floras, from memory: Rhinanthus minor is an annual that covers and holds nothing', () => {
    const rattle = needed(tables, 'Rhinanthus minor')
    expect(rattle.lifeForm).toBe('annual')
    expect(bindingClass(rattle.binding)).toBe(0)
    expect(coverAfter(rattle, 5, 1, true)).toBe(0)
    const { mix } = plantingOf(trialSite({ slopeDeg: 6 }), tables, {
      cover: 'meadow',
      children: false,
      pets: false,
      nativeShare: 0,
    })
    const line = mix.find(({ plantId }) => plantId === rattle.id)
    expect(line?.share).toBe(0)
    expect(line?.because).toContain('September to December')
  })

  it('P43 common practice, no source: what takes all carries the top class and stands in no mix', () => {
    const takers = factsTruth.takesAll.names.map((name) => needed(tables, name))
    for (const taker of takers) expect(taker.dominance).toBe(5)
    const sold = tables.plants.map((plant) => ({ ...plant, sold: [...plantRegions] }))
    for (const cover of coverKinds)
      for (const moistureClass of [4, 6, 8, 9])
        for (const lightClass of [4, 6, 8]) {
          const site = trialSite({ moistureClass, lightClass, wetDays: 60 })
          const wish = { cover, children: false, pets: false, nativeShare: 0.5 }
          const { mix } = plantingOf(site, { ...tables, plants: sold }, wish)
          const takingAll = mix.filter(({ plantId }) => takers.some(({ id }) => id === plantId))
          expect(takingAll).toEqual([])
        }
  })

  it('P45 floras, from memory: shore plants bear salt, woodruff does not', () => {
    for (const name of factsTruth.salt.tolerant) expect(needed(tables, name).salt).toBeGreaterThanOrEqual(2)
    for (const name of factsTruth.salt.not) expect(needed(tables, name).salt).toBe(0)
  })
})
