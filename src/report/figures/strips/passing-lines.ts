import { n, polyline, type Px } from '../../drawing/path'
import type { Axis } from '../../drawing/axis'
import type { StripView } from './strip-view.types'
import { zoneStretches } from './zone-cells'

/** Water in the ground and on it along the slope, at one scale. */
export interface PassingLines {
  readonly ground: string
  readonly groundEdge: string
  readonly surface: string
  readonly ticks: readonly { readonly key: string; readonly yPx: number; readonly words: string }[]
  readonly mostM3: number
}

/** Round steps for the scale [m³ a year]. */
const STEPS_M3 = [
  0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000, 50_000,
] as const
const MOST_TICKS = 3

/**
 * From each zone's upper edge to its lower edge, straight in between; a jump at an edge is water that comes from,
 * or goes to, somewhere else than the neighbour on the section.
 */
export function passingLines(view: StripView, axis: Axis, heightPx: number): PassingLines {
  const stretches = zoneStretches(view, axis).sort((one, other) => one.leftPx - other.leftPx)
  const most = Math.max(0.1, ...view.zones.flatMap(({ passing }) => Object.values(passing) as number[]))
  const y = (volumeM3: number) => heightPx - (volumeM3 / most) * (heightPx - 6)
  const run = (from: 'overInM3' | 'throughInM3', to: 'overOutM3' | 'throughOutM3'): Px[] =>
    stretches.flatMap(({ zone, leftPx, widthPx }) => [
      { xPx: leftPx, yPx: y(zone.passing[from]) },
      { xPx: leftPx + widthPx, yPx: y(zone.passing[to]) },
    ])
  const through = run('throughInM3', 'throughOutM3')
  const step = STEPS_M3.find((size) => most / size <= MOST_TICKS) ?? most
  const count = Math.floor(most / step)
  return {
    ground: `${polyline(through)}L${n(axis.endPx)} ${heightPx}H${n(axis.startPx)}Z`,
    groundEdge: polyline(through),
    surface: polyline(run('overInM3', 'overOutM3')),
    ticks: Array.from({ length: count }, (_, at) => {
      const volumeM3 = Math.round(step * (at + 1) * 10) / 10
      return { key: String(volumeM3), yPx: y(volumeM3), words: `${volumeM3} m³` }
    }),
    mostM3: most,
  }
}
