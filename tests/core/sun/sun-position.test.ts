import { describe, expect, it } from 'vitest'
import { sunEvents, sunPosition } from '#core/sun'
import { directionTo, incidenceDeg, squareTo } from '../../../src/core/sun/sun-vector'
import { tolerances } from './tolerances'

const golden = { latitudeDeg: 39.742476, longitudeDeg: -105.1786 }

describe('sunPosition', () => {
  it('NREL SPA (Reda & Andreas 2008), example of 17 October 2003: azimuth 194.340°, altitude 39.872° true and 39.888° apparent', () => {
    const sun = sunPosition(new Date('2003-10-17T19:30:30Z'), golden.latitudeDeg, golden.longitudeDeg)
    expect(Math.abs(sun.azimuthDeg - 194.34024)).toBeLessThan(tolerances.sunPositionDeg)
    expect(Math.abs(sun.altitudeDeg - 39.872046)).toBeLessThan(tolerances.sunPositionDeg)
    expect(Math.abs(sun.apparentAltitudeDeg - 39.888378)).toBeLessThan(tolerances.sunPositionDeg)
  })

  it('Meeus, Astronomical Algorithms, example 25.a: declination -7.78507° on 13 October 1992, read at the poles', () => {
    const instant = new Date('1992-10-13T00:00:00Z')
    expect(sunPosition(instant, -90, 0).altitudeDeg).toBeCloseTo(7.78507, 3)
    expect(sunPosition(instant, 90, 0).altitudeDeg).toBeCloseTo(-7.78507, 3)
  })

  it('Meeus eq. 16.4: light is bent by 0.48° at the horizon and not at all straight up', () => {
    const equinoxMorning = sunPosition(new Date('2026-03-20T06:08:00Z'), 0, 0)
    expect(Math.abs(equinoxMorning.altitudeDeg)).toBeLessThan(0.5)
    expect(equinoxMorning.apparentAltitudeDeg - equinoxMorning.altitudeDeg).toBeGreaterThan(0.4)
    const noon = sunPosition(new Date('2026-03-20T12:07:00Z'), 0, 0)
    expect(noon.apparentAltitudeDeg - noon.altitudeDeg).toBeCloseTo(0, 3)
  })

  it('refuses places off the globe and dates that are none', () => {
    const now = new Date('2026-03-20T12:00:00Z')
    expect(() => sunPosition(now, 91, 0)).toThrow(/latitude \[°\] must be from -90 to 90, got 91/)
    expect(() => sunPosition(now, 0, 200)).toThrow(RangeError)
    expect(() => sunPosition(new Date('no date'), 0, 0)).toThrow(RangeError)
  })
})

