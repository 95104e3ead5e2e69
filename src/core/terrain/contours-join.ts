/**
 * Joins short pieces into lines: pieces that share an end belong together.
 *
 * @param pairs - the ends of each piece; no end is shared by more than two [count]
 * @returns the ends along each line in order; a closed line ends where it begins
 */
export function joinSegments(pairs: readonly (readonly [number, number])[]): number[][] {
  const ofEnd = new Map<number, number[]>()
  for (const [at, ends] of pairs.entries())
    for (const end of ends) ofEnd.set(end, [...(ofEnd.get(end) ?? []), at])
  const used = new Uint8Array(pairs.length)
  const lines: number[][] = []
  // Open lines first, from one of their free ends; what is left over is closed.
  for (const [end, pieces] of ofEnd)
    if (pieces.length === 1 && !used[pieces[0]!]) lines.push(lineFrom(end, pairs, ofEnd, used))
  for (const [at, pair] of pairs.entries()) if (!used[at]) lines.push(lineFrom(pair[0], pairs, ofEnd, used))
  return lines
}

function lineFrom(
  start: number,
  pairs: readonly (readonly [number, number])[],
  ofEnd: ReadonlyMap<number, number[]>,
  used: Uint8Array,
): number[] {
  const line = [start]
  for (let end = start; ;) {
    const piece: number | undefined = ofEnd.get(end)?.find((at) => !used[at])
    if (piece === undefined) return line
    used[piece] = 1
    const [one, other] = pairs[piece]!
    end = one === end ? other : one
    line.push(end)
  }
}
