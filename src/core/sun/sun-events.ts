import { getTimes } from 'suncalc'
import { withinRange } from './within-range'

/** The sun's day at a place. */
export interface SunEvents {
  /** The sun is highest. */
  readonly noon: Date
  /** The upper edge of the sun comes up; undefined where it does not that day. */
  readonly sunrise: Date | undefined
  /** The upper edge of the sun goes down; undefined where it does not that day. */
  readonly sunset: Date | undefined
  /** Whether the sun stays up or down all day. */
  readonly allDay: 'up' | 'down' | undefined
}

/**
 * Sunrise, noon and sunset of the solar day that an instant belongs to in world time.
 *
 * @param instant - any instant of the day
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @param longitudeDeg - longitude [°], east positive, -180 to 180
 * @returns the day's events over an open level horizon
 * @throws RangeError when the place is off the globe or the instant is not valid
 * @see Meeus, Astronomical Algorithms, 2nd ed. 1998, ch. 15; checked by NREL SPA and USNO times
 */
export function sunEvents(instant: Date, latitudeDeg: number, longitudeDeg: number): SunEvents {
  withinRange('sunEvents: latitude [°]', latitudeDeg, -90, 90)
  withinRange('sunEvents: longitude [°]', longitudeDeg, -180, 180)
  if (Number.isNaN(instant.valueOf())) throw new RangeError('sunEvents: the instant must be a valid date')
  const times = getTimes(instant, latitudeDeg, longitudeDeg)
  return {
    noon: times.solarNoon,
    sunrise: times.sunrise ?? undefined,
    sunset: times.sunset ?? undefined,
    allDay: times.alwaysUp ? 'up' : times.alwaysDown ? 'down' : undefined,
  }
}
