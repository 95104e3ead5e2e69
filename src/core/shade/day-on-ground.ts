import { requireDay, sunSteps, type SunDay } from '#core/sun'
import { cellPlanes, type CellPlanes } from './cell-planes'
import { collectDay } from './collect-day'
import { castsDirectLight } from './direct-light'
import { monthOfDay } from './place-light'
import { SKY_DIRECTIONS, skylinesAround } from './skylines'
import { skyView } from './sky-view'
import type { DayChoice, DayOnGround, Shading, ShadingGround, TiltedCells } from './shade.types'

/**
 * Sun on every cell on one clear day, past ground, things and far hills.
 *
 * @param shading - everything that can take the sun away
 * @param cells - slope and aspect of each cell
 * @param choice - place, air, day and how it is reckoned
 * @returns hours of sun [h] and radiation [Wh/m² of slope], one value per cell; 0 outside the plot
 * @throws RangeError when the grids do not fit together or a choice is out of range
 * @see Hofierka & Suri 2002, The solar radiation model for Open source GIS; checked by GRASS r.sun
 */
export function dayOnGround(shading: Shading, cells: TiltedCells, choice: DayChoice): DayOnGround {
  const { ground } = shading
  requireDay(choice)
  requireFit(ground, cells)
  const planes = cellPlanes(cells, ground.share)
  const month = monthOfDay(choice.dayOfYear)
  const light = castsDirectLight(shading)
  return collectDay(sunSteps(choice), {
    planes,
    skyView:
      (choice.skyline ?? true) ? skyView(skylinesAround(ground, SKY_DIRECTIONS), planes) : openSky(planes),
    albedo: choice.albedo,
    litAt: (choice.castShadows ?? true) ? (step) => light(step.sun, month) : undefined,
  })
}

/**
 * The sky in front of each cell's own plane with nothing else in the way.
 *
 * @param planes - the cells as planes
 * @returns share of the sky [1], one value per cell
 */
export function openSky(planes: CellPlanes): Float32Array {
  return new Float32Array(planes.ownSky)
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

/**
 * Sun on one tilted place with nothing around it on one clear day.
 *
 * @param plane - slope [°], 0 to below 90, and aspect faced, clockwise from true north [°]
 * @param plane.slopeDeg - steepness [°]
 * @param plane.aspectDeg - direction faced [°]
 * @param choice - place, air, day and time step
 * @returns the same as for ground, with grids of one cell
 */
export function dayOnPlane(
  { slopeDeg, aspectDeg }: { slopeDeg: number; aspectDeg: number },
  choice: SunDay,
): DayOnGround {
  const planes = cellPlanes({ slopeDeg: Float64Array.of(slopeDeg), aspectDeg: Float64Array.of(aspectDeg) })
  return collectDay(sunSteps(choice), {
    planes,
    skyView: openSky(planes),
    albedo: choice.albedo,
    litAt: undefined,
  })
}
