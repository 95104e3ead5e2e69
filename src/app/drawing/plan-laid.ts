import type { GridFrame, PlanPoint } from '#core/geometry'
import type { Box, PlanScale } from '#report'

/** How a picture of one pixel a cell is laid under a plan of this scale, for CSS. */
export function laidOver(scale: PlanScale, { westM, southM, columns, rows, cellM }: GridFrame): string {
  const northM = southM + rows * cellM
  const corner = scale.at({ eastM: westM, northM })
  const right = scale.at({ eastM: westM + columns * cellM, northM })
  const below = scale.at({ eastM: westM, northM: southM })
  const across = [(right.xPx - corner.xPx) / columns, (right.yPx - corner.yPx) / columns]
  const down = [(below.xPx - corner.xPx) / rows, (below.yPx - corner.yPx) / rows]
  return `matrix(${[...across, ...down, corner.xPx, corner.yPx].join(', ')})`
}

/** The place of the plot under a place of the drawing, to the centimetre. */
export function placeUnder(scale: PlanScale, { xPx, yPx }: { xPx: number; yPx: number }): PlanPoint {
  const origin = scale.at({ eastM: 0, northM: 0 })
  const east = scale.at({ eastM: 1, northM: 0 })
  const [alongPx, asidePx] = [east.xPx - origin.xPx, east.yPx - origin.yPx]
  const square = alongPx ** 2 + asidePx ** 2
  const [x, y] = [xPx - origin.xPx, yPx - origin.yPx]
  // The plan is turned and scaled, never sheared: north is a quarter turn from east.
  const eastM = (x * alongPx + y * asidePx) / square
  const northM = (x * asidePx - y * alongPx) / square
  return { eastM: Math.round(eastM * 100) / 100, northM: Math.round(northM * 100) / 100 }
}

/** Room at the edge of a drawing for the sun [px]. */
const EDGE_PX = 13

/** Where the sun stands at the edge of a box, and how its light runs in from there. */
export function sunAtEdge(turnedDeg: number, { leftPx, rightPx, topPx, bottomPx }: Box) {
  const [right, up] = [Math.sin((turnedDeg * Math.PI) / 180), Math.cos((turnedDeg * Math.PI) / 180)]
  const [halfX, halfY] = [(rightPx - leftPx) / 2, (bottomPx - topPx) / 2]
  const reach = Math.min((halfX - EDGE_PX) / Math.abs(right), (halfY - EDGE_PX) / Math.abs(up))
  return {
    xPx: leftPx + halfX + reach * right,
    yPx: topPx + halfY - reach * up,
    inX: -right,
    inY: up,
  }
}
