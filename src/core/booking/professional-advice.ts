import type { AdviceRule } from './methods.schema'

/** What is known of the ground before or after it is measured. */
export interface GroundAtHand {
  /** Steepness [°]. */
  readonly slopeDeg: number
  /** Plan area [m²]. */
  readonly areaM2: number
}

/** A reason to have the ground surveyed by a professional. */
export interface Advice {
  readonly id: string
  readonly because: string
  readonly source: string
}

/** The rules of data/survey/advice.json. */
interface AdviceTable {
  readonly advice: readonly AdviceRule[]
}

/**
 * Reasons to have ground surveyed professionally: it is both steep and large, and by hand its errors and its dangers grow
 * together.
 *
 * @param ground - slope, 0 to 90 [°], and plan area [m²]
 * @param tables - the rules, the most pressing first
 * @returns every rule that fits, with its reason; none when measuring by hand will do
 * @throws RangeError when the slope or the area is out of range
 */
export function professionalAdvice(ground: GroundAtHand, tables: AdviceTable): readonly Advice[] {
  const { slopeDeg, areaM2 } = ground
  if (!(slopeDeg >= 0 && slopeDeg <= 90))
    throw new RangeError(`professionalAdvice: slopeDeg must be 0 to 90, got ${slopeDeg}`)
  if (!(areaM2 >= 0 && areaM2 < Infinity))
    throw new RangeError(`professionalAdvice: areaM2 must be 0 or more, got ${areaM2}`)
  return tables.advice
    .filter(({ when }) => slopeDeg >= when.minSlopeDeg && areaM2 >= when.minAreaM2)
    .map(({ id, because, source }) => ({ id, because: filled(because, ground), source }))
}

function filled(words: string, { slopeDeg, areaM2 }: GroundAtHand): string {
  return words
    .replaceAll('{slopeDeg}', String(Math.round(slopeDeg)))
    .replaceAll('{areaM2}', String(Math.round(areaM2)))
}
