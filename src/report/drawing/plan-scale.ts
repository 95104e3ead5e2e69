import type { PlanPoint, Ring } from '#core/geometry'
import type { PlanView } from '../section-view.types'
import type { Px } from './path'

/** How the plan lies on the sheet. */
export interface PlanScale {
  at(point: PlanPoint): Px
  /** Place a distance down the section line [m from its top]. */
  along(distanceM: number): Px
  /** Direction on the sheet of a compass bearing: 0 up, clockwise [°]. */
  turned(bearingDeg: number): number
  readonly pxPerM: number
}

/** Strip at the foot of the plan for its scale bar and north arrow: nothing else is drawn there [px]. */
export const KEY_STRIP_PX = 36

/** Room kept around the plan for letters outside the plot [px]. */
const ROOM_PX = { sides: 30, top: 24, bottom: KEY_STRIP_PX + 22 }

/** What stands beside the plot is shown up to this share of the plot's own extent. */
const BESIDE_SHARE = 0.3

/**
 * Lays the plan on a sheet: north up, or turned so that the section runs from left to right.
 *
 * @param view - the plan
 * @param size - width and height of the drawing [px]
 * @param toSlope - turned to the slope
 */
export function planScale(
  view: PlanView,
  size: { readonly widthPx: number; readonly heightPx: number },
  toSlope: boolean,
): PlanScale {
  const { from, to } = view.section
  const sectionRad = Math.atan2(to.northM - from.northM, to.eastM - from.eastM)
  const turnRad = toSlope ? -sectionRad : 0
  const flat = (point: PlanPoint) => rotated(point, turnRad)
  const extent = withNeighbours(extentOf(view.boundary, flat), view, flat)
  const wide = size.widthPx - ROOM_PX.sides * 2
  const tall = size.heightPx - ROOM_PX.top - ROOM_PX.bottom
  const pxPerM = Math.min(
    wide / Math.max(extent.right - extent.left, 0.1),
    tall / Math.max(extent.top - extent.bottom, 0.1),
  )
  const leftPx = ROOM_PX.sides + (wide - (extent.right - extent.left) * pxPerM) / 2
  const topPx = ROOM_PX.top + (tall - (extent.top - extent.bottom) * pxPerM) / 2
  const at = (point: PlanPoint): Px => {
    const { x, y } = flat(point)
    return { xPx: leftPx + (x - extent.left) * pxPerM, yPx: topPx + (extent.top - y) * pxPerM }
  }
  return {
    at,
    along: (distanceM) => at(between(view.section, distanceM)),
    turned: (bearingDeg) => bearingDeg - (turnRad * 180) / Math.PI,
    pxPerM,
  }
}

function between({ from, to, lengthM }: PlanView['section'], distanceM: number): PlanPoint {
  const share = distanceM / Math.max(lengthM, 0.001)
  return {
    eastM: from.eastM + share * (to.eastM - from.eastM),
    northM: from.northM + share * (to.northM - from.northM),
  }
}

interface Flat {
  readonly x: number
  readonly y: number
}

function rotated({ eastM, northM }: PlanPoint, turnRad: number): Flat {
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)]
  return { x: eastM * cos - northM * sin, y: eastM * sin + northM * cos }
}

type Extent = ReturnType<typeof extentOf>

/** The plot with what stands beside it, as far as that leaves the plot readable. */
function withNeighbours(plot: Extent, view: PlanView, flat: (point: PlanPoint) => Flat): Extent {
  const marginM = BESIDE_SHARE * Math.max(plot.right - plot.left, plot.top - plot.bottom)
  const things = view.obstacles.map(({ ring }) => extentOf(ring, flat))
  return {
    left: Math.max(plot.left - marginM, Math.min(plot.left, ...things.map((thing) => thing.left))),
    right: Math.min(plot.right + marginM, Math.max(plot.right, ...things.map((thing) => thing.right))),
    bottom: Math.max(plot.bottom - marginM, Math.min(plot.bottom, ...things.map((thing) => thing.bottom))),
    top: Math.min(plot.top + marginM, Math.max(plot.top, ...things.map((thing) => thing.top))),
  }
}

function extentOf(ring: Ring, flat: (point: PlanPoint) => Flat) {
  const places = ring.map(flat)
  return {
    left: Math.min(...places.map((place) => place.x)),
    right: Math.max(...places.map((place) => place.x)),
    bottom: Math.min(...places.map((place) => place.y)),
    top: Math.max(...places.map((place) => place.y)),
  }
}
