import type { SectionView } from '../section-view.types'
import { soilDepthM } from './ground-shape'
import { n, polyline, type Px } from './path'
import { groundAt, type SectionScale } from './scale'
import type { Fate, Thread } from './threads'

/** Lines of the water drawing, by kind. */
export interface ThreadPaths {
  readonly rain: string
  readonly inGround: string
  readonly overGround: string
}

/** Rain is drawn from close over the ground up to here [px]; words stand above it. */
export const RAIN_OVER_PX = 24
const RAIN_FROM_PX = 4

/** Threads of one bundle lie this far apart, and never thicker than this share of the soil. */
const BUNDLE_GAP_PX = 2.6
const BUNDLE_SHARE = 0.8

/** Way over which a thread sinks from the turf to its bundle [px]. */
const SINK_PX = 46

/** Used water turns back up in the root zone: width and depth of the hook [px]. */
const HOOK_PX = { wide: 7, deep: 15 }

/** Drained water is followed this far below the soil [px]. */
const DRAIN_PX = 34

/** Draws every thread from the rain to its end. */
export function threadPaths(view: SectionView, scale: SectionScale, threads: readonly Thread[]): ThreadPaths {
  const draw = (fate: Fate) =>
    threads
      .filter((thread) => thread.fate === fate)
      .map((thread) => fates[fate]({ view, scale, thread, bundle: threads }))
      .join('')
  return {
    rain: threads.map((thread) => rain(view, scale, thread)).join(''),
    inGround: draw('used') + draw('drained') + draw('sideways'),
    overGround: draw('ran off'),
  }
}

interface Drawing {
  readonly view: SectionView
  readonly scale: SectionScale
  readonly thread: Thread
  readonly bundle: readonly Thread[]
}

const fates: Readonly<Record<Fate, (drawing: Drawing) => string>> = {
  used: hook,
  drained: plunge,
  sideways: seep,
  'ran off': runOff,
}

function groundPx(view: SectionView, scale: SectionScale, atM: number): Px {
  return { xPx: scale.axis.x(atM), yPx: scale.y(groundAt(view.ground, atM).heightM) }
}

function rain(view: SectionView, scale: SectionScale, thread: Thread): string {
  const foot = groundPx(view, scale, thread.fromM)
  return `M${n(foot.xPx)} ${n(foot.yPx - RAIN_OVER_PX)}V${n(foot.yPx - RAIN_FROM_PX)}`
}

/** Into the roots and up again. */
function hook({ view, scale, thread }: Drawing): string {
  const foot = groundPx(view, scale, thread.fromM)
  const deep = Math.min(HOOK_PX.deep, soilDepthM(view, thread.fromM) * scale.yPxPerM * 0.8)
  const half = n(HOOK_PX.wide / 2)
  return (
    `M${n(foot.xPx)} ${n(foot.yPx)}v${n(deep - HOOK_PX.wide / 2)}` +
    `a${half} ${half} 0 0 0 ${n(HOOK_PX.wide)} 0v${n(-deep * 0.55)}`
  )
}

/** Straight down through the base of the soil, with an arrow. */
function plunge({ view, scale, thread }: Drawing): string {
  const foot = groundPx(view, scale, thread.fromM)
  const deep = soilDepthM(view, thread.fromM) * scale.yPxPerM + DRAIN_PX
  const end = Math.min(foot.yPx + deep, scale.basePx - 6)
  return `M${n(foot.xPx)} ${n(foot.yPx)}V${n(end)}m-3 -5l3 5l3 -5`
}

/** Down to the bundle on the base of the soil, and along it. */
function seep({ view, scale, thread }: Drawing): string {
  const [fromPx, toPx] = [scale.axis.x(thread.fromM), scale.axis.x(thread.toM)]
  const steps = Math.max(6, Math.ceil((toPx - fromPx) / 6))
  const points = Array.from({ length: steps + 1 }, (_, at) => {
    const xPx = fromPx + (at / steps) * (toPx - fromPx)
    const distanceM = thread.fromM + (at / steps) * (thread.toM - thread.fromM)
    const ground = groundPx(view, scale, distanceM).yPx
    const deepPx = soilDepthM(view, distanceM) * scale.yPxPerM
    const liftPx = Math.min(deepPx * BUNDLE_SHARE, (thread.rank + 0.6) * BUNDLE_GAP_PX)
    const sunk = ease((xPx - fromPx) / SINK_PX)
    return { xPx, yPx: ground + (deepPx - liftPx) * sunk }
  })
  return polyline(points)
}

/** Over the turf, each thread a little higher than the last. */
function runOff({ view, scale, thread }: Drawing): string {
  const [fromPx, toPx] = [scale.axis.x(thread.fromM), scale.axis.x(thread.toM)]
  const steps = Math.max(2, Math.ceil((toPx - fromPx) / 6))
  return polyline(
    Array.from({ length: steps + 1 }, (_, at) => {
      const distanceM = thread.fromM + (at / steps) * (thread.toM - thread.fromM)
      const foot = groundPx(view, scale, distanceM)
      return { xPx: foot.xPx, yPx: foot.yPx - 3.6 - Math.min(thread.rank, 5) * 2.6 }
    }),
  )
}

function ease(share: number): number {
  const within = Math.min(1, Math.max(0, share))
  return within * within * (3 - 2 * within)
}
