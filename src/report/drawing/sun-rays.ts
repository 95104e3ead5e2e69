import { toRadians } from '#core/units'
import type { SectionView } from '../section-view.types'
import { bankShape, type Shape } from './shade'
import type { NoonSun } from './noon-sun'
import { n, type Px } from './path'
import { groundAt, type SectionScale } from './scale'

/** Rays of one noon, and the ground that they do not reach. */
export interface NoonRays {
  readonly sun: NoonSun
  readonly rays: string
  readonly disc: Px
  /** Stretches of ground in shade [m]. */
  readonly shaded: readonly { readonly fromM: number; readonly toM: number }[]
}

/** Rays are drawn this far apart, and this long at most [px]. */
const RAY_GAP_PX = 96
const RAY_LONG_PX = 190

/** Distance between places tried for shade [m]. */
const SHADE_STEP_M = 0.1

/** Light of one noon on the section, with the shade that its own trees and house throw along it. */
export function noonRays(view: SectionView, scale: SectionScale, sun: NoonSun): NoonRays {
  const up = Math.tan(toRadians(sun.inSectionDeg)) * scale.exaggeration
  const towards = sun.fromFoot ? 1 : -1
  const shapes = bankShape(view, scale)
  const lit = (atM: number) => !blocked(shapes, groundPx(view, scale, atM), { up, towards })
  const every = Math.max(1, Math.round((scale.axis.endPx - scale.axis.startPx) / RAY_GAP_PX))
  const feet = Array.from({ length: every }, (_, at) => ((at + 0.5) / every) * view.lengthM)
  const direction = unit({ xPx: towards, yPx: -up })
  const rays = feet
    .filter(lit)
    .map((atM) => ray(groundPx(view, scale, atM), direction))
    .join('')
  const first = groundPx(view, scale, feet[sun.fromFoot ? feet.length - 1 : 0] ?? 0)
  return { sun, rays, disc: along(first, direction, RAY_LONG_PX + 12), shaded: shadedStretches(view, lit) }
}

function groundPx(view: SectionView, scale: SectionScale, atM: number): Px {
  return { xPx: scale.axis.x(atM), yPx: scale.y(groundAt(view.ground, atM).heightM) }
}

function ray(foot: Px, direction: Px): string {
  const from = along(foot, direction, RAY_LONG_PX)
  const to = along(foot, direction, 3)
  return `M${n(from.xPx)} ${n(from.yPx)}L${n(to.xPx)} ${n(to.yPx)}`
}

/** Whether any crown or roof stands between a place on the ground and the sun. */
function blocked(
  shapes: readonly Shape[],
  foot: Px,
  { up, towards }: { up: number; towards: number },
): boolean {
  return shapes.some((shape) => {
    const nearPx = towards > 0 ? shape.leftPx - foot.xPx : foot.xPx - shape.rightPx
    const farPx = towards > 0 ? shape.rightPx - foot.xPx : foot.xPx - shape.leftPx
    if (farPx <= 0) return false
    const lowest = foot.yPx - Math.max(nearPx, 0) * up
    const highest = foot.yPx - farPx * up
    return highest <= shape.bottomPx && lowest >= shape.topPx
  })
}

function shadedStretches(view: SectionView, lit: (atM: number) => boolean) {
  const stretches: { fromM: number; toM: number }[] = []
  const step = Math.max(SHADE_STEP_M, view.lengthM / 400)
  for (let atM = 0; atM < view.lengthM; atM += step) {
    if (lit(atM)) continue
    const last = stretches.at(-1)
    const toM = Math.min(view.lengthM, atM + step)
    if (last && last.toM >= atM - step * 0.5) last.toM = toM
    else stretches.push({ fromM: atM, toM })
  }
  return stretches
}

function unit(direction: Px): Px {
  const long = Math.hypot(direction.xPx, direction.yPx)
  return { xPx: direction.xPx / long, yPx: direction.yPx / long }
}

function along(from: Px, direction: Px, lengthPx: number): Px {
  return { xPx: from.xPx + direction.xPx * lengthPx, yPx: from.yPx + direction.yPx * lengthPx }
}
