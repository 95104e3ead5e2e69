import type { SunStep, UsualDay, UsualStep } from '#core/sun'
import type { CellPlanes } from './cell-planes'

/** What a usual day's light falls on. */
export interface UsualLighting {
  readonly planes: CellPlanes
  /** Share of the sky that each cell sees, cosine-weighted on its own plane [1]. */
  readonly skyView: Float32Array
  /** Share of light thrown back by the ground in front [1]. */
  readonly albedo: number
  readonly usual: UsualDay
  /** Share of direct light that reaches each cell at a step, 0 (in shadow) to 1; undefined with nothing in the way. */
  readonly litAt: ((step: SunStep) => Float32Array) | undefined
}

/** Time by the sun when it is highest, and how near a step's middle may come without lying across it [h]. */
const NOON = 12
const NOT_NOON_H = 1e-9

/** A usual day, one value per cell. */
export interface UsualDayOnCells {
  readonly sunHours: Float32Array
  readonly morningHours: Float32Array
  readonly dappledHours: Float32Array
  readonly usualWhPerM2: Float32Array
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
  const { planes, skyView, albedo, usual } = on
  const count = planes.up.length
  const sums = { sunHours: new Float32Array(count), usualWhPerM2: new Float32Array(count) }
  const openly = new Float32Array(count).fill(1)
  const add = (each: UsualStep) => addStep(each, planes, on.litAt?.(each.step) ?? openly, sums)
  const before = steps.filter(({ step }) => step.solarHour < NOON - NOT_NOON_H)
  const after = steps.filter(({ step }) => step.solarHour > NOON + NOT_NOON_H)
  before.forEach(add)
  const beforeNoon = sums.sunHours.slice()
  steps.filter((each) => !before.includes(each) && !after.includes(each)).forEach(add)
  // A step across noon counts half.
  const morningHours = beforeNoon.map((hours, cell) => (hours + sums.sunHours[cell]!) / 2)
  after.forEach(add)
  const evenWh = steps.reduce((sum, { evenWPerM2, step }) => sum + evenWPerM2 * step.hours, 0)
  const thrownBackWh = albedo * usual.levelWhPerM2
  for (let cell = 0; cell < count; cell += 1) {
    if (planes.up[cell] === 0) continue
    const view = skyView[cell]!
    sums.usualWhPerM2[cell]! += view * evenWh + (1 - view) * thrownBackWh
  }
  return { ...sums, morningHours, dappledHours: new Float32Array(count) }
}

function addStep(
  { step, directWPerM2 }: UsualStep,
  { east, north, up }: CellPlanes,
  lit: Float32Array,
  { sunHours, usualWhPerM2 }: Pick<UsualDayOnCells, 'sunHours' | 'usualWhPerM2'>,
): void {
  const { hours, sun } = step
  const directWh = directWPerM2 * hours
  for (let cell = 0; cell < lit.length; cell += 1) {
    const facing = east[cell]! * sun.east + north[cell]! * sun.north + up[cell]! * sun.up
    const share = facing > 0 ? lit[cell]! : 0
    if (share === 0) continue
    sunHours[cell]! += hours * share
    usualWhPerM2[cell]! += directWh * facing * share
  }
}
