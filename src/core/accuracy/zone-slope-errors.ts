/** How well the slope of a zone is known. */
export interface SlopeError {
  /** Standard error of its mean slope [°]. */
  readonly meanDeg: number
  /** Standard error of its steep figure, which nine tenths do not exceed [°]. */
  readonly steepDeg: number
}

/** Zones and the slopes of their cells. */
export interface ZonedSlopes {
  /** Zone of each cell, -1 outside. */
  readonly zoneOfCell: Int16Array
  /** Part of each cell inside the plot, 0 to 1. */
  readonly share: Float64Array
  readonly slopeDeg: Float64Array
  readonly slopeSdDeg: Float32Array
}

/** The part of a zone that its steep figure stands for: the steepest fifth, whose middle the figure is [m²/m²]. */
const STEEPEST_SHARE = 0.2

/**
 * Standard errors of the slopes of zones. Cells beside one another lean on the same points, so their errors are counted as
 * wholly shared: the error of a mean is then the mean of the errors, and never gets smaller with the number of cells.
 *
 * @param slopes - zones and the slopes of their cells
 * @param count - number of zones [zones], 0 or more
 * @returns one pair of errors to a zone [°]
 * @throws RangeError when a zone has no cell inside the plot
 * @see JCGM 100:2008, Guide to the expression of uncertainty in measurement, clause 5.2.2
 */
export function zoneSlopeErrors(slopes: ZonedSlopes, count: number): readonly SlopeError[] {
  const cells: number[][] = Array.from({ length: count }, () => [])
  slopes.zoneOfCell.forEach((zone, cell) => cells[zone]?.push(cell))
  return cells.map((own, zone) => {
    const insideShare = own.reduce((sum, cell) => sum + slopes.share[cell]!, 0)
    if (!(insideShare > 0)) throw new RangeError(`zoneSlopeErrors: zone ${zone} has no cell inside the plot`)
    return {
      meanDeg: meanError(own, insideShare, slopes),
      steepDeg: meanError(steepest(own, STEEPEST_SHARE * insideShare, slopes), undefined, slopes),
    }
  })
}

function meanError(
  cells: readonly number[],
  knownShare: number | undefined,
  { share, slopeSdDeg }: ZonedSlopes,
): number {
  const inside = knownShare ?? cells.reduce((sum, cell) => sum + share[cell]!, 0)
  return cells.reduce((sum, cell) => sum + share[cell]! * slopeSdDeg[cell]!, 0) / inside
}

// The steepest cells of a zone, as many as hold a given share of it, and one at least.
function steepest(cells: readonly number[], wanted: number, { share, slopeDeg }: ZonedSlopes): number[] {
  const falling = cells
    .filter((cell) => share[cell]! > 0)
    .sort((one, other) => slopeDeg[other]! - slopeDeg[one]! || one - other)
  let held = 0
  const last = falling.findIndex((cell) => (held += share[cell]!) >= wanted)
  return last < 0 ? falling : falling.slice(0, last + 1)
}
