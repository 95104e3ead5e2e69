import { eightWays, type Neighbourhood } from './neighbours'

/** No island yet. */
const SEA = -1

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
  const hill = hillsOfTops(ground, leastM)
  for (let top = 0; top < hill.length; top++)
    if (hill[top] !== SEA) crestM[top] = Math.max(crestM[top]!, ownM[follow(top, hill)]!)
  const done = new Uint8Array(ownM.length)
  for (let at = 0; at < order.length; at++) {
    const cell = order[at]!
    crestM[cell] = highestAround(cell, crestM, done, hood)
    done[cell] = 1
  }
  return crestM
}

function highestAround(cell: number, crestM: Float64Array, done: Uint8Array, hood: Neighbourhood): number {
  const bits = hood.around[cell]!
  let highestM = crestM[cell]!
  for (let way = 0; way < eightWays.length; way++) {
    const higher = cell + hood.offsets[way]!
    if (bits & (1 << way) && done[higher] && crestM[higher]! > highestM) highestM = crestM[higher]!
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
    levelM: negated(ground.levelM),
    ownM: negated(ground.ownM),
    order: ground.order.slice().reverse(),
  }
  return negated(crestsM(upsideDown, leastM))
}

function negated(levelM: Float64Array): Float64Array {
  const turned = new Float64Array(levelM.length)
  for (let cell = 0; cell < turned.length; cell++) turned[cell] = -levelM[cell]!
  return turned
}

// From the highest cell down, land rises out of a falling sea: each top starts an island, named after its top; where
// two islands meet is their saddle. Gives, for each top, the hill it is a bump on, itself when it is none; -1 elsewhere.
function hillsOfTops(ground: CrestGround, leastM: number): Int32Array {
  const { levelM, order } = ground
  const island = new Int32Array(levelM.length).fill(SEA)
  const hill = new Int32Array(levelM.length).fill(SEA)
  const joining: Joining = { island, hill, leastM, several: false }
  for (let at = 0; at < order.length; at++) {
    const cell = order[at]!
    const highest = highestIsland(cell, joining, ground)
    island[cell] = highest === SEA ? cell : highest
    if (highest === SEA) hill[cell] = cell
    else if (joining.several) joinIslands(cell, highest, joining, ground)
  }
  return hill
}

// The highest top of the islands that touch a cell; notes whether there are several.
function highestIsland(cell: number, joining: Joining, { levelM, hood }: CrestGround): number {
  const { island } = joining
  const bits = hood.around[cell]!
  let highest = SEA
  joining.several = false
  for (let way = 0; way < eightWays.length; way++) {
    const other = cell + hood.offsets[way]!
    if (!(bits & (1 << way)) || island[other] === SEA) continue
    const top = topOf(other, island)
    if (top === highest) continue
    joining.several = highest !== SEA
    const gapM = highest === SEA ? Infinity : levelM[top]! - levelM[highest]!
    if (gapM > 0 || (gapM === 0 && top < highest)) highest = top
  }
  return highest
}

interface Joining {
  readonly island: Int32Array
  readonly hill: Int32Array
  readonly leastM: number
  /** Whether the cell looked at last touches several islands. */
  several: boolean
}

function joinIslands(
  cell: number,
  highest: number,
  { island, hill, leastM }: Joining,
  { levelM, hood }: CrestGround,
): void {
  const bits = hood.around[cell]!
  for (let way = 0; way < eightWays.length; way++) {
    const other = cell + hood.offsets[way]!
    if (!(bits & (1 << way)) || island[other] === SEA) continue
    const top = topOf(other, island)
    if (top === highest) continue
    island[top] = highest
    if (levelM[top]! - levelM[cell]! < leastM) hill[top] = highest
  }
}

function topOf(cell: number, island: Int32Array): number {
  let at = cell
  for (;;) {
    const next = island[at]!
    if (next === at) return at
    // Halves the way for the next who asks.
    island[at] = island[next]!
    at = next
  }
}

function follow(top: number, hill: Int32Array): number {
  let at = top
  while (hill[at] !== at) at = hill[at]!
  return at
}
