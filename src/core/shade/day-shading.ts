import { requireDay, type SunStep } from '#core/sun'
import { cellPlanes, openSky, type CellPlanes } from './cell-planes'
import type { StepLight } from './collect-usual-day'
import { castsDirectLight } from './direct-light'
import { monthOfDay } from './place-light'
import { requireShading } from './require-shading'
import type { DayChoice, Shading, ShadingGround, TiltedCells } from './shade.types'
import { SKY_DIRECTIONS, skylinesAround } from './skylines'
import { skyViews } from './things-sky'

/** What a day's light falls on, and what it is kept from. */
export interface DayShading {
  readonly planes: CellPlanes
  /** Share of the sky that each cell sees, cosine-weighted on its own plane [1]. */
  readonly skyView: Float32Array
  readonly albedo: number
  /** Direct light at a step of the day; undefined when nothing is to throw shadows. */
  readonly lightAt: ((step: SunStep) => StepLight) | undefined
}

/**
 * Makes cells ready for one day's light.
 *
 * @param shading - everything that can take the sun away
 * @param cells - slope and aspect of each cell
 * @param choice - place, air, day and how it is reckoned
 * @returns the cells, the sky they see and what shades them
 * @throws RangeError when the grids do not fit together, a thing cannot be or a choice is out of range
 */
export function dayShading(shading: Shading, cells: TiltedCells, choice: DayChoice): DayShading {
  const { ground } = shading
  requireDay(choice)
  requireShading(shading)
  requireFit(ground, cells)
  const planes = cellPlanes(cells, ground.share)
  const month = monthOfDay(choice.dayOfYear)
  const light = castsDirectLight(shading)
  return {
    planes,
    skyView:
      (choice.skyline ?? true)
        ? skyViews(shading, skylinesAround(ground, SKY_DIRECTIONS), planes).months[month]
        : openSky(planes),
    albedo: choice.albedo,
    lightAt: (choice.castShadows ?? true) ? ({ sun }) => light(sun, month) : undefined,
  }
}

/**
 * Refuses grids of different sizes.
 *
 * @param ground - the grid of levels
 * @param cells - slope and aspect of each cell
 * @throws RangeError when they have not one value for each cell of the frame
 */
export function requireFit(ground: ShadingGround, cells: TiltedCells): void {
  const count = ground.frame.columns * ground.frame.rows
  const sizes = [ground.levelM, ground.share, cells.slopeDeg, cells.aspectDeg].map((grid) => grid.length)
  if (sizes.some((size) => size !== count))
    throw new RangeError(`sun: every grid must have ${count} cells, got ${sizes.join(', ')}`)
}
