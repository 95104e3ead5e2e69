import { describe, expect, it } from 'vitest'
import { createDeriver } from '#plan'
import type { PlantRegion } from '#core/plants'
import { found, planOn, tables } from './plans'

const deriver = createDeriver(tables)
const plantNamed = new Map(tables.plants.plants.map((plant) => [plant.id, plant]))

const regions: readonly [PlantRegion, number, number][] = [
  ['british-isles', 52, -2],
  ['europe', 48, 9],
  ['north-america', 41, -75],
  ['australia-nz', -38, 145],
]

describe.each(regions)('a bank of 27° in %s', (plantRegion, latitudeDeg, longitudeDeg) => {
  const plan = planOn({ kind: 'bank', lengthM: 14, riseM: 6.4, facesDeg: 90, widthM: 12 })
  const { zones } = found(
    { ...plan, site: { ...plan.site, latitudeDeg, longitudeDeg, plantRegion } },
    deriver,
  )

  it('is held by cover that keeps its leaves in winter, and by spreading roots (common practice, no source)', () => {
    const held = zones.filter(({ cover }) => cover.chosen === 'ground-cover' || cover.chosen === 'shrubs')
    expect(held.length).toBeGreaterThan(0)
    for (const { planting } of held) {
      const ground = planting.mix.filter(({ layer }) => layer === 'ground')
      const all = ground.reduce((sum, { share }) => sum + share, 0)
      const leafy = ground
        .filter(({ plantId }) => plantNamed.get(plantId)?.persistence !== 'summer-green')
        .reduce((sum, { share }) => sum + share, 0)
      expect(all).toBeGreaterThan(0)
      expect(leafy / all).toBeGreaterThanOrEqual(0.5)
    }
  })

  it('is planted with nothing that takes the bank over (common practice, no source)', () => {
    const mixed = zones.flatMap(({ planting }) => planting.mix.map(({ plantId }) => plantNamed.get(plantId)))
    expect(mixed.filter((plant) => (plant?.dominance ?? 5) >= 5)).toEqual([])
  })
})
