import { heatLoad } from '#core/sun'
import { daysInMonth, months, type Twelve } from '#core/units'
import { sunOnPlane, type YearSky } from './sun-on-ground'

/** Heat load of one zone [MJ/cm² and year]; undefined beyond 60° of latitude. */
export interface ZoneHeatLoad {
  readonly heatLoad: number | undefined
  readonly heatLoadShaded: number | undefined
}

/** Latitude beyond which the heat load is not known [°] (McCune & Keon 2002). */
const MOST_LATITUDE_DEG = 60

/**
 * Heat load of a zone's mean plane in the open, and what shade leaves of it: the share of the year's radiation under the
 * usual sky that the zone has of the same plane with nothing in the way. The share is our own judgement: it takes the warm
 * and the cool half of the day as equally shaded.
 *
 * @param plane - the plane that the zone lies on as a whole
 * @param plane.slopeDeg - steepness [°], 0 to below 90
 * @param plane.aspectDeg - direction faced [°]; any on level ground
 * @param sky - place, air and the usual sky of each month
 * @param usualWhPerM2 - radiation of each month's mean day on the zone [Wh/m² of slope]
 * @returns heat load in the open and in its shade [MJ/cm² and year]
 * @see McCune & Keon 2002, Journal of Vegetation Science 13:603-606, equation 1
 */
export function zoneHeatLoad(
  plane: { slopeDeg: number; aspectDeg: number },
  sky: YearSky,
  usualWhPerM2: Twelve<number>,
): ZoneHeatLoad {
  const { latitudeDeg } = sky.site
  if (Math.abs(latitudeDeg) > MOST_LATITUDE_DEG) return { heatLoad: undefined, heatLoadShaded: undefined }
  const inTheOpen = heatLoad(latitudeDeg, plane.slopeDeg, plane.aspectDeg)
  const openly = sunOnPlane(plane, sky).usualWhPerM2
  const year = (ofMonth: (month: (typeof months)[number]) => number) =>
    months.reduce<number>((sum, month) => sum + daysInMonth[month] * ofMonth(month), 0)
  const open = year((month) => openly[month][0]!)
  const left = open > 0 ? year((month) => usualWhPerM2[month]) / open : undefined
  return { heatLoad: inTheOpen, heatLoadShaded: left === undefined ? undefined : inTheOpen * left }
}
