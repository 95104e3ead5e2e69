import { n, type Px } from '../../drawing/path'

/**
 * A smooth curve through points from left to right that never rises where they fall, nor falls where they rise.
 *
 * @see Steffen 1990, A simple method for monotonic interpolation in one dimension, Astronomy and Astrophysics 239
 */
export function monotoneCurve(points: readonly Px[]): string {
  const [first, ...rest] = points
  if (!first) return ''
  const slopes = slopesOf(points)
  let d = `M${n(first.xPx)} ${n(first.yPx)}`
  rest.forEach((to, at) => {
    const from = points[at] ?? first
    const third = (to.xPx - from.xPx) / 3
    const [leaves, arrives] = [slopes[at] ?? 0, slopes[at + 1] ?? 0]
    d += `C${n(from.xPx + third)} ${n(from.yPx + third * leaves)} ${n(to.xPx - third)} ${n(to.yPx - third * arrives)} ${n(to.xPx)} ${n(to.yPx)}`
  })
  return d
}

/** Slope of the curve in each point: none at a turn, else held below twice the smaller neighbour. */
function slopesOf(points: readonly Px[]): number[] {
  const secants = points.slice(1).map((to, at) => {
    const from = points[at] ?? to
    return { slope: (to.yPx - from.yPx) / (to.xPx - from.xPx), widthPx: to.xPx - from.xPx }
  })
  return points.map((_, at) => {
    const [before, after] = [secants[at - 1], secants[at]]
    if (!before || !after) return (before ?? after)?.slope ?? 0
    if (before.slope * after.slope <= 0) return 0
    const mean =
      (before.slope * after.widthPx + after.slope * before.widthPx) / (before.widthPx + after.widthPx)
    const most = 2 * Math.min(Math.abs(before.slope), Math.abs(after.slope))
    return Math.sign(mean) * Math.min(Math.abs(mean), most)
  })
}
