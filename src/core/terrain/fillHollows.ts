import { CellHeap } from './cellHeap'
import { ALL_AROUND, eightWays, wayLengths, type Neighbourhood } from './neighbours'

/** The ground with hollows filled to their lip. */
export interface FilledGround {
  /** Filled level of each cell [m]. */
  readonly filledM: Float64Array
  /** On level stretches, way to the stretch's outlet; 0 where water can fall or leave the plot [cells]. */
  readonly wayOut: Float64Array
  /** Cells of the plot from the lowest up: each cell after every cell it can drain to. */
  readonly risingOrder: Uint32Array
}

/**
 * Fills hollows so that from every cell water finds a way to the edge of the plot without climbing.
 *
 * Floods the plot from its edge inwards, always at the lowest cell reached so far; each cell's filled level is the
 * lowest possible highest point of a way out.
 *
 * @param levelM - level of each cell [m]
 * @param hood - cells of the plot and their neighbours
 * @returns filled ground
 * @see Barnes, Lehman and Mulla 2014, Computers & Geosciences 62: 117-127
 */
export function fillHollows(levelM: Float64Array, hood: Neighbourhood): FilledGround {
  const flood = startFlood(levelM, hood)
  const risingOrder = new Uint32Array(hood.inside.reduce((count, inside) => count + inside, 0))
  for (let done = 0; flood.waiting.size > 0; done++) {
    const cell = flood.waiting.takeFirst()
    risingOrder[done] = cell
    flood.state[cell] = FLOODED
    if ((flood.wayOut[cell] ?? 0) > 0)
      flood.wayOut[cell] = Math.max(shortestWayOut(flood, hood, cell), wayOutBefore(flood, risingOrder, done))
    const bits = hood.around[cell] ?? 0
    for (let way = 0; way < eightWays.length; way++)
      if (bits & (1 << way)) reach(flood, cell, cell + (hood.offsets[way] ?? 0), wayLengths[way] ?? 1)
  }
  return { filledM: flood.filledM, wayOut: flood.wayOut, risingOrder }
}

/** States of a cell: not reached, waiting, flooded. */
const [UNREACHED, WAITING, FLOODED] = [0, 1, 2] as const

interface Flood {
  readonly filledM: Float64Array
  readonly wayOut: Float64Array
  readonly state: Uint8Array
  readonly waiting: CellHeap
}

// Every cell at the edge of the plot can let water out at its own level.
function startFlood(levelM: Float64Array, hood: Neighbourhood): Flood {
  const filledM = Float64Array.from(levelM)
  const wayOut = new Float64Array(levelM.length)
  const state = new Uint8Array(levelM.length)
  const waiting = new CellHeap(filledM, wayOut)
  for (let cell = 0; cell < levelM.length; cell++) {
    if (!hood.inside[cell] || hood.around[cell] === ALL_AROUND) continue
    state[cell] = WAITING
    waiting.add(cell)
  }
  return { filledM, wayOut, state, waiting }
}

function reach(flood: Flood, from: number, next: number, length: number): void {
  if (flood.state[next] !== UNREACHED) return
  flood.state[next] = WAITING
  const lipM = flood.filledM[from] ?? 0
  if ((flood.filledM[next] ?? 0) <= lipM) {
    flood.filledM[next] = lipM
    flood.wayOut[next] = (flood.wayOut[from] ?? 0) + length
  }
  flood.waiting.add(next)
}

// On one level the ways out must not shrink along the order, or water would be handed to a cell already done.
function wayOutBefore(flood: Flood, risingOrder: Uint32Array, done: number): number {
  const [cell, before] = [risingOrder[done] ?? 0, risingOrder[done - 1] ?? 0]
  return flood.filledM[before] === flood.filledM[cell] ? (flood.wayOut[before] ?? 0) : 0
}

// The neighbour that reached a level cell first need not lie on its shortest way.
function shortestWayOut(flood: Flood, hood: Neighbourhood, cell: number): number {
  const bits = hood.around[cell] ?? 0
  let shortest = flood.wayOut[cell] ?? 0
  for (let way = 0; way < eightWays.length; way++) {
    const other = cell + (hood.offsets[way] ?? 0)
    if (!(bits & (1 << way)) || flood.state[other] !== FLOODED) continue
    if (flood.filledM[other] !== flood.filledM[cell]) continue
    shortest = Math.min(shortest, (flood.wayOut[other] ?? 0) + (wayLengths[way] ?? 1))
  }
  return shortest
}
