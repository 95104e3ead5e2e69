import type { LightClassName } from './shade.types'

/** Sun of a day as the class looks at it. */
interface LightHours {
  /** Hours of direct sun, each counted by the share of light that gets through [h]. */
  readonly sunHours: number
  /** Hours on the clock with nothing in the sun's way [h]. */
  readonly clearHours: number
  /** Hours on the clock with sun through leaves or branches, a tenth of it or more [h]. */
  readonly leafyHours: number
}

/** One class: it fits where all its limits hold. */
interface LightClassRow {
  readonly id: LightClassName
  /** Hours of sun above this [h]; any where left out. */
  readonly aboveHours?: number | undefined
  /** Hours of sun up to and with this [h]; any where left out. */
  readonly mostHours?: number | undefined
  /** At least these hours through leaves [h]. */
  readonly leastLeafyHours?: number | undefined
  /** More than this share of the hours with sun comes through leaves [1]. */
  readonly aboveLeafyShare?: number | undefined
}

/** The classes in order: the first that fits counts. */
export type LightClasses = readonly LightClassRow[]

/**
 * Light class of a place by its sun on a clear day at midsummer.
 *
 * @param hours - sun of the day
 * @param classes - the classes in order
 * @returns the first class that fits
 * @throws RangeError when none fits
 */
export function lightClassOf(hours: LightHours, classes: LightClasses): LightClassName {
  const found = classes.find((row) => fits(hours, row))
  if (found === undefined)
    throw new RangeError(
      `lightClassOf: no class for ${hours.sunHours} hours of sun: the table must hold one for all`,
    )
  return found.id
}

function fits({ sunHours, clearHours, leafyHours }: LightHours, row: LightClassRow): boolean {
  return (
    sunHours > (row.aboveHours ?? -Infinity) &&
    sunHours <= (row.mostHours ?? Infinity) &&
    leafyHours >= (row.leastLeafyHours ?? 0) &&
    (row.aboveLeafyShare === undefined || leafyHours > row.aboveLeafyShare * (clearHours + leafyHours))
  )
}
