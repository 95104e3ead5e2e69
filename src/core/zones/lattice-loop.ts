import type { GridFrame } from '#core/geometry'

/**
 * The outline of a zone along the sides of its cells.
 *
 * @param zoneOfCell - zone of each cell, -1 outside
 * @param zone - number of the zone
 * @param frame - where the cells lie
 * @returns corners of cells in order, the zone on the left; a corner is row × (columns + 1) + column, counted from
 *   the north-west; the longest outline when the zone lies in pieces; empty when it has no cells
 */
export function latticeLoop(zoneOfCell: Int16Array, zone: number, frame: GridFrame): number[] {
  const ways = sidesOf(zoneOfCell, zone, frame)
  let longest: number[] = []
  for (const start of ways.keys())
    while ((ways.get(start)?.length ?? 0) > 0) {
      const loop = follow(ways, start, frame.columns + 1)
      if (loop.length > longest.length && turnsLeft(loop, frame.columns + 1)) longest = loop
    }
  return longest
}

// Every side between the zone and something else, from corner to corner.
function sidesOf(zoneOfCell: Int16Array, zone: number, frame: GridFrame): Map<number, number[]> {
  const ways = new Map<number, number[]>()
  const add = (from: number, to: number) => {
    const known = ways.get(from)
    if (known) known.push(to)
    else ways.set(from, [to])
  }
  const holds = (row: number, column: number) =>
    row >= 0 &&
    row < frame.rows &&
    column >= 0 &&
    column < frame.columns &&
    zoneOfCell[row * frame.columns + column] === zone
  zoneOfCell.forEach((at, cell) => {
    if (at !== zone) return
    const row = Math.floor(cell / frame.columns)
    const column = cell % frame.columns
    const northWest = row * (frame.columns + 1) + column
    const southWest = northWest + frame.columns + 1
    if (!holds(row + 1, column)) add(southWest, southWest + 1)
    if (!holds(row, column + 1)) add(southWest + 1, northWest + 1)
    if (!holds(row - 1, column)) add(northWest + 1, northWest)
    if (!holds(row, column - 1)) add(northWest, southWest)
  })
  return ways
}

// Follows sides until back at the start, turning left where outlines touch, and takes them out of `ways`.
function follow(ways: Map<number, number[]>, start: number, stride: number): number[] {
  const loop: number[] = []
  let step = 0
  let at = start
  do {
    loop.push(at)
    const ends = ways.get(at) ?? []
    const left = leftOf(step, stride)
    const next = ends.find((end) => end - at === left) ?? ends[0]
    if (next === undefined) return loop
    ends.splice(ends.indexOf(next), 1)
    step = next - at
    at = next
  } while (at !== start)
  return loop
}

// The step to the left of a step: east, north, west, south in turn.
function leftOf(step: number, stride: number): number {
  if (step === 1) return -stride
  if (step === -stride) return -1
  return step === -1 ? stride : 1
}

// True for an outer outline, false for the rim of a hole.
function turnsLeft(loop: readonly number[], stride: number): boolean {
  let twice = 0
  loop.forEach((corner, index) => {
    const next = loop[(index + 1) % loop.length] ?? corner
    twice += (corner % stride) * -Math.floor(next / stride) - (next % stride) * -Math.floor(corner / stride)
  })
  return twice > 0
}
