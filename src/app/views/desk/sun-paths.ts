import { sunPath } from '#core/shade'

/** Days of the solstices and of an equinox, counted from 1 January without a leap day [d]. */
const JUNE_DAY = 172
const DECEMBER_DAY = 355
const EQUINOX_DAY = 80

/** Ways of the sun at midwinter, equinox and midsummer of a latitude [°]. */
export function sunPaths(latitudeDeg: number) {
  const [summerDay, winterDay] = latitudeDeg < 0 ? [DECEMBER_DAY, JUNE_DAY] : [JUNE_DAY, DECEMBER_DAY]
  return [
    { name: 'midwinter', places: sunPath(latitudeDeg, winterDay) },
    { name: 'equinox', places: sunPath(latitudeDeg, EQUINOX_DAY) },
    { name: 'midsummer', places: sunPath(latitudeDeg, summerDay) },
  ]
}
