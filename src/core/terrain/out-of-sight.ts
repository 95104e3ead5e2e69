import type { Section } from './terrain.types'

/** A stretch of the section [m from the top edge]. */
export interface Stretch {
  readonly fromM: number
  readonly toM: number
}

/**
 * Stretches of a section that someone standing above it does not see, because nearer ground is in the way.
 *
 * @param section - the cut down the slope
 * @param eye - where the eye is
 * @param eye.distanceM - along the section [m from the top edge], negative above the plot
 * @param eye.levelM - level of the eye [m]
 * @returns the hidden stretches beyond the eye, nearest first; none when all is seen
 * @throws RangeError when the eye is below the ground it stands on
 */
export function outOfSight(
  section: Section,
  eye: { readonly distanceM: number; readonly levelM: number },
): readonly Stretch[] {
  const beyond = section.stations.filter((station) => station.distanceM > eye.distanceM)
  let highestRise = -Infinity
  const hidden = beyond.map((station) => {
    const rise = (station.levelM - eye.levelM) / (station.distanceM - eye.distanceM)
    const unseen = rise < highestRise
    highestRise = Math.max(highestRise, rise)
    return unseen
  })
  const groundM = groundUnderM(section, eye.distanceM)
  if (groundM !== undefined && eye.levelM < groundM - HAIR_M)
    throw new RangeError(`outOfSight: the eye at ${eye.levelM} m is below the ground at ${groundM} m`)
  return stretches(beyond, hidden)
}

/** An eye this far below the ground still lies on it [m]: rounding. */
const HAIR_M = 1e-6

// Level of the ground under the eye; undefined where the section does not reach.
function groundUnderM({ stations }: Section, alongM: number): number | undefined {
  const at = stations.findIndex(({ distanceM }) => distanceM >= alongM)
  const [before, next] = [stations[at - 1], stations[at]]
  if (next?.distanceM === alongM) return next.levelM
  if (!before || !next) return undefined
  const share = (alongM - before.distanceM) / (next.distanceM - before.distanceM)
  return before.levelM + share * (next.levelM - before.levelM)
}

function stretches(stations: Section['stations'], hidden: readonly boolean[]): Stretch[] {
  const found: { fromM: number; toM: number }[] = []
  stations.forEach(({ distanceM }, at) => {
    if (!hidden[at]) return
    const last = found.at(-1)
    if (last && hidden[at - 1]) last.toM = distanceM
    else found.push({ fromM: stations[at - 1]?.distanceM ?? distanceM, toM: distanceM })
  })
  return found
}
