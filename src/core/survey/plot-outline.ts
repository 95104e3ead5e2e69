import type { Ring } from '#core/geometry'
import type { Outcome, Problem } from '#core/units'
import { cleanRing, type CleanRing } from './clean-ring'
import { plotHoles } from './plot-holes'
import type { SurfaceNote } from './surface.types'
import type { SurfaceOptions } from './surface-options.types'

/** Where the plot lies. */
export interface PlotOutline {
  readonly boundary: Ring
  readonly holes: readonly Ring[]
  /** What was changed in both. */
  readonly notes: readonly SurfaceNote[]
}

/**
 * The outline of the plot: as drawn, or that of the survey, with its holes.
 *
 * @param options - boundary and holes, when the person gives them
 * @param own - outline of the survey itself [m]
 * @param check - what is wrong with a drawn boundary
 * @returns the outline cleaned, or every problem
 */
export function plotOutline(
  options: SurfaceOptions,
  own: Ring,
  check: (drawn: CleanRing) => readonly Problem[],
): Outcome<PlotOutline> {
  const drawn = drawnBoundary(options)
  const problems = drawn ? check(drawn) : []
  if (problems.length > 0) return { ok: false, problems: [...problems] }
  const boundary = drawn?.ring ?? own
  const holes = plotHoles(options.holes ?? [], boundary)
  if (holes.problems.length > 0) return { ok: false, problems: [...holes.problems] }
  return {
    ok: true,
    value: { boundary, holes: holes.holes, notes: [...(drawn?.notes ?? []), ...holes.notes] },
  }
}

/**
 * The boundary as drawn, cleaned.
 *
 * @param options - what the person gives
 * @param options.boundary - outline of the plot [m]
 * @returns the boundary; undefined when none was drawn
 */
export function drawnBoundary({ boundary }: SurfaceOptions): CleanRing | undefined {
  return boundary && cleanRing(boundary, 'the boundary')
}
