import { Body, Equator, Horizon, Observer, SearchHourAngle, SearchRiseSet } from 'astronomy-engine'
import { describe, expect, it } from 'vitest'
import { daySun, sunEvents, sunPosition } from '#core/sun'
import { toDegrees, toRadians } from '#core/units'
import { tolerances } from './tolerances'

const LONGITUDE_DEG = -2
const MINUTE_MS = 60_000
const DAY_MS = 24 * 60 * MINUTE_MS
const start = Date.UTC(2026, 0, 1)
const latitudes = [0, 35, 52, 60, -40]

/** Where astronomy-engine sees the sun, without and with the bending of light. */
function theirs(instant: Date, latitudeDeg: number) {
  const observer = new Observer(latitudeDeg, LONGITUDE_DEG, 0)
  const { ra, dec } = Equator(Body.Sun, instant, observer, true, true)
  const bent = Horizon(instant, observer, ra, dec, 'normal')
  const straight = Horizon(instant, observer, ra, dec)
  return { azimuthDeg: straight.azimuth, altitudeDeg: straight.altitude, apparentAltitudeDeg: bent.altitude }
}

const turnDeg = (one: number, other: number) => Math.abs(((one - other + 540) % 360) - 180)

describe('sunPosition and sunEvents against astronomy-engine 2.1.19 (another ephemeris) through 2026', () => {
  it.each(latitudes)('at %s° latitude, every 97 minutes: height and direction of the sun', (latitudeDeg) => {
    let [seen, height, apparent, sideways] = [0, 0, 0, 0]
    for (let at = start; at < start + 365 * DAY_MS; at += 97 * MINUTE_MS) {
      const instant = new Date(at)
      const they = theirs(instant, latitudeDeg)
      if (they.altitudeDeg <= 0) continue
      const we = sunPosition(instant, latitudeDeg, LONGITUDE_DEG)
      seen += 1
      height = Math.max(height, Math.abs(we.altitudeDeg - they.altitudeDeg))
      apparent = Math.max(apparent, Math.abs(we.apparentAltitudeDeg - they.apparentAltitudeDeg))
      // Near the zenith a small step aside turns the azimuth far.
      const across = turnDeg(we.azimuthDeg, they.azimuthDeg) * Math.cos(toRadians(they.altitudeDeg))
      sideways = Math.max(sideways, across)
    }
    expect(seen).toBeGreaterThan(2600)
    expect(height).toBeLessThan(tolerances.ephemerisDeg)
    expect(apparent).toBeLessThan(tolerances.ephemerisDeg)
    expect(sideways).toBeLessThan(tolerances.ephemerisDeg)
  })

  it.each(latitudes)('at %s° latitude, every third day: rise, noon and set', (latitudeDeg) => {
    const observer = new Observer(latitudeDeg, LONGITUDE_DEG, 0)
    let worst = 0
    let noonOff = 0
    for (let at = start; at < start + 365 * DAY_MS; at += 3 * DAY_MS) {
      const { sunrise, noon, sunset } = sunEvents(new Date(at + DAY_MS / 2), latitudeDeg, LONGITUDE_DEG)
      const midnight = new Date(noon.valueOf() - DAY_MS / 2)
      const rise = SearchRiseSet(Body.Sun, observer, +1, midnight, 1)!.date
      const set = SearchRiseSet(Body.Sun, observer, -1, noon, 1)!.date
      const top = SearchHourAngle(Body.Sun, observer, 0, midnight).time.date
      worst = Math.max(
        worst,
        Math.abs(rise.valueOf() - sunrise!.valueOf()),
        Math.abs(set.valueOf() - sunset!.valueOf()),
      )
      noonOff = Math.max(noonOff, Math.abs(top.valueOf() - noon.valueOf()))
    }
    expect(worst / 1000).toBeLessThan(tolerances.riseAgainstEphemerisS)
    expect(noonOff / 1000).toBeLessThan(tolerances.noonAgainstEphemerisS)
  })

  it('declination of the day sums (European Solar Radiation Atlas) at noon of each day of four years', () => {
    const greenwich = new Observer(0, 0, 0)
    let worst = { offDeg: 0, day: 0 }
    for (let year = 2025; year < 2029; year += 1)
      for (let day = 1; day <= 365; day += 1) {
        const noon = new Date(Date.UTC(year, 0, day, 12))
        const { dec } = Equator(Body.Sun, noon, greenwich, true, true)
        const offDeg = Math.abs(toDegrees(daySun(day).declinationRad) - dec)
        if (offDeg > worst.offDeg) worst = { offDeg, day }
      }
    expect(worst.offDeg).toBeLessThan(tolerances.atlasDeclinationDeg)
  })
})
