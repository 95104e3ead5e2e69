/** A pace, or the wheels of a mower: ground is called steep over no less than this [m]; own judgement. */
const LEAST_SUPPORT_M = 1

/** Width of the window that a gradient is read over [cells] (Horn 1981). */
const WINDOW_CELLS = 2

/**
 * The length over which the gradient of the ground is meant: a point of rough ground has none.
 *
 * @param cellM - side of a cell [m], above 0
 * @returns length [m]: the window of the gradient, 1 m at least
 */
export function gradientSupportM(cellM: number): number {
  return Math.max(LEAST_SUPPORT_M, WINDOW_CELLS * cellM)
}
