/** A place on a drawing [px]. */
export interface Px {
  readonly xPx: number
  readonly yPx: number
}

/** A line through places, as SVG path data. */
export function linePath(places: readonly Px[]): string {
  return places.map(({ xPx, yPx }, at) => `${at === 0 ? 'M' : 'L'}${short(xPx)} ${short(yPx)}`).join('')
}

/** A closed outline, as SVG path data. */
export function outlinePath(places: readonly Px[]): string {
  return `${linePath(places)}Z`
}

/** A coordinate with one decimal. */
export function short(px: number): string {
  return String(Math.round(px * 10) / 10)
}
