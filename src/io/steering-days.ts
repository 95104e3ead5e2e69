import { northernTwin, type Month } from '#core/units'

/** A day of the year with what it is called. */
export interface NamedDay {
  readonly name: string
  /** Day of a year without a leap day, 1 to 365. */
  readonly dayOfYear: number
}

/** 20 March, 21 June, 23 September, 21 December [d]. */
const MARCH_EQUINOX = 79
const JUNE_SOLSTICE = 172
const SEPTEMBER_EQUINOX = 266
const DECEMBER_SOLSTICE = 355

const JUNE: Month = 5

/**
 * The days of the sun's year that gardeners steer by; the south turns round.
 *
 * @param latitudeDeg - latitude [°], north positive
 * @returns midsummer, both equinoxes and midwinter
 */
export function steeringDays(latitudeDeg: number): readonly NamedDay[] {
  const south = northernTwin(JUNE, latitudeDeg) !== JUNE
  return [
    { name: 'midsummer', dayOfYear: south ? DECEMBER_SOLSTICE : JUNE_SOLSTICE },
    { name: 'March equinox', dayOfYear: MARCH_EQUINOX },
    { name: 'September equinox', dayOfYear: SEPTEMBER_EQUINOX },
    { name: 'midwinter', dayOfYear: south ? JUNE_SOLSTICE : DECEMBER_SOLSTICE },
  ]
}
