import type { PlanPoint, Ring } from '#core/geometry'
import type { PlanView } from '../section-view.types'
import type { PlanScale } from './plan-scale'

/** Room around a small plan, and its greatest height by its width [px]. */
const ROOM_PX = 4
const TALLEST = 1.1

/** What stands beside the plot is shown up to this share of the plot's own extent. */
const BESIDE_SHARE = 0.12

/** A plan that lies north up on a small sheet. */
export interface SmallPlanScale extends PlanScale {
  readonly heightPx: number
}

/**
 * Lays a plan on a small sheet, north up, with a little of what stands beside the plot.
 *
 * @param view - the plan
 * @param widthPx - width of the sheet [px]
 */
export function smallPlanScale(view: PlanView, widthPx: number): SmallPlanScale {
  const extent = widened(extentOf(view.boundary), view)
  const [wideM, tallM] = [extent.eastM - extent.westM, extent.northM - extent.southM]
  const roomPx = widthPx - ROOM_PX * 2
  const pxPerM = Math.min(roomPx / Math.max(wideM, 0.1), (roomPx * TALLEST) / Math.max(tallM, 0.1))
  const leftPx = (widthPx - wideM * pxPerM) / 2
  const at = ({ eastM, northM }: PlanPoint) => ({
    xPx: leftPx + (eastM - extent.westM) * pxPerM,
    yPx: ROOM_PX + (extent.northM - northM) * pxPerM,
  })
  const { from, to, lengthM } = view.section
  return {
    at,
    pxPerM,
    heightPx: tallM * pxPerM + ROOM_PX * 2,
    turned: (bearingDeg) => bearingDeg,
    along: (distanceM) => {
      const share = distanceM / Math.max(lengthM, 0.001)
      return at({
        eastM: from.eastM + share * (to.eastM - from.eastM),
        northM: from.northM + share * (to.northM - from.northM),
      })
    },
  }
}

function extentOf(ring: Ring) {
  const [east, north] = [ring.map(({ eastM }) => eastM), ring.map(({ northM }) => northM)]
  return {
    westM: Math.min(...east),
    eastM: Math.max(...east),
    southM: Math.min(...north),
    northM: Math.max(...north),
  }
}

function widened(plot: ReturnType<typeof extentOf>, { obstacles }: PlanView) {
  const marginM = BESIDE_SHARE * Math.max(plot.eastM - plot.westM, plot.northM - plot.southM)
  const things = obstacles.map(({ ring }) => extentOf(ring))
  return {
    westM: Math.max(plot.westM - marginM, Math.min(plot.westM, ...things.map((thing) => thing.westM))),
    eastM: Math.min(plot.eastM + marginM, Math.max(plot.eastM, ...things.map((thing) => thing.eastM))),
    southM: Math.max(plot.southM - marginM, Math.min(plot.southM, ...things.map((thing) => thing.southM))),
    northM: Math.min(plot.northM + marginM, Math.max(plot.northM, ...things.map((thing) => thing.northM))),
  }
}
