import type { SunStep, UsualDay, UsualStep } from '#core/sun'
import type { CellPlanes } from './cell-planes'
import type { DayOnGround } from './shade.types'

/** What a usual day's light falls on. */
export interface UsualLighting {
  readonly planes: CellPlanes
  /** Share of the sky that each cell sees, cosine-weighted on its own plane [1]. */
  readonly skyView: Float32Array
  /** Share of light thrown back by the ground in front [1]. */
  readonly albedo: number
  readonly usual: UsualDay
  /** Direct light at a step; undefined with nothing in the way. */
  readonly lightAt: ((step: SunStep) => StepLight) | undefined
}

/** What reaches the cells of direct light at one step. */
export interface StepLight {
  /** Share at each cell, 0 (in shadow) to 1. */
  readonly direct: Float32Array
  /** Cells whose light came through a thing; the first `dappledCount` count. */
  readonly dappled: Int32Array
  readonly dappledCount: number
}

/**
 * No direct light anywhere.
 *
 * @param cells - number of cells [count]
 * @returns shares of 0
 */
export function darkness(cells: number): StepLight {
  return { direct: new Float32Array(cells), dappled: new Int32Array(0), dappledCount: 0 }
}

/** A usual day, one value per cell. */
export interface UsualDayOnCells extends DayOnGround {
  readonly morningHours: Float32Array
  readonly dappledHours: Float32Array
}

/**
 * Adds up a usual day on tilted cells.
 *
 * @param steps - the day's sun under the usual sky
 * @param on - the cells, the sky they see and what shades them
 * @returns hours of sun [h] and radiation [Wh/m² of slope], one value per cell
 * @see Hay & Davies 1980, with the share of sky seen instead of the open plane's
 */
export function collectUsualDay(steps: readonly UsualStep[], on: UsualLighting): UsualDayOnCells {
  const { planes, lightAt } = on
  const count = planes.up.length
  const sums = {
    sunHours: new Float32Array(count),
    morningHours: new Float32Array(count),
    dappledHours: new Float32Array(count),
    beamWhPerM2: new Float32Array(count),
    diffuseWhPerM2: new Float32Array(count),
    reflectedWhPerM2: new Float32Array(count),
  }
  const open = {
    direct: new Float32Array(count).fill(1),
    dappled: new Int32Array(0),
    dappledCount: 0,
  }
  let isMorning = true
  for (const each of steps) {
    const light = lightAt?.(each.step) ?? open
    const morningPart = partBeforeNoon(each.step)
    const noonIsPast = isMorning && morningPart < 1
    if (noonIsPast) sums.morningHours.set(sums.sunHours)
    addDirect(each, planes, light.direct, sums)
    if (noonIsPast) addPart(sums.morningHours, sums.sunHours, morningPart)
    isMorning &&= morningPart === 1
    addDappled(each.step, planes, light, sums.dappledHours)
  }
  addSky(steps, on, sums)
  return sums
}

// Steps come in order of time and one at most has the sun highest in it.
function partBeforeNoon({ solarHour, hours }: SunStep): number {
  return Math.min(1, Math.max(0, 0.5 + (12 - solarHour) / hours))
}

function addPart(onto: Float32Array, of: Float32Array, part: number): void {
  for (let cell = 0; cell < onto.length; cell += 1) onto[cell]! += part * (of[cell]! - onto[cell]!)
}

function addDirect(
  { step, directWPerM2 }: UsualStep,
  { east, north, up }: CellPlanes,
  direct: Float32Array,
  { sunHours, beamWhPerM2 }: UsualDayOnCells,
): void {
  const { hours, sun } = step
  const directWh = directWPerM2 * hours
  for (let cell = 0; cell < direct.length; cell += 1) {
    const share = direct[cell]!
    if (share === 0) continue
    const facing = east[cell]! * sun.east + north[cell]! * sun.north + up[cell]! * sun.up
    if (!(facing > 0)) continue
    sunHours[cell]! += hours * share
    beamWhPerM2[cell]! += directWh * facing * share
  }
}

function addDappled(
  { hours, sun }: SunStep,
  { east, north, up }: CellPlanes,
  { direct, dappled, dappledCount }: StepLight,
  dappledHours: Float32Array,
): void {
  for (let at = 0; at < dappledCount; at += 1) {
    const cell = dappled[at]!
    const facing = east[cell]! * sun.east + north[cell]! * sun.north + up[cell]! * sun.up
    if (facing > 0 && direct[cell]! > 0) dappledHours[cell]! += hours
  }
}

function addSky(
  steps: readonly UsualStep[],
  { planes, skyView, albedo, usual }: UsualLighting,
  { diffuseWhPerM2, reflectedWhPerM2 }: UsualDayOnCells,
): void {
  const evenWh = steps.reduce((sum, { evenWPerM2, step }) => sum + evenWPerM2 * step.hours, 0)
  const thrownBackWh = albedo * usual.levelWhPerM2
  for (let cell = 0; cell < skyView.length; cell += 1) {
    if (planes.up[cell] === 0) continue
    const view = skyView[cell]!
    diffuseWhPerM2[cell] = view * evenWh
    reflectedWhPerM2[cell] = (1 - view) * thrownBackWh
  }
}
