import type { SectionView, Stretch } from '../section-view.types'
import { outline, polyline, type Px } from './path'
import { groundAt, type SectionScale } from './scale'

/** Distance between drawn points of the ground [px]. */
const STEP_PX = 4

/** A change of soil depth from zone to zone is eased over this length on each side [m]. */
const EASE_M = 0.6

/** Points along the ground, moved down by a depth that may change along the way. */
export function groundPoints(
  view: SectionView,
  scale: SectionScale,
  stretch: Stretch,
  downPx: (distanceM: number) => number = () => 0,
): Px[] {
  const lengthPx = scale.axis.x(stretch.toM) - scale.axis.x(stretch.fromM)
  const steps = Math.max(2, Math.ceil(lengthPx / STEP_PX))
  return Array.from({ length: steps + 1 }, (_, at) => {
    const distanceM = stretch.fromM + (at / steps) * (stretch.toM - stretch.fromM)
    return {
      xPx: scale.axis.x(distanceM),
      yPx: scale.y(groundAt(view.ground, distanceM).heightM) + downPx(distanceM),
    }
  })
}

/** The ground as a line. */
export function groundLine(view: SectionView, scale: SectionScale, stretch: Stretch): string {
  return polyline(groundPoints(view, scale, stretch))
}

/** A band under the turf, between two depths [px]. */
export function bandUnder(
  view: SectionView,
  scale: SectionScale,
  stretch: Stretch,
  depthPx: { readonly from: number; readonly to: number },
): string {
  const upper = groundPoints(view, scale, stretch, () => depthPx.from)
  const lower = groundPoints(view, scale, stretch, () => depthPx.to)
  return outline([...upper, ...lower.reverse()])
}

/** All that the section cuts through, down to the base of the drawing. */
export function earthBody(view: SectionView, scale: SectionScale): string {
  return `${outline(downToBase(groundPoints(view, scale, view.drawn), scale))}`
}

/** What lies under the soil that roots can use. */
export function underSoil(view: SectionView, scale: SectionScale): string {
  return outline(downToBase(soilBasePoints(view, scale, view.drawn), scale))
}

/** The soil of one stretch, from the turf to its base. */
export function soilBody(view: SectionView, scale: SectionScale, stretch: Stretch): string {
  return outline([...groundPoints(view, scale, stretch), ...soilBasePoints(view, scale, stretch).reverse()])
}

/** Base of the soil as points. */
export function soilBasePoints(view: SectionView, scale: SectionScale, stretch: Stretch): Px[] {
  return groundPoints(view, scale, stretch, (distanceM) => soilDepthM(view, distanceM) * scale.yPxPerM).map(
    (point) => ({ ...point, yPx: Math.min(point.yPx, scale.basePx) }),
  )
}

/** Depth of soil at a distance [m], eased where one zone gives way to the next. */
export function soilDepthM(view: SectionView, distanceM: number): number {
  const here = depthOfZoneAt(view, distanceM)
  const before = depthOfZoneAt(view, distanceM - EASE_M)
  const after = depthOfZoneAt(view, distanceM + EASE_M)
  return (before + 2 * here + after) / 4
}

function depthOfZoneAt(view: SectionView, distanceM: number): number {
  const within = Math.min(view.lengthM, Math.max(0, distanceM))
  const zone =
    view.zones.find((each) => each.spans.some((span) => within >= span.fromM && within <= span.toM)) ??
    view.zones[0]
  return zone?.soil.depthM ?? 0
}

function downToBase(points: readonly Px[], scale: SectionScale): Px[] {
  const first = points[0]
  const last = points.at(-1)
  if (!first || !last) return []
  return [...points, { xPx: last.xPx, yPx: scale.basePx }, { xPx: first.xPx, yPx: scale.basePx }]
}
