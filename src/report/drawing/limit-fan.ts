import type { MachineLimit, SectionView } from '../section-view.types'
import type { Px } from './path'
import { groundAt, type SectionScale } from './scale'
import { textWidthPx } from './text-width'

/** One slope of the fan. */
interface FanRay {
  readonly name: string
  readonly steepest: boolean
  readonly to: Px
  readonly labelAt: Px
}

/** The machines' own limits, drawn as slopes from one point, and the bank's steepest beside them. */
export interface LimitFan {
  readonly from: Px
  readonly levelToPx: number
  readonly rays: readonly FanRay[]
}

/** Least size at which the fan can be read [px]. */
const LEAST_PX = { across: 150, down: 70 }

/** The fan keeps this far off the turf's band and the base [px]. */
const CLEAR_PX = { turf: 74, base: 16 }

/** Labels stand at least this far apart [px]. */
const LABEL_GAP_PX = 16
const LABEL_TYPE_PX = 12

/** Lays the fan in the earth under the top of the bank; undefined when it has no room there. */
export function limitFan(view: SectionView, scale: SectionScale): LimitFan | undefined {
  const slopes = slopesOf(view)
  if (view.machines.length === 0) return undefined
  const leftPx = Math.max(scale.axis.x(view.drawn.fromM) + 14, 8)
  const labelPx = Math.max(...slopes.map((slope) => textWidthPx(slope.name, 'sansBold', LABEL_TYPE_PX))) + 14
  const from = { xPx: leftPx, yPx: scale.y(lowestOver(view, scale, leftPx + 120)) + CLEAR_PX.turf }
  const downPx = scale.basePx - CLEAR_PX.base - from.yPx
  const tall = Math.max(...slopes.map((slope) => drop(slope.limitDeg, scale)))
  const lengthPx = Math.min(300, scale.axis.endPx - leftPx - labelPx - 10, (downPx / tall) * 1.02)
  if (downPx < LEAST_PX.down || lengthPx < LEAST_PX.across) return undefined
  return { from, levelToPx: from.xPx + lengthPx, rays: raysOf(slopes, from, { lengthPx, scale }) }
}

interface Slope extends MachineLimit {
  readonly steepest: boolean
}

function slopesOf(view: SectionView): Slope[] {
  const machines = view.machines.map((machine) => ({
    name: `${machine.name} ${Math.round(machine.limitDeg)}°`,
    limitDeg: machine.limitDeg,
    steepest: false,
  }))
  const { distanceM, slopeDeg } = view.steepest
  const here = {
    name: `this bank at ${Math.round(distanceM * 10) / 10} m: ${Math.round(slopeDeg)}°`,
    limitDeg: slopeDeg,
    steepest: true,
  }
  return [...machines, here].sort((one, other) => one.limitDeg - other.limitDeg)
}

/** Drop per pixel across, at the drawing's own scale. */
function drop(limitDeg: number, scale: SectionScale): number {
  return Math.tan((limitDeg * Math.PI) / 180) * scale.exaggeration
}

function raysOf(
  slopes: readonly Slope[],
  from: Px,
  size: { lengthPx: number; scale: SectionScale },
): FanRay[] {
  let freeFromPx = -Infinity
  return slopes.map((slope, at) => {
    const across = size.lengthPx * (1 - 0.055 * at)
    const to = { xPx: from.xPx + across, yPx: from.yPx + across * drop(slope.limitDeg, size.scale) }
    const yPx = Math.max(to.yPx + 4, freeFromPx)
    freeFromPx = yPx + LABEL_GAP_PX
    return { name: slope.name, steepest: slope.steepest, to, labelAt: { xPx: to.xPx + 7, yPx } }
  })
}

/** Lowest ground between the drawing's left edge and a place: the fan stays under all of it [m]. */
function lowestOver(view: SectionView, scale: SectionScale, toPx: number): number {
  const toM = scale.axis.distanceAt(toPx)
  return groundAt(view.ground, toM).heightM
}
