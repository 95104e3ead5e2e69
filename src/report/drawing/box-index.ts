import { overlaps, type Box } from './path'

/** Width of a bin [px]. */
const BIN_PX = 40

/** Many boxes, sorted into upright bins so that a place is tried against few of them. */
export interface BoxIndex {
  /** Whether a box touches any of them. */
  hits(box: Box): boolean
}

export function boxIndex(boxes: readonly Box[]): BoxIndex {
  const bins = new Map<number, Box[]>()
  for (const box of boxes)
    for (const bin of binsOf(box)) {
      const held = bins.get(bin)
      if (held) held.push(box)
      else bins.set(bin, [box])
    }
  return { hits: (box) => binsOf(box).some((bin) => bins.get(bin)?.some((other) => overlaps(box, other))) }
}

function binsOf(box: Box): number[] {
  const first = Math.floor(box.leftPx / BIN_PX)
  return Array.from({ length: Math.floor(box.rightPx / BIN_PX) - first + 1 }, (_, at) => first + at)
}
