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
