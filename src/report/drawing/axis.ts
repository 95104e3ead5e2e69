import type { Stretch } from '../section-view.types'

/** The one distance axis that the section and every strip below it share. */
export interface Axis {
  /** Place of a distance from the top edge [px]. */
  x(distanceM: number): number
  /** Distance from the top edge of a place [m]; kept within the section. */
  distanceAt(xPx: number): number
  readonly startPx: number
  readonly endPx: number
  readonly lengthM: number
  /** Stretches left out between two break-lines [m]; their distances share the gap between those. */
  readonly breaks: readonly Stretch[]
}

/** Room between the two lines of a break [px]. */
export const BREAK_PX = 16

/** How an axis lies on the sheet. */
interface AxisWish {
  /** Place of the top edge [px]. */
  readonly zeroPx: number
  readonly pxPerM: number
  readonly lengthM: number
  readonly breaks: readonly Stretch[]
}

/** Distances as places, with every break squeezed into its gap. */
export function axisOf({ zeroPx, pxPerM, lengthM, breaks }: AxisWish): Axis {
  const x = (distanceM: number) =>
    breaks.reduce(
      (px, { fromM, toM }) => px + passed(distanceM, fromM, toM) * (BREAK_PX - (toM - fromM) * pxPerM),
      zeroPx + distanceM * pxPerM,
    )
  return {
    x,
    distanceAt: (xPx) => Math.min(lengthM, Math.max(0, distanceOf(xPx, { zeroPx, pxPerM, breaks }))),
    startPx: x(0),
    endPx: x(lengthM),
    lengthM,
    breaks,
  }
}

// Share of a stretch that lies before a distance, 0 to 1.
function passed(distanceM: number, fromM: number, toM: number): number {
  return Math.min(1, Math.max(0, (distanceM - fromM) / (toM - fromM)))
}

function distanceOf(xPx: number, { zeroPx, pxPerM, breaks }: Omit<AxisWish, 'lengthM'>): number {
  let [startPx, startM] = [zeroPx, 0]
  for (const { fromM, toM } of breaks) {
    const gapPx = startPx + (fromM - startM) * pxPerM
    if (xPx < gapPx) break
    if (xPx < gapPx + BREAK_PX) return fromM + ((xPx - gapPx) / BREAK_PX) * (toM - fromM)
    startPx = gapPx + BREAK_PX
    startM = toM
  }
  return startM + (xPx - startPx) / pxPerM
}
