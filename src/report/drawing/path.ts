/** A place on the sheet [px], y downwards. */
export interface Px {
  readonly xPx: number
  readonly yPx: number
}

/** An upright rectangle on the sheet [px]. */
export interface Box {
  readonly leftPx: number
  readonly topPx: number
  readonly rightPx: number
  readonly bottomPx: number
}

/** A number as SVG writes it: a tenth of a pixel is enough. */
export function n(value: number): string {
  return String(Math.round(value * 10) / 10)
}

/** An open run of straight lines. */
export function polyline(points: readonly Px[]): string {
  return points.map((point, index) => `${index === 0 ? 'M' : 'L'}${n(point.xPx)} ${n(point.yPx)}`).join('')
}

/** A closed outline. */
export function outline(points: readonly Px[]): string {
  return points.length === 0 ? '' : `${polyline(points)}Z`
}

/** A full circle as a path, so that many can share one element. */
export function circle(centre: Px, radiusPx: number): string {
  const r = n(radiusPx)
  const d = n(radiusPx * 2)
  return `M${n(centre.xPx - radiusPx)} ${n(centre.yPx)}a${r} ${r} 0 1 0 ${d} 0a${r} ${r} 0 1 0 -${d} 0Z`
}

/** Whether two boxes share any area. */
export function overlaps(one: Box, other: Box): boolean {
  return (
    one.leftPx < other.rightPx &&
    other.leftPx < one.rightPx &&
    one.topPx < other.bottomPx &&
    other.topPx < one.bottomPx
  )
}

/** Whether a straight line passes through a box: Liang and Barsky's clipping. */
export function crosses(from: Px, to: Px, box: Box): boolean {
  const [acrossPx, downPx] = [to.xPx - from.xPx, to.yPx - from.yPx]
  const limits = [
    [-acrossPx, from.xPx - box.leftPx],
    [acrossPx, box.rightPx - from.xPx],
    [-downPx, from.yPx - box.topPx],
    [downPx, box.bottomPx - from.yPx],
  ] as const
  let [enters, leaves] = [0, 1]
  for (const [along, room] of limits) {
    if (along === 0 && room < 0) return false
    if (along < 0) enters = Math.max(enters, room / along)
    if (along > 0) leaves = Math.min(leaves, room / along)
  }
  return enters < leaves
}
