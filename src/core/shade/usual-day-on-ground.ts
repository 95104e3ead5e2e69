import { sunSteps, usualSteps, type UsualDay } from '#core/sun'
import { collectUsualDay } from './collect-usual-day'
import { dayShading } from './day-shading'
import type { DayChoice, DayOnGround, Shading, TiltedCells } from './shade.types'

/**
 * Sun on every cell on one day under the usual sky of its month, past ground, things and far hills. Hours of sun are those
 * of a clear day.
 *
 * @param shading - everything that can take the sun away
 * @param cells - slope and aspect of each cell
 * @param choice - place, air, day and how it is reckoned
 * @param usual - what the usual sky lets through to open level ground that day
 * @returns hours of sun [h] and radiation [Wh/m² of slope], one value per cell; 0 outside the plot
 * @throws RangeError when the grids do not fit together or a choice is out of range
 * @see Hay & Davies 1980, Calculation of the solar radiation incident on an inclined surface
 */
export function usualDayOnGround(
  shading: Shading,
  cells: TiltedCells,
  choice: DayChoice,
  usual: UsualDay,
): DayOnGround {
  const steps = usualSteps(sunSteps(choice), usual)
  const { sunHours, beamWhPerM2, diffuseWhPerM2, reflectedWhPerM2 } = collectUsualDay(steps, {
    ...dayShading(shading, cells, choice),
    usual,
  })
  return { sunHours, beamWhPerM2, diffuseWhPerM2, reflectedWhPerM2 }
}
