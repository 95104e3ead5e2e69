import { spareCorners, withoutSpare, type Ring } from '#core/geometry'
import { spareNote } from './clean-lines'
import type { SurfaceNote } from './surface.types'
import { SAME_PLACE_M } from './tolerances'

/** An outline without repeated corners and spikes. */
export interface CleanRing {
  readonly ring: Ring
  /** Number of each corner in the outline as drawn, from 0. */
  readonly drawnAt: readonly number[]
  /** How many corners it had as drawn [count]. */
  readonly drawnCorners: number
  readonly notes: readonly SurfaceNote[]
}

/**
 * An outline cleaned: repeated corners and spikes are taken out and told of.
 *
 * @param drawn - the outline as drawn [m]
 * @param name - what it is called in a sentence
 * @returns what is left of it, which may be less than an outline
 */
export function cleanRing(drawn: Ring, name: string): CleanRing {
  const spare = spareCorners(drawn, true, SAME_PLACE_M)
  const kept = withoutSpare(drawn, spare)
  return {
    ring: kept.map(({ corner }) => corner),
    drawnAt: kept.map(({ at }) => at),
    drawnCorners: drawn.length,
    notes: spare.map((one) => spareNote(one, drawn[one.at], name)),
  }
}
