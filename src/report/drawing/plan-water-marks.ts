import { toRadians } from '#core/units'
import type { PlanView } from '../section-view.types'
import { n, outline, type Px } from './path'
import type { PlanScale } from './plan-scale'

/** An arrow out of the plot with the share of its water. */
export interface LeavingMark {
  readonly d: string
  readonly textAt: Px
  readonly words: string
}

/** Length of an arrow for all the water and for the least [px]; its area follows the share. */
const LONG_PX = 26
const SHORT_PX = 10
const BARB_PX = 4.5
const TEXT_PX = 11

/** Hollows as outlines, and arrows where water leaves. */
export function planWaterMarks({ water, section }: PlanView, scale: PlanScale) {
  const ends = [scale.along(0), scale.along(section.lengthM)]
  return {
    hollows: water.hollows.map((ring) => outline(ring.map((point) => scale.at(point)))).join(''),
    leaving: water.leaving.map(({ at, towardsDeg, share }): LeavingMark => {
      const from = scale.at(at)
      const rad = toRadians(scale.turned(towardsDeg))
      const [across, down] = [Math.sin(rad), -Math.cos(rad)]
      const longPx = SHORT_PX + (LONG_PX - SHORT_PX) * Math.sqrt(share)
      const tip = { xPx: from.xPx + across * longPx, yPx: from.yPx + down * longPx }
      const barb = (side: 1 | -1) =>
        `M${n(tip.xPx)} ${n(tip.yPx)}l${n(-across * BARB_PX + side * down * BARB_PX)} ${n(-down * BARB_PX - side * across * BARB_PX)}`
      return {
        d: `M${n(from.xPx)} ${n(from.yPx)}L${n(tip.xPx)} ${n(tip.yPx)}${barb(1)}${barb(-1)}`,
        textAt: clearOfEnds({ xPx: tip.xPx + across * TEXT_PX, yPx: tip.yPx + down * TEXT_PX + 4 }, ends),
        words: `${Math.round(share * 100)}\u00A0%`,
      }
    }),
  }
}

/** Letters of the section's ends reach this far, and words near them stand this much lower [px]. */
const END_PX = 40
const LOWER_PX = 16

function clearOfEnds(at: Px, ends: readonly Px[]): Px {
  const near = ends.some((end) => Math.hypot(end.xPx - at.xPx, end.yPx - at.yPx) < END_PX)
  return near ? { ...at, yPx: at.yPx + LOWER_PX } : at
}
