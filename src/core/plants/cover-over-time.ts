import type { Plant } from './plant.schema'
import { coverAfter, type Stretch } from './closing'

/** A plant and the share of the zone it is to cover. */
export interface Sharing {
  readonly plant: Plant
  readonly share: number
  readonly sown: boolean
}

/** A zone counts as covered at this share [m²/m²; trade usage]. */
const COVERED = 0.8

/** The longest outlook [a]. */
const OUTLOOK_YEARS = 10

const MONTHS_PER_YEAR = 12

/**
 * Cover of a zone year by year.
 *
 * @param sharings - the plants with their shares of the zone
 * @param stretch - how much longer than on paper everything takes [ratio]
 * @returns covered share at 0 to 10 years [m²/m²], eleven values
 */
export function coverByYear(sharings: readonly Sharing[], stretch: number): number[] {
  return Array.from({ length: OUTLOOK_YEARS + 1 }, (_, year) => zoneCover(sharings, year, stretch))
}

/**
 * Months until four fifths of the zone are covered.
 *
 * @param sharings - the plants with their shares of the zone
 * @param stretch - least and most stretch of time [ratio]
 * @returns whole months [months]; undefined when it takes more than ten years even at best
 */
export function monthsToCover(
  sharings: readonly Sharing[],
  stretch: Stretch,
): { from: number; to: number } | undefined {
  const total = sharings.reduce((sum, { share }) => sum + share, 0)
  if (total === 0) return undefined
  const from = firstMonth(sharings, COVERED * total, stretch.from)
  if (from === undefined) return undefined
  return { from, to: firstMonth(sharings, COVERED * total, stretch.to) ?? OUTLOOK_YEARS * MONTHS_PER_YEAR }
}

function firstMonth(sharings: readonly Sharing[], wanted: number, stretch: number): number | undefined {
  const covered = (month: number) => zoneCover(sharings, month / MONTHS_PER_YEAR, stretch) >= wanted
  let least = 0
  let most = OUTLOOK_YEARS * MONTHS_PER_YEAR
  if (!covered(most)) return undefined
  while (least < most) {
    const middle = Math.floor((least + most) / 2)
    if (covered(middle)) most = middle
    else least = middle + 1
  }
  return most
}

function zoneCover(sharings: readonly Sharing[], years: number, stretch: number): number {
  return sharings.reduce(
    (sum, { plant, share, sown }) => sum + share * coverAfter(plant, years, stretch, sown),
    0,
  )
}
