import { monthOfDay, placeLight } from './place-light'
import { sunArc } from './place-sun'
import type { DarkSpell, PlaceSky } from './shade.types'

/** Days of the year [d], no leap day. */
const YEAR_DAYS = 365
/** Share of direct light from which a day counts as having sun [1]: a tenth through leaves; own judgement. */
const LEAST_LIGHT = 0.1
/** Time between looks for the sun [h]: 4 min, a degree of the earth's turn. */
const LOOK_H = 1 / 15

/**
 * The longest run of days of the year without direct sun at a place, every day taken as clear. Sun that comes through
 * leaves or branches counts where a tenth of it or more gets through.
 *
 * @param sky - the sky from the place
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @returns the last day with sun before it and the first after it; or that there is none, or no sun at all
 * @throws RangeError when the latitude is off the globe
 */
export function darkSpell(sky: PlaceSky, latitudeDeg: number): DarkSpell {
  const sunny = Array.from({ length: YEAR_DAYS }, (_, day) => hasSun(sky, latitudeDeg, day + 1))
  if (!sunny.includes(true)) return { kind: 'always' }
  if (!sunny.includes(false)) return { kind: 'none' }
  const { lastDay, days } = longestGap(sunny)
  return { kind: 'spell', lastDay, firstDay: ((lastDay + days) % YEAR_DAYS) + 1, days }
}

// Looks for the sun from noon outwards, as it is there most often.
function hasSun(sky: PlaceSky, latitudeDeg: number, dayOfYear: number): boolean {
  const { setH, at } = sunArc(latitudeDeg, dayOfYear)
  const light = placeLight(sky, monthOfDay(dayOfYear))
  const reaches = (hour: number) => {
    const { sun, azimuthDeg, altitudeDeg } = at(hour)
    return light(sun, azimuthDeg, altitudeDeg) >= LEAST_LIGHT
  }
  for (let away = 0; away < setH - 12; away += LOOK_H)
    if (reaches(12 + away) || reaches(12 - away)) return true
  return false
}

// The year closes on itself: a spell may run over the turn of the year.
function longestGap(sunny: readonly boolean[]): { lastDay: number; days: number } {
  const sunnyDays = sunny.flatMap((is, day) => (is ? [day + 1] : []))
  let longest = { lastDay: 0, days: 0 }
  sunnyDays.forEach((lastDay, at) => {
    const next = sunnyDays[at + 1] ?? sunnyDays[0]! + YEAR_DAYS
    if (next - lastDay - 1 > longest.days) longest = { lastDay, days: next - lastDay - 1 }
  })
  return longest
}
