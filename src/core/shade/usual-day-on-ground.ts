import { sunSteps, usualSteps, withinRange, type UsualDay } from '#core/sun'
import { collectUsualDay } from './collect-usual-day'
import { dayShading } from './day-shading'
import type { DayChoice, DayOnGround, Shading, TiltedCells } from './shade.types'

/** More than a day above the air gives anywhere [Wh/m²]: the south pole's midsummer has 1367 x 1.033 x sin 23.45° x 24 h. */
const MOST_WH_PER_M2 = 15_000

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
  withinRange('usual day: radiation on level ground [Wh/m²]', usual.levelWhPerM2, 0, MOST_WH_PER_M2)
  withinRange('usual day: share of diffuse light [1]', usual.diffuseShare, 0, 1)
  const falling = { ...dayShading(shading, cells, choice), usual }
  const { sunHours, beamWhPerM2, diffuseWhPerM2, reflectedWhPerM2 } = collectUsualDay(
    usualSteps(sunSteps(choice), usual),
    falling,
  )
  return { sunHours, beamWhPerM2, diffuseWhPerM2, reflectedWhPerM2 }
}
