import type { Box, Px } from './path'

/** A box around a place. */
export function around({ xPx, yPx }: Px, halfWide: number, halfTall: number): Box {
  return {
    leftPx: xPx - halfWide,
    rightPx: xPx + halfWide,
    topPx: yPx - halfTall,
    bottomPx: yPx + halfTall,
  }
}

/** Whether a box lies wholly in another. */
export function isWithin(box: Box, bounds: Box): boolean {
  return (
    box.leftPx >= bounds.leftPx &&
    box.rightPx <= bounds.rightPx &&
    box.topPx >= bounds.topPx &&
    box.bottomPx <= bounds.bottomPx
  )
}

/** The upright box around places. */
export function boxOf(places: readonly Px[]): Box {
  return {
    leftPx: Math.min(...places.map(({ xPx }) => xPx)),
    rightPx: Math.max(...places.map(({ xPx }) => xPx)),
    topPx: Math.min(...places.map(({ yPx }) => yPx)),
    bottomPx: Math.max(...places.map(({ yPx }) => yPx)),
  }
}

/** Whether a place lies in a ring: even-odd rule. */
export function isInside({ xPx, yPx }: Px, ring: readonly Px[]): boolean {
  let inside = false
  ring.forEach((corner, at) => {
    const before = ring[(at + ring.length - 1) % ring.length] ?? corner
    if (corner.yPx > yPx === before.yPx > yPx) return
    const share = (yPx - corner.yPx) / (before.yPx - corner.yPx)
    if (xPx < corner.xPx + share * (before.xPx - corner.xPx)) inside = !inside
  })
  return inside
}

/** Distance to the nearest edge of a ring [px]. */
export function edgePx(place: Px, ring: readonly Px[]): number {
  return Math.min(
    ...ring.map((corner, at) => segmentPx(place, corner, ring[(at + 1) % ring.length] ?? corner)),
  )
}

function segmentPx(place: Px, from: Px, to: Px): number {
  const [acrossPx, downPx] = [to.xPx - from.xPx, to.yPx - from.yPx]
  const square = acrossPx * acrossPx + downPx * downPx
  const along =
    square === 0 ? 0 : ((place.xPx - from.xPx) * acrossPx + (place.yPx - from.yPx) * downPx) / square
  const share = Math.min(1, Math.max(0, along))
  return gapPx(place, { xPx: from.xPx + share * acrossPx, yPx: from.yPx + share * downPx })
}

/** Straight distance between two places [px]. */
export function gapPx(one: Px, other: Px): number {
  return Math.hypot(one.xPx - other.xPx, one.yPx - other.yPx)
}
