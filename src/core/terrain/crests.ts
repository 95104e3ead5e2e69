import { eightWays, type Neighbourhood } from './neighbours'

/** What crests are read from. */
export interface CrestGround {
  readonly hood: Neighbourhood
  /** Level of each cell [m]. */
  readonly levelM: Float64Array
  /** Level of each cell, or of the boundary straight above it [m]: what its crest is when nothing stands higher. */
  readonly ownM: Float64Array
  /** Cells from the highest down. */
  readonly order: Uint32Array
}

/**
 * Level of the crest above every cell: the highest place of the plot from which the ground falls to it without a
 * break.
 *
 * A top that stands less than `leastM` above the saddle to a higher one is a bump on that one's slope and takes its
 * crest.
 *
 * @param ground - levels and the order of cells
 * @param leastM - least height of a top above its saddle for it to be a crest of its own [m], 0 or more
 * @returns level of the crest above each cell [m]
 */
export function crestsM(ground: CrestGround, leastM: number): Float64Array {
  const { ownM, order, hood } = ground
  const crestM = ownM.slice()
  for (const [top, hill] of hillsOfTops(ground, leastM))
    crestM[top] = Math.max(crestM[top] ?? 0, ownM[hill] ?? 0)
  const done = new Uint8Array(ownM.length)
  for (const cell of order) {
    crestM[cell] = highestAround(cell, crestM, done, hood)
    done[cell] = 1
  }
  return crestM
}

function highestAround(cell: number, crestM: Float64Array, done: Uint8Array, hood: Neighbourhood): number {
  const bits = hood.around[cell] ?? 0
  let highestM = crestM[cell] ?? 0
  for (let way = 0; way < eightWays.length; way++) {
    const higher = cell + (hood.offsets[way] ?? 0)
    if (bits & (1 << way) && done[higher]) highestM = Math.max(highestM, crestM[higher] ?? 0)
  }
  return highestM
}

/**
 * Level of the foot below every cell: the mirror image of its crest.
 *
 * @param ground - levels, and the boundary levels straight below cells at the edge
 * @param leastM - least depth of a low below its saddle for it to be a foot of its own [m], 0 or more
 * @returns level of the foot below each cell [m]
 */
export function feetM(ground: CrestGround, leastM: number): Float64Array {
  const upsideDown = {
    hood: ground.hood,
    levelM: ground.levelM.map((levelM) => -levelM),
    ownM: ground.ownM.map((levelM) => -levelM),
    order: ground.order.slice().reverse(),
  }
  return crestsM(upsideDown, leastM).map((levelM) => -levelM)
}

// From the highest cell down, land rises out of a falling sea: each top starts an island, named after its top; where
// two islands meet is their saddle.
function hillsOfTops(ground: CrestGround, leastM: number): [number, number][] {
  const { levelM, order } = ground
  const island = new Int32Array(levelM.length).fill(-1)
  const hill = new Map<number, number>()
  const meeting: number[] = []
  for (const cell of order) {
    meetIslands(meeting, cell, island, ground)
    const highest = meeting[0] ?? cell
    island[cell] = highest
    if (meeting.length === 0) hill.set(cell, cell)
    for (let at = 1; at < meeting.length; at++) {
      const top = meeting[at] ?? highest
      island[top] = highest
      if ((levelM[top] ?? 0) - (levelM[cell] ?? 0) < leastM) hill.set(top, highest)
    }
  }
  return [...hill.keys()].map((top) => [top, follow(top, hill)])
}

// Fills `meeting` with the tops of the islands that touch a cell, the highest first.
function meetIslands(meeting: number[], cell: number, island: Int32Array, ground: CrestGround): void {
  const { levelM, hood } = ground
  const bits = hood.around[cell] ?? 0
  while (meeting.length > 0) meeting.pop()
  for (let way = 0; way < eightWays.length; way++) {
    const other = cell + (hood.offsets[way] ?? 0)
    if (!(bits & (1 << way)) || island[other] === -1) continue
    const top = topOf(other, island)
    if (!meeting.includes(top)) meeting.push(top)
  }
  if (meeting.length > 1)
    meeting.sort((one, other) => (levelM[other] ?? 0) - (levelM[one] ?? 0) || one - other)
}

function topOf(cell: number, island: Int32Array): number {
  let at = cell
  for (;;) {
    const next = island[at] ?? at
    if (next === at) return at
    // Halves the way for the next who asks.
    island[at] = island[next] ?? next
    at = next
  }
}

function follow(top: number, hill: ReadonlyMap<number, number>): number {
  let at = top
  for (;;) {
    const next = hill.get(at) ?? at
    if (next === at) return at
    at = next
  }
}
