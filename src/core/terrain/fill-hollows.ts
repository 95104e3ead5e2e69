import { CellHeap } from './cell-heap'
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
    const bits = hood.around[cell] ?? 0
    for (let way = 0; way < eightWays.length; way++)
      if (bits & (1 << way)) reach(flood, cell, cell + (hood.offsets[way] ?? 0), wayLengths[way] ?? 1)
  }
  return { filledM: flood.filledM, wayOut: flood.wayOut, risingOrder }
}

interface Flood {
  readonly filledM: Float64Array
  readonly wayOut: Float64Array
  readonly reached: Uint8Array
  readonly waiting: CellHeap
}

// Every cell at the edge of the plot can let water out at its own level.
function startFlood(levelM: Float64Array, hood: Neighbourhood): Flood {
  const filledM = levelM.slice()
  const wayOut = new Float64Array(levelM.length)
  const reached = new Uint8Array(levelM.length)
  const waiting = new CellHeap(filledM, wayOut)
  for (let cell = 0; cell < levelM.length; cell++) {
    if (!hood.inside[cell] || hood.around[cell] === ALL_AROUND) continue
    reached[cell] = 1
    waiting.add(cell)
  }
  return { filledM, wayOut, reached, waiting }
}

function reach(flood: Flood, from: number, next: number, length: number): void {
  const { filledM, wayOut, reached, waiting } = flood
  const lipM = filledM[from] ?? 0
  const through = (wayOut[from] ?? 0) + length
  if (reached[next]) {
    // Only a shorter way out over the same level is news of a cell already reached.
    if (filledM[next] !== lipM || (wayOut[next] ?? 0) <= through) return
    wayOut[next] = through
    waiting.moveUp(next)
    return
  }
  reached[next] = 1
  if ((filledM[next] ?? 0) <= lipM) {
    filledM[next] = lipM
    wayOut[next] = through
  }
  waiting.add(next)
}
