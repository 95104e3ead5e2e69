import {
  cellCentre,
  distanceToSegmentM,
  pointInRing,
  sides,
  type GridFrame,
  type PlanPoint,
} from '#core/geometry'
import { REACH_CELLS } from './limits'
import type { Zone } from './zone.schema'

/**
 * Gives cells to drawn zones: to the first whose outline holds the cell's centre, else to the nearest within reach.
 *
 * @param share - part of each cell inside the plot, 0 to 1 [ratio]
 * @param frame - where the cells lie
 * @param drawn - the drawn zones
 * @returns zone of each cell as a place in `drawn`; -1 outside the plot, `drawn.length` for cells of no zone
 */
export function cellsOfDrawn(share: Float64Array, frame: GridFrame, drawn: readonly Zone[]): Int16Array {
  const zoneOfCell = new Int16Array(share.length).fill(-1)
  for (let cell = 0; cell < share.length; cell++)
    if (share[cell]! > 0)
      zoneOfCell[cell] = drawn.length === 0 ? 0 : zoneAt(cellCentre(frame, cell), frame, drawn)
  return zoneOfCell
}

function zoneAt(centre: PlanPoint, frame: GridFrame, drawn: readonly Zone[]): number {
  const holder = drawn.findIndex((zone) => pointInRing(centre, zone.ring))
  return holder >= 0 ? holder : nearestZone(centre, drawn, REACH_CELLS * frame.cellM)
}

function nearestZone(centre: PlanPoint, drawn: readonly Zone[], reachM: number): number {
  const gapsM = drawn.map((zone) =>
    Math.min(...sides(zone.ring).map(([from, to]) => distanceToSegmentM(centre, from, to))),
  )
  const leastM = Math.min(reachM, ...gapsM)
  const nearest = gapsM.findIndex((gapM) => gapM <= leastM)
  return nearest >= 0 ? nearest : drawn.length
}
