import { clipRing, crossesItself, ringAreaM2, type Ring } from '#core/geometry'
import type { Problem } from '#core/units'
import type { CleanRing } from './clean-ring'

/** Least share of the plot that must have been surveyed [m²/m²]; own judgement: beyond it we would be guessing. */
export const LEAST_SURVEYED = 0.5

/** An outline smaller than this holds no ground [m²]. */
const LEAST_AREA_M2 = 0.01

/** What an outline is called, and where in the plan it stands. */
export interface OutlineName {
  readonly where: string
  /** As a sentence begins with it. */
  readonly what: string
}

const boundaryName: OutlineName = { where: 'survey.boundary', what: 'The boundary' }

/**
 * What is wrong with a drawn boundary.
 *
 * @param boundary - the plot's outline, cleaned
 * @param surveyed - convex outline of what was measured [m]
 * @returns the problems; none when the boundary will do
 */
export function boundaryProblems(boundary: CleanRing, surveyed: Ring): Problem[] {
  const shape = shapeProblem(boundary)
  if (shape) return [shape]
  const share = ringAreaM2(clipRing(boundary.ring, surveyed)) / ringAreaM2(boundary.ring)
  return share < LEAST_SURVEYED ? [unsurveyedProblem(share)] : []
}

/**
 * What is wrong with an outline's shape alone.
 *
 * @param outline - the outline, cleaned
 * @param name - what it is called; the plot's boundary when left out
 * @returns the first problem; undefined when the outline is sound
 */
export function shapeProblem(outline: CleanRing, name: OutlineName = boundaryName): Problem | undefined {
  const { ring, drawnCorners } = outline
  if (drawnCorners < 3)
    return {
      where: name.where,
      what: `${name.what} has ${drawnCorners} corners; an outline needs at least 3.`,
      mend: 'Add the missing corners, or leave the outline out.',
    }
  const crossing = crossesItself(ring)
  if (crossing) return crossingProblem(outline, crossing, name)
  if (ringAreaM2(ring) < LEAST_AREA_M2)
    return {
      where: name.where,
      what: `${name.what} holds no area: its corners lie in one line.`,
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
    where: boundaryName.where,
    what,
    mend: 'Check that both use the same origin and metres; else take levels nearer the edges, or draw the boundary closer.',
  }
}

// Corners are counted as they were drawn, the spare ones too.
function crossingProblem(
  { ring, drawnAt }: CleanRing,
  [one, other]: readonly [number, number],
  { where, what }: OutlineName,
): Problem {
  const corner = (at: number) => (drawnAt[at % ring.length] ?? 0) + 1
  const name = (side: number) => `${corner(side)} to ${corner(side + 1)}`
  return {
    where,
    what: `${what} crosses itself: the side from corner ${name(one)} cuts the side from corner ${name(other)}.`,
    mend: 'Put the corners in the order in which you would walk round it.',
  }
}
