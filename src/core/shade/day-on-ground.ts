import { sunSteps, type SunDay, type SunStep } from '#core/sun'
import { cellPlanes, openSky } from './cell-planes'
import { collectDay } from './collect-day'
import { dayShading } from './day-shading'
import type { DayChoice, DayOnGround, Shading, TiltedCells } from './shade.types'

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
  const { planes, skyView, albedo, lightAt } = dayShading(shading, cells, choice)
  const litAt = lightAt && ((step: SunStep) => lightAt(step).direct)
  return collectDay(sunSteps(choice), { planes, skyView, albedo, litAt })
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
