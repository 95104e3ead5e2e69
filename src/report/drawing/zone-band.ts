import type { SectionView, SectionZone } from '../section-view.types'
import type { Rod } from './rod'
import type { Axis } from './axis'
import { textWidthPx } from './text-width'

/** One cell of the zone band. */
export interface ZoneCell {
  readonly key: string
  readonly zone: SectionZone
  readonly leftPx: number
  readonly widthPx: number
  /** The name, when it has room; undefined leaves the letter alone. */
  readonly name: string | undefined
}

/** A distance written under the band. */
export interface DistanceMark {
  readonly distanceM: number
  readonly xPx: number
  readonly text: string | undefined
}

/** Air on each side of words in a cell, and between distances [px]. */
const CELL_AIR_PX = 8
const MARK_AIR_PX = 8

/** Type of the band [px]. */
const bandType = { letterPx: 13, namePx: 15, distancePx: 12 } as const

/** The zones along the axis, each with its letter, and its name where that fits. */
export function zoneCells(view: SectionView, axis: Axis): ZoneCell[] {
  return view.zones.flatMap((zone) =>
    zone.spans.map((span, at) => {
      const leftPx = axis.x(span.fromM)
      const widthPx = axis.x(span.toM) - leftPx
      const needPx =
        textWidthPx(zone.letter, 'sansBold', bandType.letterPx) +
        6 +
        textWidthPx(zone.name, 'serif', bandType.namePx) +
        CELL_AIR_PX * 2
      return {
        key: `${zone.id}-${at}`,
        zone,
        leftPx,
        widthPx,
        name: needPx <= widthPx ? zone.name : undefined,
      }
    }),
  )
}

/** Every zone edge is marked; its distance is written unless it would touch another, or the rod's reading. */
export function distanceMarks(view: SectionView, axis: Axis, tag?: Rod['tag']): DistanceMark[] {
  const edges = new Set([0, view.lengthM])
  for (const zone of view.zones) for (const span of zone.spans) edges.add(span.fromM).add(span.toM)
  const sorted = [...edges]
    .sort((a, b) => a - b)
    .filter((edge, at, all) => at === 0 || edge - (all[at - 1] ?? 0) > 0.05)
  const lastPx = axis.x(view.lengthM) - widthOf(view.lengthM) / 2
  let freeFromPx = -Infinity
  return sorted.map((distanceM) => {
    const xPx = axis.x(distanceM)
    const halfPx = widthOf(distanceM) / 2
    const end = distanceM === view.lengthM
    const covered = tag && xPx + halfPx > tag.leftPx && xPx - halfPx < tag.leftPx + tag.widthPx
    const fits = !covered && xPx - halfPx > freeFromPx && (end || xPx + halfPx + MARK_AIR_PX < lastPx)
    if (fits) freeFromPx = xPx + halfPx + MARK_AIR_PX
    return { distanceM, xPx, text: fits ? distanceText(distanceM) : undefined }
  })
}

function distanceText(distanceM: number): string {
  return `${Math.round(distanceM * 10) / 10} m`
}

function widthOf(distanceM: number): number {
  return textWidthPx(distanceText(distanceM), 'sans', bandType.distancePx)
}
