import { plantNamed, plantVerdict, type Plant, type PlantVerdict } from '#core/plants'
import type { SpotFindings } from './spot.types'
import type { Tables } from './tables.types'

/** The plants that fit a place best; what takes a bank over, and what grows only in sown swards, is not among them. */
export function bestPlants(
  { site }: SpotFindings,
  { plants }: Tables,
  count: number,
): readonly PlantVerdict[] {
  return plants.plants
    .filter(({ meadowOnly }) => !meadowOnly)
    .map((plant) => plantVerdict(plant, site, plants))
    .filter(({ offered, flags }) => offered && !flags.takesOver)
    .sort((one, other) => other.fit - one.fit || (one.plant.id < other.plant.id ? -1 : 1))
    .slice(0, count)
}

/** The verdict on one plant in a place. */
export function verdictAt({ site }: SpotFindings, plant: Plant, { plants }: Tables): PlantVerdict {
  return plantVerdict(plant, site, plants)
}

/** The plant of a name, botanical, older, English or its id; undefined when the table has none. */
export function plantOfName(name: string, { plants }: Tables): Plant | undefined {
  return plantNamed(plants, name)
}
