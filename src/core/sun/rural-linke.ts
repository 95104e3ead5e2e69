import { eachMonth, northernTwin, type Twelve } from '#core/units'

/** Mean Linke turbidity over rural land of the temperate north, January first [1]; from memory of the r.sun manual. */
const NORTHERN_RURAL: Twelve<number> = [2.1, 2.2, 2.5, 2.9, 3.2, 3.4, 3.5, 3.3, 2.9, 2.6, 2.3, 2.2]

/**
 * Usual haziness of country air by month, for plots with no better figure.
 *
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @returns Linke turbidity of each month [1], January first; the seasons change places south of the equator
 */
export function ruralLinke(latitudeDeg: number): Twelve<number> {
  return eachMonth((month) => NORTHERN_RURAL[northernTwin(month, latitudeDeg)])
}
