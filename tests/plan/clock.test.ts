import { describe, expect, it } from 'vitest'
import { clockOf, solarHourOf } from '../../src/plan/clock'

const golden = { latitudeDeg: 39.742476, longitudeDeg: -105.1786, timeZone: 'America/Denver' }
const day = { '2 January': 2, '21 March': 80, '21 June': 172, '2 August': 214, '21 December': 355 }

describe('clock of a place', () => {
  it.each([
    ['2 Jan 2015 transit 12:04:45 MST', '2 January', '12:05', 12 + 4 / 60 + 45 / 3600],
    [
      '2 Aug 2015 transit 12:06:58 MST, an hour later by daylight time',
      '2 August',
      '13:07',
      13 + 6 / 60 + 58 / 3600,
    ],
  ] as const)('NREL SPA, Golden, Colorado: %s', (_, date, shown, transitH) => {
    expect(clockOf(12, day[date], golden, 2015)).toBe(shown)
    const atNoonByClock = 12 - (transitH - 12)
    // Half a minute: the clock is told in whole minutes, the transit in seconds.
    expect(
      Math.abs((solarHourOf('12:00', day[date], golden, 2015) ?? NaN) - atNoonByClock) * 3600,
    ).toBeLessThan(2)
  })

  it('NREL SPA, Golden, Colorado: sunrise 05:00:27 and sunset 19:13:58 MST of 2 Aug 2015 lie evenly about noon', () => {
    const rise = solarHourOf('06:00', day['2 August'], golden, 2015) ?? NaN
    const set = solarHourOf('20:14', day['2 August'], golden, 2015) ?? NaN
    // The declination falls in the course of the day, which makes the afternoon shorter by some seconds.
    expect(Math.abs(12 - rise - (set - 12)) * 60).toBeLessThan(1)
  })

  it('IANA time zones: the sun is highest after 12:00 by some hours in the west of China and of Spain in summer', () => {
    const kashgar = { latitudeDeg: 39.47, longitudeDeg: 75.99, timeZone: 'Asia/Shanghai' }
    // 8 h ahead of world time, the place 5 h 4 min: 14:56, and the equation of time of 21 March, 7 min, on top.
    expect(clockOf(12, day['21 March'], kashgar)).toBe('15:03')
    expect(
      clockOf(12, day['21 June'], { latitudeDeg: 42.88, longitudeDeg: -8.54, timeZone: 'Europe/Madrid' }),
    ).toBe('14:36')
  })

  it('goes there and back in each hemisphere and on either side of the date line', () => {
    const sites = [
      golden,
      { latitudeDeg: -37.8, longitudeDeg: 145, timeZone: 'Australia/Melbourne' },
      { latitudeDeg: -13.8, longitudeDeg: -171.8, timeZone: 'Pacific/Apia' },
      { latitudeDeg: 52.9, longitudeDeg: 172.9, timeZone: 'America/Adak' },
      { latitudeDeg: 51.5, longitudeDeg: 0, timeZone: 'Europe/London' },
    ]
    for (const site of sites)
      for (let dayOfYear = 1; dayOfYear <= 365; dayOfYear += 7)
        for (let solarHour = 4; solarHour <= 20; solarHour += 1.37) {
          const clock = clockOf(solarHour, dayOfYear, site) ?? ''
          const back = solarHourOf(clock, dayOfYear, site) ?? NaN
          // Half a minute of rounding.
          expect(Math.abs(back - solarHour) * 60).toBeLessThanOrEqual(0.51)
        }
  })

  it('has no clock without a time zone, and no sun for a time that the clocks skip', () => {
    const { latitudeDeg, longitudeDeg } = golden
    expect(clockOf(12, 1, { latitudeDeg, longitudeDeg })).toBeUndefined()
    expect(solarHourOf('12:00', 1, { latitudeDeg, longitudeDeg })).toBeUndefined()
    // US law: clocks go from 02:00 to 03:00 on the second Sunday of March, 8 March 2015.
    expect(solarHourOf('02:30', 67, golden, 2015)).toBeUndefined()
    expect(solarHourOf('03:00', 67, golden, 2015)).toBeDefined()
    // And from 02:00 back to 01:00 on the first Sunday of November, so 01:30 comes twice: it counts as one of them.
    expect(solarHourOf('01:30', 305, golden, 2015)).toBeDefined()
  })

  it('counts days without a leap day: 21 June is the same date in a leap year', () => {
    expect(clockOf(12, day['21 June'], golden, 2024)).toBe(clockOf(12, day['21 June'], golden, 2023))
  })

  it('refuses what is no time, no day and no time zone', () => {
    expect(() => clockOf(NaN, 1, golden)).toThrow(RangeError)
    expect(() => clockOf(12, 366, golden)).toThrow(RangeError)
    expect(() => solarHourOf('noon', 1, golden)).toThrow(RangeError)
    expect(() => solarHourOf('25:00', 1, golden)).toThrow(RangeError)
    expect(() => clockOf(12, 1, { ...golden, timeZone: 'Middle/Earth' })).toThrow(RangeError)
  })
})
