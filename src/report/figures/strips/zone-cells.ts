import type { Axis } from '../../drawing/axis'
import type { StripView, StripZone } from './strip-view.types'

/** A zone's stretch on the shared axis. */
export interface ZoneStretch {
  readonly key: string
  readonly zone: StripZone
  readonly leftPx: number
  readonly widthPx: number
  readonly middlePx: number
  /** The widest stretch of its zone, where the zone's one figure is written. */
  readonly main: boolean
}

/** Every stretch of every zone, laid on the axis that the section is drawn on. */
export function zoneStretches(view: StripView, axis: Axis): ZoneStretch[] {
  return view.zones.flatMap((zone) => {
    const widest = zone.spans.reduce(
      (best, span, at, all) => (length(span) > length(all[best]) ? at : best),
      0,
    )
    return zone.spans.map((span, at) => {
      const leftPx = axis.x(span.fromM)
      const widthPx = axis.x(span.toM) - leftPx
      return {
        key: `${zone.id}-${at}`,
        zone,
        leftPx,
        widthPx,
        middlePx: leftPx + widthPx / 2,
        main: at === widest,
      }
    })
  })
}

/** Edges of zones along the axis, each once [m]. */
export function zoneEdges(view: StripView): number[] {
  const edges = new Set([0, view.lengthM])
  for (const zone of view.zones) for (const span of zone.spans) edges.add(span.fromM).add(span.toM)
  return [...edges].sort((one, other) => one - other)
}

function length(span: { readonly fromM: number; readonly toM: number } | undefined): number {
  return span ? span.toM - span.fromM : 0
}
