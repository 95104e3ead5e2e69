import plantsBulbs from '#data/plants/bulbs'
import plantsClimbers from '#data/plants/climbers'
import plantsFerns from '#data/plants/ferns'
import plantsGrasses from '#data/plants/grasses'
import plantsGroundCover from '#data/plants/ground-cover'
import plantsLegal from '#data/plants/legal'
import plantsMeadow from '#data/plants/meadow'
import plantsDamp from '#data/plants/perennials-damp'
import plantsDry from '#data/plants/perennials-dry'
import plantsMiddle from '#data/plants/perennials-middle'
import plantsShade from '#data/plants/shade'
import plantsShrubs from '#data/plants/shrubs'
import plantsToxicity from '#data/plants/toxicity'
import plantsTrees from '#data/plants/trees'
import { legalRowSchema, plantSchema, toxicityRowSchema, type PlantTables } from '#core/plants'
import { z } from 'zod'

/** The plant table, one file a group. */
const groups: readonly unknown[] = [
  plantsBulbs,
  plantsClimbers,
  plantsFerns,
  plantsGrasses,
  plantsGroundCover,
  plantsMeadow,
  plantsDamp,
  plantsDry,
  plantsMiddle,
  plantsShade,
  plantsShrubs,
  plantsTrees,
]

/**
 * The plant table with its legal and toxicity lists.
 *
 * @returns every taxon in order of id, checked
 */
export function loadPlants(): PlantTables {
  return {
    plants: groups
      .flatMap((group) => z.array(plantSchema).parse(group))
      .sort((one, other) => (one.id < other.id ? -1 : 1)),
    legal: z.array(legalRowSchema).parse(plantsLegal),
    toxicity: z.array(toxicityRowSchema).parse(plantsToxicity),
  }
}
