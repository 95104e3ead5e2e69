import { toRadians } from '#core/units'
import type { SectionView, Stretch } from '../section-view.types'
import { bankShape, type Shape } from './shade'
import { noonSuns, type NoonSun } from './noon-sun'
import { n, overlaps, type Box, type Px } from './path'
import { groundAt, type SectionScale } from './scale'
import { textWidthPx } from './text-width'

/** Light of one noon on the section. */
export interface NoonLight {
  readonly sun: NoonSun
  readonly rays: string
  readonly disc: Px
  readonly words: string
  /** Stretches of ground in shade. */
  readonly shaded: readonly Stretch[]
}

/** Rays are drawn this far apart, and this long at most [px]. */
const RAY_GAP_PX = 96
const RAY_LONG_PX = { midsummer: 150, midwinter: 104 }

/** Distance between places tried for shade [m]. */
const SHADE_STEP_M = 0.1

/** Radius of the drawn sun, and size of its words [px]. */
export const SUN_PX = 7
const WORDS_PX = 12

/** Noon of midsummer and midwinter, left out when the sun stands square to the section. */
export function noonLights(view: SectionView, scale: SectionScale): NoonLight[] {
  return noonSuns(view.latitudeDeg, view.bearingDeg)
    .filter((sun) => !sun.across)
    .map((sun) => noonLight(view, scale, sun))
}

/** Boxes of the suns and their words, for labels to keep off. */
export function sunBoxes(lights: readonly NoonLight[]): Box[] {
  return lights.map(({ disc, words }) => sunBox(disc, words))
}

function sunBox(disc: Px, words: string): Box {
  return {
    leftPx: disc.xPx - SUN_PX * 2,
    rightPx: disc.xPx + SUN_PX * 2 + textWidthPx(words, 'sans', WORDS_PX),
    topPx: disc.yPx - SUN_PX * 2,
    bottomPx: disc.yPx + SUN_PX * 2,
  }
}

/** Light of one noon, with the shade that the section's own trees and house throw along it. */
function noonLight(view: SectionView, scale: SectionScale, sun: NoonSun): NoonLight {
  const up = Math.tan(toRadians(sun.inSectionDeg)) * scale.exaggeration
  const towards = sun.fromFoot ? 1 : -1
  const shapes = bankShape(view, scale)
  const lit = (atM: number) => !blocked(shapes, groundPx(view, scale, atM), { up, towards })
  const count = Math.max(1, Math.round((scale.axis.endPx - scale.axis.startPx) / RAY_GAP_PX))
  const feet = Array.from({ length: count }, (_, at) => ((at + 0.5) / count) * view.lengthM).filter(lit)
  const direction = unit({ xPx: towards, yPx: -up })
  const longPx = RAY_LONG_PX[sun.when]
  const words = `${sun.when} noon, ${Math.round(sun.heightDeg)}° high`
  const discs = feet.map((atM) => along(groundPx(view, scale, atM), direction, longPx + SUN_PX + 3))
  const disc = clearDisc(sun.when === 'midsummer' ? discs : discs.reverse(), words, {
    shapes,
    endPx: scale.axis.endPx,
  })
  return {
    sun,
    words,
    rays: feet.map((atM) => ray(groundPx(view, scale, atM), direction, longPx)).join(''),
    disc: disc ?? { xPx: scale.axis.startPx, yPx: SUN_PX * 3 },
    shaded: shadedStretches(view, lit),
  }
}

/** The first sun on the sheet whose words touch no crown and no roof. */
function clearDisc(
  discs: readonly Px[],
  words: string,
  { shapes, endPx }: { readonly shapes: readonly Shape[]; readonly endPx: number },
): Px | undefined {
  const clear = (disc: Px) => {
    const box = sunBox(disc, words)
    return box.rightPx <= endPx && box.topPx >= 0 && !shapes.some((shape) => overlaps(shape, box))
  }
  return discs.find(clear)
}

function groundPx(view: SectionView, scale: SectionScale, atM: number): Px {
  return { xPx: scale.axis.x(atM), yPx: scale.y(groundAt(view.ground, atM).heightM) }
}

function ray(foot: Px, direction: Px, longPx: number): string {
  const from = along(foot, direction, longPx)
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
