import { cellCentre, cellOutline } from '#core/geometry'
import type { Surface } from '#core/survey'
import type { Hollow } from './around.types'
import { eightWays, neighbourhood, type Neighbourhood } from './neighbours'

/**
 * The hollows of a plot: places from which water cannot run off over the surface, filled to the lip over which they
 * would run.
 *
 * Cells under one water line that touch at a side or a corner make one hollow. Volumes count each cell as level and by
 * its share inside the plot.
 *
 * @param surface - the ground
 * @param filledM - level of each cell with hollows filled to their lip [m]
 * @param leastDepthM - hollows shallower than this are left out [m], 0 or more
 * @returns the hollows, the deepest first
 * @throws RangeError when the least depth is negative or not a number
 */
export function hollowsOf(surface: Surface, filledM: Float64Array, leastDepthM: number): readonly Hollow[] {
  if (!(leastDepthM >= 0))
    throw new RangeError(`hollowsOf: leastDepthM must be 0 or more, got ${leastDepthM}`)
  const hood = neighbourhood(surface)
  const found = poolsOf(surface, filledM, hood)
    .map((cells) => measured(surface, filledM, cells))
    .filter(({ depthM }) => depthM > 0 && depthM >= leastDepthM)
  return found.sort((one, other) => other.depthM - one.depthM)
}

// Cells under water, pool by pool.
function poolsOf({ levelM }: Surface, filledM: Float64Array, hood: Neighbourhood): number[][] {
  const waiting = new Uint8Array(levelM.length)
  for (let cell = 0; cell < levelM.length; cell++)
    if (hood.inside[cell] && filledM[cell]! > levelM[cell]!) waiting[cell] = 1
  const pools: number[][] = []
  for (let first = 0; first < waiting.length; first++)
    if (waiting[first]) pools.push(poolFrom(first, waiting, filledM, hood))
  return pools
}

function poolFrom(first: number, waiting: Uint8Array, filledM: Float64Array, hood: Neighbourhood): number[] {
  const cells = [first]
  waiting[first] = 0
  for (const cell of cells)
    for (let way = 0; way < eightWays.length; way++) {
      const other = cell + hood.offsets[way]!
      if (!(hood.around[cell]! & (1 << way)) || !waiting[other] || filledM[other] !== filledM[first]) continue
      waiting[other] = 0
      cells.push(other)
    }
  return cells
}

function measured(surface: Surface, filledM: Float64Array, cells: readonly number[]): Hollow {
  const { frame, levelM, share } = surface
  const cellM2 = frame.cellM * frame.cellM
  let [deepest, depthM, areaM2, volumeM3] = [cells[0] ?? 0, 0, 0, 0]
  const under = new Uint8Array(levelM.length)
  for (const cell of cells) {
    const waterM = filledM[cell]! - levelM[cell]!
    if (waterM > depthM) [deepest, depthM] = [cell, waterM]
    areaM2 += share[cell]! * cellM2
    volumeM3 += waterM * share[cell]! * cellM2
    under[cell] = 1
  }
  const lipM = filledM[deepest]!
  const ring = cellOutline(frame, under) ?? []
  return { at: cellCentre(frame, deepest), cells, ring, lipM, depthM, areaM2, volumeM3 }
}
