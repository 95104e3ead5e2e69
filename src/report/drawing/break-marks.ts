import type { Axis } from './axis'
import { metres } from './measures'
import { n } from './path'

/** A break in the drawing: what covers the gap, its two lines, and how much was left out. */
export interface BreakMark {
  readonly key: number
  readonly leftPx: number
  readonly widthPx: number
  readonly lines: string
  readonly words: string
}

/** Height of one zigzag, and how far it swings to each side [px]. */
const ZIG_PX = 14
const SWING_PX = 3

/**
 * The marks of all breaks of an axis, drawn from the top of a figure to its base.
 *
 * @param axis - the distance axis
 * @param span - where the lines begin and end [px]
 */
export function breakMarks(
  axis: Axis,
  span: { readonly topPx: number; readonly bottomPx: number },
): BreakMark[] {
  return axis.breaks.map(({ fromM, toM }, key) => {
    const [leftPx, rightPx] = [axis.x(fromM), axis.x(toM)]
    return {
      key,
      leftPx,
      widthPx: rightPx - leftPx,
      lines: zigzag(leftPx, span) + zigzag(rightPx, span),
      words: `${metres(toM - fromM)} of even ground left out`,
    }
  })
}

function zigzag(xPx: number, { topPx, bottomPx }: { readonly topPx: number; readonly bottomPx: number }) {
  const steps = Math.max(1, Math.round((bottomPx - topPx) / ZIG_PX))
  const stepPx = (bottomPx - topPx) / steps
  const points = Array.from({ length: steps }, (_, at) => {
    const yPx = topPx + (at + 0.5) * stepPx
    return `L${n(xPx + (at % 2 === 0 ? SWING_PX : -SWING_PX))} ${n(yPx)}`
  })
  return `M${n(xPx)} ${n(topPx)}${points.join('')}L${n(xPx)} ${n(bottomPx)}`
}
