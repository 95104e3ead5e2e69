import type { Outcome } from '#core/units'

/** How a staff is read: back to a known point, on to a point between, or forward to a change point. */
type SightKind = 'back' | 'between' | 'fore'

/** One reading on the staff. */
export interface Sight {
  readonly kind: SightKind
  /** Distance from the top edge [m]. */
  readonly distanceM: number
  readonly staffM: number
}

/** A place down the slope with its level. */
export interface BookedStation {
  readonly distanceM: number
  readonly levelM: number
}

/** Level given to the first point, when nothing is known of the sea [m]. */
const FIRST_LEVEL_M = 100

/** Longest staff [m]. */
export const LONGEST_STAFF_M = 5

/**
 * Levels from a booking of staff readings, by the height of the instrument: the level of the line of sight is the
 * level of a known point and the back sight on it; every other reading is taken off it.
 *
 * @param sights - the readings in the order they were taken; the first is a back sight on the top edge
 * @returns the stations, each once, or what cannot be
 */
export function reduceSights(sights: readonly Sight[]): Outcome<readonly BookedStation[]> {
  const stations: BookedStation[] = []
  let lineM: number | undefined
  let knownM = FIRST_LEVEL_M
  for (const [at, { kind, distanceM, staffM }] of sights.entries()) {
    if (kind === 'back') {
      if (at === 0) stations.push({ distanceM, levelM: knownM })
      lineM = knownM + staffM
      continue
    }
    if (lineM === undefined) return noLine(at)
    const levelM = lineM - staffM
    stations.push({ distanceM, levelM })
    if (kind === 'fore') {
      knownM = levelM
      lineM = undefined
    }
  }
  return { ok: true, value: stations.map(toMillimetre) }
}

const noLine = (at: number): Outcome<never> => ({
  ok: false,
  problems: [
    {
      where: `reading ${at + 1}`,
      what: 'The level has no line of sight yet.',
      mend: 'After setting it up, read back to a point whose level is known: the top edge, or the last change point.',
    },
  ],
})

/** What a staff can tell. */
function toMillimetre({ distanceM, levelM }: BookedStation): BookedStation {
  return { distanceM, levelM: Math.round(levelM * 1000) / 1000 }
}
