/**
 * Where a contour crosses the square between four cell centres.
 *
 * @param node - index of the square's north-west centre [count]
 * @param columns - centres in a row [count]
 * @param levels - levels of its centres, clockwise from the north-west [m]
 * @param levelM - level of the contour [m]
 * @returns pairs of edges it runs between, none to two; edge 2n runs from centre n eastward, 2n + 1 southward
 */
export function crossingsOfSquare(
  node: number,
  columns: number,
  levels: readonly number[],
  levelM: number,
): [number, number][] {
  // North, east, south and west edge; each lies between one corner and the next, clockwise.
  const edges = [2 * node, 2 * (node + 1) + 1, 2 * (node + columns), 2 * node + 1]
  const above = levels.map((level) => level >= levelM)
  const crossed = edges.filter((_, at) => above[at] !== above[(at + 1) % edges.length])
  const [north, east, south, west] = crossed
  if (north === undefined || east === undefined) return []
  if (south === undefined || west === undefined) return [[north, east]]
  // A saddle: the middle says which two corners hang together.
  const middle = levels.reduce((sum, level) => sum + level, 0) / levels.length
  return middle >= levelM === above[0]
    ? [
        [north, east],
        [south, west],
      ]
    : [
        [west, north],
        [east, south],
      ]
}
