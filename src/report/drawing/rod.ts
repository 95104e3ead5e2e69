import { groundAt, type SectionScale } from './scale'
import type { SectionView } from '../section-view.types'
import { textWidthPx } from './text-width'

/** The banded rod and the tag with its reading. */
export interface Rod {
  readonly xPx: number
  readonly footPx: number
  /** Length of one of its bands [px]. */
  readonly bandPx: number
  readonly tag: {
    readonly leftPx: number
    readonly topPx: number
    readonly widthPx: number
    readonly tallPx: number
  }
}

/** Length of the rod [m], and its bands. */
const ROD_M = 2
export const ROD_BANDS = 4

const TAG_PX = 18
const TAG_TYPE_PX = 12

/** A 2 m rod on the ground, its reading on the line of distances. */
export function rodAt(view: SectionView, scale: SectionScale, atM: number, reading: string): Rod {
  const xPx = scale.axis.x(atM)
  const widthPx = reading ? textWidthPx(reading, 'sansBold', TAG_TYPE_PX) + 14 : 0
  const leftPx = Math.min(scale.widthPx - widthPx - 2, Math.max(2, xPx - widthPx / 2))
  return {
    xPx,
    footPx: scale.y(groundAt(view.ground, atM).heightM),
    bandPx: (ROD_M * scale.yPxPerM) / ROD_BANDS,
    tag: { leftPx, topPx: scale.heightPx - TAG_PX - 1, widthPx, tallPx: TAG_PX },
  }
}
