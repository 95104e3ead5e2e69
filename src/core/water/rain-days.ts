/**
 * Mean rain of a wet day: a floor, and what a wetter month adds [mm, mm per mm a month]: own judgement,
 * near 5 mm in a 50 mm month and 10 mm in a 180 mm month.
 */
const WET_DAY_MM = 3
const WET_DAY_PER_MONTH_MM = 0.04

/** Turn between one event's rank and the next, so that big and small alternate [turns]: the golden section. */
const GOLDEN_TURN = (Math.sqrt(5) - 1) / 2

/**
 * A month's rain laid out day by day, always the same way: wet days evenly spaced, their sizes spread as
 * daily rain is (exponentially), big and small mixed, adding up to the month.
 *
 * @param rainMm - rain of the month [mm], 0 or more
 * @param days - days of the month [d], 28 to 31
 * @returns rain of each day [mm]
 * @throws RangeError when rain is negative or the month has no days
 * @see Geng et al. 1986, Agric. For. Meteorol. 36:363-376, gamma rain with shape 1
 */
export function rainByDay(rainMm: number, days: number): readonly number[] {
  if (!(rainMm >= 0 && Number.isFinite(rainMm)))
    throw new RangeError(`rainByDay: rainMm must be 0 or more, got ${rainMm}`)
  if (!(Number.isInteger(days) && days > 0))
    throw new RangeError(`rainByDay: days must be a whole number above 0, got ${days}`)
  const byDay = new Array<number>(days).fill(0)
  const wetDays = wetDaysOf(rainMm, days)
  const sizes = eventSizes(wetDays)
  const total = sizes.reduce((sum, size) => sum + size, 0)
  sizes.forEach((size, event) => {
    byDay[Math.floor(((event + 0.5) * days) / wetDays)] = (rainMm * size) / total
  })
  return byDay
}

function wetDaysOf(rainMm: number, days: number): number {
  if (rainMm === 0) return 0
  const estimate = Math.round(rainMm / (WET_DAY_MM + WET_DAY_PER_MONTH_MM * rainMm))
  return Math.min(days, Math.max(1, estimate))
}

// Middle of each equal slice of an exponential distribution, in a fixed mixed order.
function eventSizes(count: number): readonly number[] {
  return Array.from({ length: count }, (_, rank) => ({
    size: -Math.log(1 - (rank + 0.5) / count),
    place: (rank * GOLDEN_TURN) % 1,
  }))
    .sort((one, other) => one.place - other.place)
    .map(({ size }) => size)
}
