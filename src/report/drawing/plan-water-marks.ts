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
export function planWaterMarks({ water }: PlanView, scale: PlanScale) {
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
        textAt: { xPx: tip.xPx + across * TEXT_PX, yPx: tip.yPx + down * TEXT_PX + 4 },
        words: `${Math.round(share * 100)}\u00A0%`,
      }
    }),
  }
}
