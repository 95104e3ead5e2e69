import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import { careCalendar } from '../../src/io/care-calendar'
import { demos } from '../../src/io/demos'
import { assessed } from './assessed'

const YEAR = 2027

function eventsOf(text: string) {
  return new ICAL.Component(ICAL.parse(text) as unknown[])
    .getAllSubcomponents('vevent')
    .map((component) => new ICAL.Event(component))
}

describe.each(demos)('calendar of $id, read back by ical.js', ({ text }) => {
  const { plan, findings } = assessed(text)
  const file = careCalendar(plan, findings, YEAR)
  const events = eventsOf(file)
  const jobs = findings.care.zones.flatMap((zone) => zone.jobs)

  it('has every job from its first to its last good day, all day', () => {
    for (const job of jobs) {
      const event = events.find(({ uid }) => uid.startsWith(`${job.id}@`))
      if (!event) throw new Error(`${job.id} is missing`)
      const first = ICAL.Time.fromData({ year: YEAR, month: job.month + 1, day: job.fromDay, isDate: true })
      expect(event.startDate.isDate).toBe(true)
      expect(event.startDate.toString()).toBe(first.toString())
      // RFC 5545: an all-day entry ends on the day after its last.
      expect(event.duration.toSeconds() / 86_400).toBe(job.toDay - job.fromDay + 1)
      expect(event.isRecurring()).toBe(!job.firstYearOnly)
      expect(event.description).toContain(job.how)
    }
  })

  it('says for each month when a zone is better left alone', () => {
    for (const { zoneId, keepOff } of findings.care.zones)
      for (const { reason, months } of keepOff)
        for (const month of months) {
          const middle = ICAL.Time.fromData({ year: YEAR, month: month + 1, day: 15, isDate: true })
          const covering = events.filter(
            ({ uid, startDate, endDate }) =>
              uid.startsWith(`${zoneId}/keep-off/${reason}/`) &&
              startDate.compare(middle) <= 0 &&
              endDate.compare(middle) > 0,
          )
          expect(covering).toHaveLength(1)
        }
  })

  it('gives each entry a name of its own that stays the same from year to year', () => {
    const names = events.map(({ uid }) => uid)
    expect(new Set(names).size).toBe(names.length)
    expect(eventsOf(careCalendar(plan, findings, YEAR + 1)).map(({ uid }) => uid)).toEqual(names)
  })
})

it('refuses a year that is none', () => {
  const { plan, findings } = assessed(demos[0]?.text ?? '')
  expect(() => careCalendar(plan, findings, 12.5)).toThrow(RangeError)
})
