import Papa from 'papaparse'
import { describe, expect, it } from 'vitest'
import { csvText } from '../../src/io/csv-text'
import { demos } from '../../src/io/demos'
import { plantSchedule } from '../../src/io/plant-schedule'
import { zoneSchedule } from '../../src/io/zone-schedule'
import { assessed } from './assessed'

const rowsOf = (text: string) =>
  Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data

describe.each(demos)('schedules of $id', ({ text }) => {
  const { plan, findings } = assessed(text)

  it('order every plant of every mix, each with law and poison', () => {
    const rows = rowsOf(plantSchedule(plan, findings))
    const lines = findings.zones.flatMap(({ planting }) => planting.mix)
    const count = (of: readonly number[]) => of.reduce((sum, one) => sum + one, 0)
    expect(rows).toHaveLength(lines.length)
    expect(count(rows.map((row) => Number(row.count)))).toBe(count(lines.map((line) => line.count)))
    for (const row of rows) {
      expect(row.law).not.toBe('')
      expect(row.poison).not.toBe('')
      expect(Number(row.count) > 0 || Number(row.seedG) > 0).toBe(true)
    }
  })

  it('list every zone with the area on its slope', () => {
    const rows = rowsOf(zoneSchedule(plan, findings))
    expect(rows.map((row) => row.zone)).toEqual(findings.zoning.zones.map(({ letter }) => letter))
    rows.forEach((row) => expect(Number(row.slopeAreaM2)).toBeGreaterThanOrEqual(Number(row.planAreaM2)))
  })
})

it('RFC 4180 and CSV injection: a name that starts like a formula stays text, quotes and commas survive', () => {
  const text = csvText(
    ['name', 'amount'],
    [
      ['=1+1', -2.5],
      ['a "b", c', undefined],
    ],
  )
  expect(text).toBe('name,amount\r\n"\'=1+1",-2.5\r\n"a ""b"", c",\r\n')
})
