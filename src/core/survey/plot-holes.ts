import { boxAround, ringAreaM2, sharedAreaM2, type Ring } from '#core/geometry'
import type { Problem } from '#core/units'
import { shapeProblem, type OutlineName } from './boundary-problems'
import { cleanRing } from './clean-ring'
import type { SurfaceNote } from './surface.types'

/** Areas smaller than this share of a hole are rounding [m²/m²]. */
const AREA_ROUNDING = 1e-6

/** Holes of a plot, cleaned. */
export interface PlotHoles {
  readonly holes: readonly Ring[]
  readonly notes: readonly SurfaceNote[]
  readonly problems: readonly Problem[]
}

/**
 * Looks over the holes of a plot: each must be a sound outline, reach into the plot, leave ground of it, and keep clear of the
 * other holes.
 *
 * @param drawn - holes as drawn [m]
 * @param boundary - outline of the plot [m]
 * @returns the holes cleaned, what was changed, and every problem
 */
export function plotHoles(drawn: readonly Ring[], boundary: Ring): PlotHoles {
  const clean = drawn.map((ring, at) => cleanRing(ring, `hole ${at + 1}`))
  const holes = clean.map(({ ring }) => ring)
  const unsound = clean.flatMap((ring, at) => shapeProblem(ring, nameOf(at)) ?? [])
  const notes = clean.flatMap((ring) => ring.notes)
  if (unsound.length > 0) return { holes, notes, problems: unsound }
  const problems = [
    ...holes.flatMap((hole, at) => placeProblem(hole, at, boundary)),
    ...overlapProblems(holes),
  ]
  return { holes, notes, problems }
}

/**
 * What is wrong with the holes of a drawn plot.
 *
 * @param drawn - holes as drawn [m]
 * @param boundary - outline of the plot as drawn [m]
 * @returns every problem; none when the boundary itself is unsound, which is told elsewhere
 */
export function holeProblems(drawn: readonly Ring[], boundary: Ring): readonly Problem[] {
  const outline = cleanRing(boundary, 'the boundary')
  return shapeProblem(outline) ? [] : plotHoles(drawn, outline.ring).problems
}

function nameOf(at: number): OutlineName {
  return { where: `survey.holes[${at}]`, what: `Hole ${at + 1}` }
}

function placeProblem(hole: Ring, at: number, boundary: Ring): Problem[] {
  const { where, what } = nameOf(at)
  const commonM2 = sharedAreaM2(hole, boundary)
  if (commonM2 <= AREA_ROUNDING * ringAreaM2(hole))
    return [
      {
        where,
        what: `${what} lies outside the plot.`,
        mend: 'Move it into the boundary, or take it out.',
      },
    ]
  if (commonM2 >= (1 - AREA_ROUNDING) * ringAreaM2(boundary))
    return [
      {
        where,
        what: `${what} covers the whole plot, so no ground is left.`,
        mend: 'Draw it smaller, or take it out.',
      },
    ]
  return []
}

function overlapProblems(holes: readonly Ring[]): Problem[] {
  return holes.flatMap((hole, at) =>
    holes.slice(0, at).flatMap((other, before): Problem[] => {
      if (!overlap(hole, other)) return []
      return [
        {
          where: nameOf(at).where,
          what: `Holes ${before + 1} and ${at + 1} overlap.`,
          mend: 'Draw them as one hole, or move them apart.',
        },
      ]
    }),
  )
}

function overlap(one: Ring, other: Ring): boolean {
  const [box, against] = [boxAround(one), boxAround(other)]
  const apart =
    box.eastM <= against.westM ||
    against.eastM <= box.westM ||
    box.northM <= against.southM ||
    against.northM <= box.southM
  if (apart) return false
  return sharedAreaM2(one, other) > AREA_ROUNDING * Math.min(ringAreaM2(one), ringAreaM2(other))
}
