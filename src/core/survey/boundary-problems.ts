import { clipRing, crossesItself, ringAreaM2, type Ring } from '#core/geometry'
import type { Problem } from '#core/units'

/** Least share of the plot that must have been surveyed [m²/m²]; own judgement: beyond it we would be guessing. */
const LEAST_SURVEYED = 0.5

/** An outline smaller than this holds no plot [m²]. */
const LEAST_PLOT_M2 = 0.01

const WHERE = 'survey.boundary'

/**
 * What is wrong with a drawn boundary.
 *
 * @param boundary - the plot's outline as drawn [m]
 * @param surveyed - convex outline of what was measured [m]
 * @returns the problems; none when the boundary will do
 */
export function boundaryProblems(boundary: Ring, surveyed: Ring): Problem[] {
  const shape = shapeProblem(boundary)
  if (shape) return [shape]
  const share = ringAreaM2(clipRing(boundary, surveyed)) / ringAreaM2(boundary)
  return share < LEAST_SURVEYED ? [unsurveyedProblem(share)] : []
}

/**
 * What is wrong with an outline's shape alone.
 *
 * @param boundary - the plot's outline as drawn [m]
 * @returns the first problem; undefined when the outline is sound
 */
export function shapeProblem(boundary: Ring): Problem | undefined {
  if (boundary.length < 3)
    return {
      where: WHERE,
      what: `The boundary has ${boundary.length} corners; an outline needs at least 3.`,
      mend: 'Add the missing corners, or leave the boundary out.',
    }
  const crossing = crossesItself(boundary)
  if (crossing) return crossingProblem(boundary, crossing)
  if (ringAreaM2(boundary) < LEAST_PLOT_M2)
    return {
      where: WHERE,
      what: 'The boundary holds no area: its corners lie in one line.',
      mend: 'Check the corners; one of them stands in the wrong place.',
    }
  return undefined
}

/**
 * The problem of a plot that reaches far beyond what was measured.
 *
 * @param share - part of the plot inside the survey [m²/m²], 0 to 1
 * @returns the problem, with the way to mend it
 */
export function unsurveyedProblem(share: number): Problem {
  const what =
    share > 0
      ? `Only ${Math.round(share * 100)} % of the plot inside the boundary was surveyed.`
      : 'The boundary and the survey do not meet: no part of the plot was surveyed.'
  return {
    where: WHERE,
    what,
    mend: 'Check that both use the same origin and metres; else take levels nearer the edges, or draw the boundary closer.',
  }
}

function crossingProblem(boundary: Ring, [one, other]: readonly [number, number]): Problem {
  const name = (side: number) => `${side + 1} to ${((side + 1) % boundary.length) + 1}`
  return {
    where: WHERE,
    what: `The boundary crosses itself: the side from corner ${name(one)} cuts the side from corner ${name(other)}.`,
    mend: 'Put the corners in the order in which you would walk round the plot.',
  }
}
