import type { PlanPoint, Ring } from './geometry.types'

/** A corner of the outline, or a place where the line crosses it (then `along` says where on the line). */
interface Node {
  readonly point: PlanPoint
  readonly along: number | undefined
  partner: number | undefined
}

/**
 * Cuts an outline along a straight line drawn across it, extended to both sides.
 *
 * @param ring - outline in plan [m] that does not cross itself
 * @param from - a place on the line [m]
 * @param to - another place on the line [m]
 * @returns the pieces, each an outline; the outline itself when the line misses it
 * @throws RangeError when both places are the same
 */
export function splitRing(ring: Ring, from: PlanPoint, to: PlanPoint): Ring[] {
  const [east, north] = [to.eastM - from.eastM, to.northM - from.northM]
  if (east === 0 && north === 0) throw new RangeError('splitRing: the line needs two different places')
  const nodes = withCrossings(ring, {
    side: (point) => east * (point.northM - from.northM) - north * (point.eastM - from.eastM),
    along: (point) => east * (point.eastM - from.eastM) + north * (point.northM - from.northM),
  })
  pairCrossings(nodes)
  return walkPieces(nodes)
}

interface Line {
  readonly side: (point: PlanPoint) => number
  readonly along: (point: PlanPoint) => number
}

function withCrossings(ring: Ring, line: Line): Node[] {
  return ring.flatMap((corner, at) => {
    const node: Node = { point: corner, along: undefined, partner: undefined }
    const next = ring[(at + 1) % ring.length] ?? corner
    const [here, there] = [line.side(corner), line.side(next)]
    if (here >= 0 === there >= 0) return [node]
    const share = here / (here - there)
    const point = {
      eastM: corner.eastM + share * (next.eastM - corner.eastM),
      northM: corner.northM + share * (next.northM - corner.northM),
    }
    return [node, { point, along: line.along(point), partner: undefined }]
  })
}

// Along the line, crossings enter and leave the outline in turn: each pair is one cut.
function pairCrossings(nodes: Node[]): void {
  const crossings = nodes
    .map((node, at) => ({ node, at, along: node.along }))
    .filter((crossing): crossing is { node: Node; at: number; along: number } => crossing.along !== undefined)
    .sort((one, other) => one.along - other.along)
  for (let pair = 0; pair + 1 < crossings.length; pair += 2) {
    const [enter, leave] = [crossings[pair], crossings[pair + 1]]
    if (!enter || !leave) continue
    enter.node.partner = leave.at
    leave.node.partner = enter.at
  }
}

// Walks the outline forwards; at a crossing it follows the cut to the other end.
function walkPieces(nodes: readonly Node[]): Ring[] {
  const seen = new Set<number>()
  const pieces: Ring[] = []
  nodes.forEach((node, start) => {
    if (seen.has(start) || node.along !== undefined) return
    const piece: PlanPoint[] = []
    let at = start
    do {
      seen.add(at)
      const here = nodes[at]
      if (!here) break
      piece.push(here.point)
      const across = here.partner === undefined ? undefined : nodes[here.partner]
      if (across && here.partner !== undefined) {
        piece.push(across.point)
        at = here.partner
      }
      at = (at + 1) % nodes.length
    } while (at !== start)
    pieces.push(withoutRepeats(piece))
  })
  return pieces.filter((piece) => piece.length > 2)
}

function withoutRepeats(ring: Ring): Ring {
  return ring.filter((corner, at) => {
    const before = ring[(at + ring.length - 1) % ring.length]
    return !before || before.eastM !== corner.eastM || before.northM !== corner.northM
  })
}
