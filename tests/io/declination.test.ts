import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { trueBearing } from '#core/booking'
import { declinationAt } from '#io'

interface Row {
  year: number
  heightKm: number
  latitudeDeg: number
  longitudeDeg: number
  horizontalNt: number
  declinationDeg: number
}
const { rows } = JSON.parse(
  readFileSync(join(import.meta.dirname, '../truth/booking-wmm2025.json'), 'utf8'),
) as { rows: Row[] }

/** The day that a decimal year falls on. */
const dayOf = (year: number) => (Number.isInteger(year) ? `${year}-01-01` : `${Math.floor(year)}-07-02`)

/** Agreement asked for [°]; the published table has two decimals. */
const TOLERANCE_DEG = 0.01

describe('WMM2025 official test values', () => {
  const trusted = rows.filter(({ horizontalNt }) => horizontalNt >= 2000)
  it.each(trusted)('$year at $latitudeDeg, $longitudeDeg, $heightKm km: $declinationDeg°', (row) => {
    const found = declinationAt(row.latitudeDeg, row.longitudeDeg, row.heightKm * 1000, dayOf(row.year))
    expect(found.ok).toBe(true)
    if (!found.ok) return
    expect(Math.abs(found.value.declinationDeg - row.declinationDeg)).toBeLessThan(TOLERANCE_DEG)
    expect(found.value.model).toBe('WMM2025')
  })

  it('rows in the blackout zone, below 2000 nT, get no bearing but a reason', () => {
    const blackout = rows.filter(({ horizontalNt }) => horizontalNt < 2000)
    expect(blackout.length).toBeGreaterThan(0)
    for (const row of blackout) {
      const found = declinationAt(row.latitudeDeg, row.longitudeDeg, row.heightKm * 1000, dayOf(row.year))
      expect(found.ok ? '' : found.problems[0]?.where).toBe('compass')
    }
  })
})

it('WMM2025 at 43° N 93° E: a compass bearing of 359.7° is one of 0.2° from true north', () => {
  const found = declinationAt(43, 93, 65_000, '2025-01-01')
  expect(found.ok && trueBearing(359.7, found.value.declinationDeg)).toBeCloseTo(0.2, 1)
})

describe('what cannot be corrected', () => {
  it.each<[string, [number, number, number, string], string]>([
    ['a day before the model', [52, 0, 0, '2024-11-12'], 'day of the bearing'],
    ['a day after the model', [52, 0, 0, '2029-11-13'], 'day of the bearing'],
    ['a day that does not exist', [52, 0, 0, '2026-02-30'], 'day of the bearing'],
    ['no day at all', [52, 0, 0, 'yesterday'], 'day of the bearing'],
    ['a latitude beyond the pole', [91, 0, 0, '2026-06-01'], 'latitude'],
    ['a longitude beyond the globe', [52, 181, 0, '2026-06-01'], 'longitude'],
    ['no number', [NaN, 0, 0, '2026-06-01'], 'latitude'],
    ['a height beyond the model', [52, 0, 1e6, '2026-06-01'], 'height above the sea'],
  ])('%s', (_, [latitudeDeg, longitudeDeg, elevationM, on], where) => {
    const found = declinationAt(latitudeDeg, longitudeDeg, elevationM, on)
    expect(found.ok ? '' : found.problems[0]?.where).toBe(where)
  })

  it('the first and the last day of the model', () => {
    expect(declinationAt(52, 0, 0, '2024-11-13').ok).toBe(true)
    expect(declinationAt(52, 0, 0, '2029-11-12').ok).toBe(true)
  })
})
