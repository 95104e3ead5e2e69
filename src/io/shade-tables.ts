import shadeLightClasses from '#data/shade/light-classes'
import shadeThings from '#data/shade/things'
import { shadeTablesSchema, type ShadeTables } from '#core/shade'

/**
 * How things stand in the light, and what the light of a place is called.
 *
 * @returns the tables of data/shade, checked
 */
export function loadShadeTables(): ShadeTables {
  return shadeTablesSchema.parse({ things: shadeThings, lightClasses: shadeLightClasses })
}
