import type { SectionView, SectionZone } from '../section-view.types'
import { n, type Box } from './path'
import { groundAt, type SectionScale } from './scale'
import { textWidthPx } from './text-width'

/** The angle of a zone's ground, drawn at its steepest place on the section. */
export interface Wedge {
  readonly key: string
  readonly lines: string
  readonly arc: string
  readonly text: string
  readonly textAt: { readonly xPx: number; readonly yPx: number }
}

/** Length of the level arm [px], and least angle worth a wedge [°]. */
const ARM_PX = 58
const WORDS_PX = 26
/** Size of the figure, and room kept after it [px]. */
const TYPE_PX = 12
const GAP_PX = 6
const LEAST_DEG = 4

/** Kept off each end of a zone, so that a wedge clearly belongs to it. */
const EDGE_SHARE = 0.2

/** One wedge per zone that is wide enough on the sheet. */
export function wedges(view: SectionView, scale: SectionScale): Wedge[] {
  return view.zones.flatMap((zone) => {
    const place = steepestIn(view, zone, scale)
    return place && place.slopeDeg >= LEAST_DEG && widthPx(zone, scale) > ARM_PX * 0.8
      ? [wedgeAt(zone.id, { ...place, slopeSdDeg: zone.slopeSdDeg }, scale)]
      : []
  })
}

function steepestIn(view: SectionView, zone: SectionZone, { axis }: SectionScale) {
  const lastM = axis.distanceAt(axis.endPx - ARM_PX - WORDS_PX)
  const inside = view.ground.filter((point) =>
    zone.spans.some(({ fromM, toM }) => {
      const edgeM = (toM - fromM) * EDGE_SHARE
      return point.distanceM >= fromM + edgeM && point.distanceM <= Math.min(toM - edgeM, lastM)
    }),
  )
  const best = inside.reduce((steep, point) => (point.slopeDeg > steep.slopeDeg ? point : steep), {
    distanceM: 0,
    heightM: 0,
    slopeDeg: -1,
    levelSdM: 0,
  })
  return best.slopeDeg < 0 ? undefined : { ...groundAt(view.ground, best.distanceM), slopeDeg: best.slopeDeg }
}

function widthPx(zone: SectionZone, scale: SectionScale): number {
  return zone.spans.reduce((sum, span) => sum + scale.axis.x(span.toM) - scale.axis.x(span.fromM), 0)
}

/** An error that rounds to nothing is not written. */
function errorWords(slopeSdDeg: number): string {
  const whole = Math.round(slopeSdDeg)
  return whole > 0 ? ` ± ${whole}` : ''
}

function wedgeAt(
  key: string,
  place: {
    readonly distanceM: number
    readonly heightM: number
    readonly slopeDeg: number
    readonly slopeSdDeg: number
  },
  scale: SectionScale,
): Wedge {
  const xPx = scale.axis.x(place.distanceM)
  const yPx = scale.y(place.heightM)
  const drawnRad = Math.atan(Math.tan((place.slopeDeg * Math.PI) / 180) * scale.exaggeration)
  const armPx = ARM_PX * 0.72
  const across = armPx * Math.cos(drawnRad)
  const down = armPx * Math.sin(drawnRad)
  return {
    key,
    lines: `M${n(xPx)} ${n(yPx)}h${ARM_PX}`,
    arc: `M${n(xPx + armPx)} ${n(yPx)}A${n(armPx)} ${n(armPx)} 0 0 1 ${n(xPx + across)} ${n(yPx + down)}`,
    text: `${Math.round(place.slopeDeg)}°${errorWords(place.slopeSdDeg)}`,
    textAt: { xPx: xPx + ARM_PX + 5, yPx: yPx + 4 },
  }
}

/** Boxes of the wedges' words, for labels to keep off. */
export function wedgeBoxes(drawn: readonly Wedge[]): Box[] {
  return drawn.map(({ text, textAt }) => ({
    leftPx: textAt.xPx - ARM_PX * 0.4,
    rightPx: textAt.xPx + Math.max(WORDS_PX, textWidthPx(text, 'sansBold', TYPE_PX) + GAP_PX),
    topPx: textAt.yPx - 14,
    bottomPx: textAt.yPx + 6,
  }))
}
