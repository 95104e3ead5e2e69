import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import { writeCalendar } from '../../src/io/calendar-file'

const entry = {
  uid: 'zone-b-weed-4@lynchet',
  title: 'Weed zone B; 3.5 h, across the slope – nicht allein\\'.repeat(3),
  details: 'first line\nsecond line',
  first: { year: 2027, month: 2, day: 10 },
  last: { year: 2027, month: 2, day: 28 },
  yearly: true,
}
const text = writeCalendar('Bank', [entry], { year: 2027, month: 1, day: 1 })
const event = new ICAL.Event(
  new ICAL.Component(ICAL.parse(text) as unknown[]).getAllSubcomponents('vevent')[0],
)

describe('calendar file, read back by ical.js', () => {
  it('keeps text, days and the yearly return', () => {
    expect(event.summary).toBe(entry.title)
    expect(event.description).toBe(entry.details)
    expect(event.startDate.isDate).toBe(true)
    expect(event.startDate.toString()).toBe('2027-02-10')
    expect(event.endDate.toString()).toBe('2027-03-01')
    expect(event.isRecurring()).toBe(true)
  })

  it('RFC 5545: lines end with CRLF and hold at most 75 octets', () => {
    expect(/[^\r]\n/.test(text)).toBe(false)
    const longest = Math.max(...text.split('\r\n').map((line) => new TextEncoder().encode(line).length))
    expect(longest).toBeLessThanOrEqual(75)
    expect(text).toContain('DTSTAMP:20270101T000000Z')
  })
})
