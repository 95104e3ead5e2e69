import { boxAround, ringAreaM2, type Ring } from '#core/geometry'
import type { Outcome } from '#core/units'

/** Sides a cell may have, so that areas and drawings keep round figures [m]. */
const roundSidesM = [0.05, 0.1, 0.2, 0.25, 0.5, 1, 2, 5, 10]

/** Cells a plot is drawn and reckoned with when nothing else is known: fine enough to see, quick to work [cells]. */
const USUAL_CELLS = 5500

/** Cells a plot gets by itself, however close its survey [cells]. */
const MOST_UNASKED_CELLS = 250_000

/** More cells than this no plan works with [cells]. */
export const MOST_CELLS = 1_000_000

/** Fewest cells across the narrow way, so that every cell has neighbours on both sides [cells]. */
const CELLS_ACROSS = 4

/**
 * Side of a grid cell that suits a plot.
 *
 * @param boundary - outline of the plot [m]
 * @param spacingM - mean distance between measured points [m], above 0; undefined when the ground is one formula
 * @param wishedM - side the person asks for [m]; undefined when left to us
 * @returns side of a cell [m], or the problem with the wish
 */
export function chooseCellM(
  boundary: Ring,
  spacingM: number | undefined,
  wishedM: number | undefined,
): Outcome<number> {
  if (wishedM !== undefined) return checkWish(boundary, wishedM)
  const box = boxAround(boundary)
  const boxM2 = (box.eastM - box.westM) * (box.northM - box.southM)
  const longM = Math.hypot(box.eastM - box.westM, box.northM - box.southM)
  const usualM = Math.sqrt(boxM2 / USUAL_CELLS)
  const closeM = Math.max(spacingM ?? Infinity, Math.sqrt(boxM2 / MOST_UNASKED_CELLS))
  const narrowM = ringAreaM2(boundary) / longM / CELLS_ACROSS
  const sideM = nearestRoundM(Math.min(usualM, closeM, narrowM))
  return { ok: true, value: largeEnoughM(sideM, boxM2, MOST_UNASKED_CELLS) }
}

function nearestRoundM(sideM: number): number {
  return roundSidesM.reduce((best, round) =>
    Math.abs(Math.log(round / sideM)) < Math.abs(Math.log(best / sideM)) ? round : best,
  )
}

/** Ground too wide for 10 m cells takes whole multiples of 10 m [m]. */
const WIDE_STEP_M = 10

// The next round side up that keeps the grid within its limit.
function largeEnoughM(sideM: number, boxM2: number, mostCells: number): number {
  const leastM = Math.sqrt(boxM2 / (mostCells * 0.9))
  if (sideM >= leastM) return sideM
  return roundSidesM.find((round) => round >= leastM) ?? Math.ceil(leastM / WIDE_STEP_M) * WIDE_STEP_M
}

function checkWish(boundary: Ring, wishedM: number): Outcome<number> {
  if (!(wishedM > 0 && wishedM < Infinity))
    return refuse(`A cell of ${wishedM} m cannot be.`, 'Give a side above 0 m, or leave it out.')
  const box = boxAround(boundary)
  const [wideM, deepM] = [box.eastM - box.westM, box.northM - box.southM]
  const cells = Math.ceil(wideM / wishedM) * Math.ceil(deepM / wishedM)
  if (cells > MOST_CELLS)
    return refuse(
      `Cells of ${wishedM} m would make a grid of ${cells} cells; the most is ${MOST_CELLS}.`,
      `Use cells of ${largeEnoughM(wishedM, wideM * deepM, MOST_CELLS)} m or more, or leave the size out.`,
    )
  const narrowM = Math.min(wideM, deepM)
  if (wishedM > narrowM / 2)
    return refuse(
      `Cells of ${wishedM} m are too coarse for a plot ${narrowM.toFixed(1)} m across.`,
      `Use cells of ${(narrowM / CELLS_ACROSS).toFixed(2)} m or less, or leave the size out.`,
    )
  return { ok: true, value: wishedM }
}

function refuse(what: string, mend: string): Outcome<number> {
  return { ok: false, problems: [{ where: 'survey.cellM', what, mend }] }
}
