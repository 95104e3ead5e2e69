import { soilProperties, type SoilProperties, type SoilTables } from '#core/soil'
import type { ZoneFacts } from '#core/zones'
import type { Plan } from './plan.schema'

/** One set of properties for each sample of the plan, in its order. */
export function soilsOf(plan: Plan, tables: SoilTables): readonly SoilProperties[] {
  return plan.soil.map((sample) => soilProperties(sample, tables))
}

/** The soil of a zone: the sample nearest to its middle; a sample without a place serves where there is no other. */
export function soilOfZone(
  zone: ZoneFacts,
  samples: Plan['soil'],
  soils: readonly SoilProperties[],
): SoilProperties {
  const middle = middleOf(zone)
  const placed = samples.flatMap((sample, index) => {
    const soil = soils[index]
    if (!soil || !sample.at) return []
    const distanceM = Math.hypot(sample.at.eastM - middle.eastM, sample.at.northM - middle.northM)
    return [{ soil, distanceM }]
  })
  const [first] = soils
  if (!first) throw new RangeError('soilOfZone: at least one soil sample is needed')
  const nearest = placed.reduce<(typeof placed)[number] | undefined>(
    (best, one) => (best && best.distanceM <= one.distanceM ? best : one),
    undefined,
  )
  return nearest?.soil ?? first
}

function middleOf({ ring }: ZoneFacts): { eastM: number; northM: number } {
  const mean = (values: readonly number[]) => values.reduce((sum, one) => sum + one, 0) / values.length
  return {
    eastM: mean(ring.map((corner) => corner.eastM)),
    northM: mean(ring.map((corner) => corner.northM)),
  }
}
