import { ALL_AROUND, eightWays, wayLengths, type Neighbourhood } from './neighbours'
import { RisingQueue } from './rising-queue'

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
  const { around, offsets } = hood
  const { cells, ...range } = extent(levelM, hood)
  const flood = startFlood(levelM, hood, range)
  const { filledM, wayOut, reached, waiting } = flood
  const risingOrder = new Uint32Array(cells)
  for (let done = 0; done < cells; done++) {
    const cell = waiting.takeFirst()
    risingOrder[done] = cell
    const bits = around[cell]!
    const lipM = filledM[cell]!
    for (let way = 0; way < eightWays.length; way++) {
      if (!(bits & (1 << way))) continue
      const next = cell + offsets[way]!
      if (!reached[next]) reach(flood, cell, next, wayLengths[way]!)
      // Only a shorter way out over the same level is news of a cell already reached.
      else if (filledM[next] === lipM) shorten(flood, next, wayOut[cell]! + wayLengths[way]!)
    }
  }
  return { filledM, wayOut, risingOrder }
}

interface Flood {
  readonly filledM: Float64Array
  readonly wayOut: Float64Array
  readonly reached: Uint8Array
  readonly waiting: RisingQueue
}

function extent(levelM: Float64Array, { inside }: Neighbourhood) {
  let [cells, lowestM, highestM] = [0, Infinity, -Infinity]
  for (let cell = 0; cell < levelM.length; cell++) {
    if (!inside[cell]) continue
    const level = levelM[cell]!
    cells += 1
    if (level < lowestM) lowestM = level
    if (level > highestM) highestM = level
  }
  return { cells, lowestM, highestM }
}

// Every cell at the edge of the plot can let water out at its own level.
function startFlood(
  levelM: Float64Array,
  hood: Neighbourhood,
  range: { lowestM: number; highestM: number },
): Flood {
  const filledM = levelM.slice()
  const wayOut = new Float64Array(levelM.length)
  const reached = new Uint8Array(levelM.length)
  const waiting = new RisingQueue(filledM, wayOut, range)
  for (let cell = 0; cell < levelM.length; cell++) {
    if (!hood.inside[cell] || hood.around[cell] === ALL_AROUND) continue
    reached[cell] = 1
    waiting.add(cell)
  }
  return { filledM, wayOut, reached, waiting }
}

function reach(
  { filledM, wayOut, reached, waiting }: Flood,
  from: number,
  next: number,
  length: number,
): void {
  reached[next] = 1
  if (filledM[next]! <= filledM[from]!) {
    filledM[next] = filledM[from]!
    wayOut[next] = wayOut[from]! + length
  }
  waiting.add(next)
}

function shorten({ wayOut, waiting }: Flood, next: number, through: number): void {
  if (wayOut[next]! <= through) return
  wayOut[next] = through
  waiting.moveUp(next)
}
