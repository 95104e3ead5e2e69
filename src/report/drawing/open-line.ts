import { type Box, type Px } from './path'

/** A stretch of a straight line, as shares of its length. */
interface Share {
  readonly from: number
  readonly to: number
}

/** The parts of a straight line that lie outside every box; parts shorter than the least are left out. */
export function openParts(from: Px, to: Px, boxes: readonly Box[], leastPx = 0): [Px, Px][] {
  const longPx = Math.hypot(to.xPx - from.xPx, to.yPx - from.yPx)
  let open: Share[] = [{ from: 0, to: 1 }]
  for (const box of boxes) {
    const inside = insideShare(from, to, box)
    if (inside) open = open.flatMap((part) => without(part, inside))
  }
  return open
    .filter((part) => (part.to - part.from) * longPx > leastPx)
    .map((part) => [between(from, to, part.from), between(from, to, part.to)])
}

/** The part of a line inside a box: Liang and Barsky's clipping; undefined when it passes by. */
function insideShare(from: Px, to: Px, box: Box): Share | undefined {
  const [acrossPx, downPx] = [to.xPx - from.xPx, to.yPx - from.yPx]
  const limits = [
    [-acrossPx, from.xPx - box.leftPx],
    [acrossPx, box.rightPx - from.xPx],
    [-downPx, from.yPx - box.topPx],
    [downPx, box.bottomPx - from.yPx],
  ] as const
  let [enters, leaves] = [0, 1]
  for (const [along, room] of limits) {
    if (along === 0 && room < 0) return undefined
    if (along < 0) enters = Math.max(enters, room / along)
    if (along > 0) leaves = Math.min(leaves, room / along)
  }
  return enters < leaves ? { from: enters, to: leaves } : undefined
}

/** Whether a straight line passes through a box. */
export function crosses(from: Px, to: Px, box: Box): boolean {
  return insideShare(from, to, box) !== undefined
}

function without(part: Share, inside: Share): Share[] {
  const before = { from: part.from, to: Math.min(part.to, inside.from) }
  const after = { from: Math.max(part.from, inside.to), to: part.to }
  return [before, after].filter(({ from, to }) => to > from)
}

function between(from: Px, to: Px, share: number): Px {
  return {
    xPx: from.xPx + share * (to.xPx - from.xPx),
    yPx: from.yPx + share * (to.yPx - from.yPx),
  }
}
