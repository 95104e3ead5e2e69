import { toRadians } from '#core/units'
import { isOutline } from '../section-view-obstacles'
import type { Hachure, PlanView } from '../section-view.types'
import { CROWN_SHARE } from './bank-plants'
import { circle, n, outline, polyline } from './path'
import type { PlanScale } from './plan-scale'

/** Hachures of one weight. */
export interface HachureLayer {
  readonly widthPx: number
  readonly d: string
}

/** Classes of steepness [°] with the weight of their strokes [px]: the steeper, the blacker. */
const WEIGHTS = [
  { fromDeg: 0, widthPx: 0.5 },
  { fromDeg: 8, widthPx: 0.9 },
  { fromDeg: 15, widthPx: 1.4 },
  { fromDeg: 22, widthPx: 2 },
  { fromDeg: 30, widthPx: 2.8 },
] as const

const HACHURE_PX = 7

/** Strokes down the fall of the ground, sorted by weight. */
export function hachureLayers(hachures: readonly Hachure[], scale: PlanScale): HachureLayer[] {
  return WEIGHTS.map(({ fromDeg, widthPx }, at) => {
    const beforeDeg = WEIGHTS[at + 1]?.fromDeg ?? Infinity
    const own = hachures.filter(({ slopeDeg }) => slopeDeg >= fromDeg && slopeDeg < beforeDeg)
    return { widthPx, d: own.map((hachure) => stroke(hachure, scale)).join('') }
  }).filter((layer) => layer.d !== '')
}

function stroke({ at, fallsDeg }: Hachure, scale: PlanScale): string {
  const middle = scale.at(at)
  const rad = toRadians(scale.turned(fallsDeg))
  const [across, down] = [(Math.sin(rad) * HACHURE_PX) / 2, (-Math.cos(rad) * HACHURE_PX) / 2]
  return `M${n(middle.xPx - across)} ${n(middle.yPx - down)}L${n(middle.xPx + across)} ${n(middle.yPx + down)}`
}

/** A surveyed thing in plan. */
export interface PlanThing {
  readonly id: string
  readonly kind: PlanView['obstacles'][number]['kind']
  readonly d: string
  /** A tree's crown, dashed. */
  readonly crown: string
}

/** Outlines of what stands on the plot. */
export function planThings(view: PlanView, scale: PlanScale): PlanThing[] {
  return view.obstacles.map((obstacle) => {
    const { id, kind, ring, heightM } = obstacle
    const places = ring.map((point) => scale.at(point))
    const first = places[0]
    if (places.length === 1 && first) {
      const radiusM =
        view.crowns.find((crown) => crown.id === id)?.radiusM ?? ((heightM ?? 1) * CROWN_SHARE) / 2
      const crownPx = kind === 'tree' ? radiusM * scale.pxPerM : 0
      return { id, kind, d: circle(first, 2), crown: crownPx > 3 ? circle(first, crownPx) : '' }
    }
    return { id, kind, d: isOutline(obstacle) ? outline(places) : polyline(places), crown: '' }
  })
}

/** A round length for the scale bar, some fifth of the plan's width [m]. */
export function scaleBarM(widthPx: number, pxPerM: number): number {
  const roughM = widthPx / 5 / pxPerM
  const power = 10 ** Math.floor(Math.log10(roughM))
  return ([5, 2, 1].find((step) => step * power <= roughM) ?? 1) * power
}