describe('sunEvents', () => {
  const secondsApart = (event: Date | undefined, at: string) =>
    Math.abs((event?.valueOf() ?? NaN) - new Date(at).valueOf()) / 1000

  // The report lists the events of the UT day: in August its sunset is that of the evening before in Colorado.
  it.each([
    ['2015-01-02', '07:21:55', '12:04:45', '2015-01-02', '16:47:43'],
    ['2015-08-02', '05:00:27', '12:06:58', '2015-08-01', '19:13:58'],
  ])(
    'NREL SPA on the web, Golden, Colorado, %s: rise %s, noon %s; %s: set %s',
    (day, rise, noon, evening, set) => {
      const eventsOf = (date: string) =>
        sunEvents(new Date(`${date}T19:00:00Z`), golden.latitudeDeg, golden.longitudeDeg)
      const { sunrise, noon: midday } = eventsOf(day)
      expect(secondsApart(sunrise, `${day}T${rise}-07:00`)).toBeLessThan(tolerances.riseAgainstSpaS)
      expect(secondsApart(midday, `${day}T${noon}-07:00`)).toBeLessThan(tolerances.riseAgainstSpaS)
      const { sunset } = eventsOf(evening)
      expect(secondsApart(sunset, `${evening}T${set}-07:00`)).toBeLessThan(tolerances.riseAgainstSpaS)
    },
  )

  it.each([
    ['2015-01-02', '07:22', '12:05', '16:48'],
    ['2015-08-02', '05:00', '12:07', '19:13'],
  ])('USNO whole minutes, Golden, Colorado, %s: rise %s, noon %s, set %s', (day, rise, noon, set) => {
    const events = sunEvents(new Date(`${day}T19:00:00Z`), golden.latitudeDeg, golden.longitudeDeg)
    const local = (time: string) => `${day}T${time}:00-07:00`
    expect(secondsApart(events.sunrise, local(rise))).toBeLessThan(tolerances.riseAgainstUsnoS)
    expect(secondsApart(events.noon, local(noon))).toBeLessThan(tolerances.riseAgainstUsnoS)
    expect(secondsApart(events.sunset, local(set))).toBeLessThan(tolerances.riseAgainstUsnoS)
  })

  it.each([
    [-35, '1996-07-05', '07:08:15', '17:01:04'],
    [-35, '2004-12-04', '04:38:57', '19:02:02'],
    [35, '1994-01-02', '07:08:12', '16:59:55'],
  ])('NREL SPA rise and set at %s° latitude on %s: %s and %s', (latitudeDeg, day, rise, set) => {
    const events = sunEvents(new Date(`${day}T12:00:00Z`), latitudeDeg, 0)
    expect(secondsApart(events.sunrise, `${day}T${rise}Z`)).toBeLessThan(tolerances.riseAgainstSpaS)
    expect(secondsApart(events.sunset, `${day}T${set}Z`)).toBeLessThan(tolerances.riseAgainstSpaS)
  })

  it('common practice, no source: at 70° north the sun stays up at midsummer and down at midwinter', () => {
    const summer = sunEvents(new Date('2026-06-21T12:00:00Z'), 70, 25)
    expect(summer).toMatchObject({ sunrise: undefined, sunset: undefined, allDay: 'up' })
    expect(sunEvents(new Date('2026-12-21T12:00:00Z'), 70, 25).allDay).toBe('down')
    expect(sunEvents(new Date('2026-12-21T12:00:00Z'), 50, 25).allDay).toBeUndefined()
  })

  it('NREL SPA example (Reda & Andreas 2008, table A5.1): rise 13:12:43, transit 18:46:05, set 00:20:19 the evening before', () => {
    const eventsOf = (day: string) =>
      sunEvents(new Date(`${day}T19:00:00Z`), golden.latitudeDeg, golden.longitudeDeg)
    const { sunrise, noon } = eventsOf('2003-10-17')
    expect(secondsApart(sunrise, '2003-10-17T13:12:43Z')).toBeLessThan(tolerances.riseAgainstSpaS)
    expect(secondsApart(noon, '2003-10-17T18:46:05Z')).toBeLessThan(tolerances.riseAgainstSpaS)
    const { sunset } = eventsOf('2003-10-16')
    expect(secondsApart(sunset, '2003-10-17T00:20:19Z')).toBeLessThan(tolerances.riseAgainstSpaS)
  })

  it('Meeus, Astronomical Algorithms, example 28.a: the sun is 13 min 42.6 s before the clock on 13 October 1992', () => {
    const { noon } = sunEvents(new Date('1992-10-13T12:00:00Z'), 0, 0)
    expect(secondsApart(noon, '1992-10-13T11:46:17.4Z')).toBeLessThan(tolerances.riseAgainstSpaS)
  })

  it('Duffie & Beckman example 1.5.1: at 10:30 by the clock in Madison on 3 February the sun tells 10:19', () => {
    const { noon } = sunEvents(new Date('2026-02-03T18:00:00Z'), 43, -89.4)
    const minutes =
      10 * 60 + 30 + (12 * 60 - (noon.valueOf() - new Date('2026-02-03T06:00:00Z').valueOf()) / 60_000)
    expect(Math.abs(minutes - (10 * 60 + 19))).toBeLessThan(1)
  })

  it('refuses places off the globe and dates that are none', () => {
    expect(() => sunEvents(new Date('no date'), 0, 0)).toThrow(RangeError)
    expect(() => sunEvents(new Date('2026-06-21T12:00:00Z'), -90.5, 0)).toThrow(RangeError)
  })
})

describe('incidenceDeg', () => {
  it('NREL SPA example: 25.187° on a surface of 30° turned 10° east of south', () => {
    const sun = directionTo(194.34024, 90 - 50.11162)
    expect(incidenceDeg(squareTo(30, 170), sun)).toBeCloseTo(25.187, 4)
  })

  it.each([
    [0, 0, 0, 0, 0],
    [30, 180, 30, 180, 0],
    [30, 180, 150, 0, 180],
    [90, 0, 30, 60, 75.5224878],
    [90, 0, 30, 170, 119.4987042],
  ])(
    'pvlib test vectors: tilt %s° to %s°, sun at zenith %s° and azimuth %s°: %s°',
    (tilt, facing, zenith, azimuth, theta) => {
      expect(incidenceDeg(squareTo(tilt, facing), directionTo(azimuth, 90 - zenith))).toBeCloseTo(theta, 5)
    },
  )
})
