import type { Plant } from './plant.schema'
import type { PlantTables } from './plants.types'
import { plainName } from './names'

/**
 * Finds a plant by any name a gardener may use: accepted, older, English, or the table's own key.
 *
 * @param tables - the plant tables
 * @param name - the name as written
 * @returns the plant, an accepted name winning over an older one; undefined when no row bears the name
 */
export function plantNamed(tables: Pick<PlantTables, 'plants'>, name: string): Plant | undefined {
  const wanted = plainName(name)
  const bearing = (namesFrom: (plant: Plant) => readonly string[]) =>
    tables.plants.find((plant) => namesFrom(plant).some((other) => plainName(other) === wanted))
  return (
    bearing((plant) => [plant.id, plant.name]) ??
    bearing((plant) => plant.synonyms) ??
    bearing((plant) => [plant.common])
  )
}
