import { northernTwin, toRadians, type Month } from '#core/units'
import type { SectionView, Stretch } from '../section-view.types'
import { bankShape, type Shape } from './shade'
import { noonSuns, type NoonSun } from './noon-sun'
import type { Px } from './path'
import { groundAt, type SectionScale } from './scale'

/** Light of one noon on the section. */
export interface NoonLight {
  readonly sun: NoonSun
  /** Towards the sun on the sheet, of length 1. */
  readonly direction: Px
  /** Places of the ground in its light, top of the slope first, close together. */
  readonly feet: readonly Px[]
  /** Stretches of ground in shade. */
  readonly shaded: readonly Stretch[]
}

/** Months of the solstices in the north: leaves are those of the month. */
const MONTHS: Readonly<Record<NoonSun['when'], Month>> = { midsummer: 5, midwinter: 11 }

/** Distance between places of the ground that a ray may reach [px]. */
const FOOT_STEP_PX = 8

/** Distance between places tried for shade: at least this [m], and no more than this many on a section. */
const SHADE_STEP_M = 0.1
const MOST_SHADE_STEPS = 400

/** Noon of midsummer and midwinter, left out when the sun stands square to the section. */
export function noonLights(view: SectionView, scale: SectionScale): NoonLight[] {
  return noonSuns(view.latitudeDeg, view.bearingDeg)
    .filter((sun) => !sun.across)
    .map((sun) => noonLight(view, scale, sun))
}

/** Light of one noon, with the shade that the section's own trees and house throw along it. */
function noonLight(view: SectionView, scale: SectionScale, sun: NoonSun): NoonLight {
  const up = Math.tan(toRadians(sun.inSectionDeg)) * scale.exaggeration
  const towards = sun.fromFoot ? 1 : -1
  const shapes = bankShape(view, scale, northernTwin(MONTHS[sun.when], view.latitudeDeg))
  const lit = (atM: number) => !blocked(shapes, groundPx(view, scale, atM), { up, towards })
  const count = Math.max(1, Math.round((scale.axis.endPx - scale.axis.startPx) / FOOT_STEP_PX))
  const places = Array.from({ length: count }, (_, at) => ((at + 0.5) / count) * view.lengthM)
  return {
    sun,
    direction: unit({ xPx: towards, yPx: -up }),
    feet: places.filter(lit).map((atM) => groundPx(view, scale, atM)),
    shaded: shadedStretches(view, lit),
  }
}

function groundPx(view: SectionView, scale: SectionScale, atM: number): Px {
  return { xPx: scale.axis.x(atM), yPx: scale.y(groundAt(view.ground, atM).heightM) }
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
  const step = Math.max(SHADE_STEP_M, view.lengthM / MOST_SHADE_STEPS)
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
