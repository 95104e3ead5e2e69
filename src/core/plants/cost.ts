import type { Plant } from './plant.schema'

/** What one planted unit of each cost class is worth against a plug of class 1 [ratio; own judgement]. */
const unitWorth = [0, 1, 2.5, 6, 14, 35] as const

/** Least worth of a square metre in each class above the first [plugs a m²; own judgement]. */
const classFrom = [8, 16, 30, 55] as const

/** A sown square metre of cost class 1 seed against a plug [ratio; own judgement]. */
const SOWN_WORTH = 0.5

/**
 * Indicative cost class of a planting for each square metre of slope, plants alone, no work.
 *
 * @param lines - the plants, how many on each square metre of the zone [1/m²], and whether sown
 * @returns 1 (cheapest) to 5 [class]; undefined when there is no plant
 */
export function costClass(
  lines: readonly { readonly plant: Plant; readonly perZoneM2: number; readonly sown: boolean }[],
): number | undefined {
  if (lines.length === 0) return undefined
  const worth = lines.reduce(
    (sum, { plant, perZoneM2, sown }) =>
      sum + (sown ? SOWN_WORTH / lines.length : perZoneM2) * (unitWorth[plant.cost] ?? 0),
    0,
  )
  return 1 + classFrom.filter((least) => worth >= least).length
}
