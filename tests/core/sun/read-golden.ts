import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

/** What r.sun prints of each day it reckons. */
export interface RsunDays {
  readonly days: Record<
    string,
    { dayOfYear: number; declinationRad: number; aboveAirWPerM2: number; sunriseH: number; sunsetH: number }
  >
}

/** r.sun's own declination and radiation above the air on five days at 52° north. */
export function readGolden(): RsunDays {
  const path = fileURLToPath(new URL('../../truth/sun-rsun-days.json', import.meta.url))
  return JSON.parse(readFileSync(path, 'utf8')) as RsunDays
}
