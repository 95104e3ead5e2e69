// @vitest-environment happy-dom
import { readFileSync } from 'node:fs'
import { mount } from '@vue/test-utils'
import { nextTick, ref } from 'vue'
import { describe, expect, it, vi } from 'vitest'
import { loadTables } from '#io'
import type { DraftKeep } from '../../src/app/composables/browserKeep'
import { useStartBearing } from '../../src/app/composables/useStartBearing'
import { today, useStartBook } from '../../src/app/composables/useStartBook'
import { withLeg } from '../../src/app/edits/field-books'

const tables = loadTables()

/** A composable as a page uses it. */
function within<Made>(use: () => Made): Made {
  let made: Made | undefined
  mount({ setup: () => ((made = use()), () => null) })
  if (!made) throw new Error('not set up')
  return made
}

describe('the way it faces', () => {
  const bearing = (latitudeDeg: number, longitudeDeg: number) =>
    within(() =>
      useStartBearing(200, {
        latitudeDeg: ref(latitudeDeg),
        longitudeDeg: ref(longitudeDeg),
        places: tables.places,
      }),
    )

  it('World Magnetic Model 2025, official test value at 43° N, 93° E: 0.50° is added and told', () => {
    const { rows } = JSON.parse(readFileSync('tests/truth/booking-wmm2025.json', 'utf8')) as {
      rows: { latitudeDeg: number; longitudeDeg: number; year: number; declinationDeg: number }[]
    }
    const row = rows.find(({ latitudeDeg, year }) => latitudeDeg === 43 && year === 2025)
    const found = bearing(43, 93)
    expect(found.facesDeg.value).toBe(200)
    found.set({ way: 'compass', on: '2025-01-01' })
    // The official value holds 65 km up; at the ground it differs by less than a tenth of a degree.
    const official = row?.declinationDeg ?? NaN
    expect(Math.abs((found.compass.value?.declinationDeg ?? NaN) - official)).toBeLessThan(0.1)
    expect(Math.abs((found.facesDeg.value ?? NaN) - (200 + official))).toBeLessThan(0.15)
    expect(found.view.value.words).toMatch(
      /^The compass reads 0\.\d degrees too low here on that day \(WMM2025\)/,
    )
  })

  it('says why when the day is outside the model, and faces nowhere until that is mended', () => {
    const found = bearing(52, 0)
    found.set({ way: 'compass', on: '1999-01-01' })
    expect(found.view.value.problems[0]?.where).toBe('day of the bearing')
    expect(found.facesDeg.value).toBeUndefined()
    expect(found.compass.value).toBeUndefined()
  })
})

describe('a field book that is being written', () => {
  function keepOf(draft: unknown) {
    const written: unknown[] = []
    const keep: DraftKeep = {
      read: () => Promise.resolve(written.at(-1) ?? draft),
      write: (next) => Promise.resolve(void written.push(next)),
    }
    return { keep, written }
  }

  it('is kept with every line, and comes back after a reload', async () => {
    const { keep, written } = keepOf(undefined)
    const first = within(() => useStartBook(tables.survey, keep))
    first.choose('tape-clinometer')
    const book = first.book.value
    if (!book || book.kind === 'level-book') throw new Error('not a chain')
    first.change(withLeg(book, { lengthM: 4, angleDeg: -20, mark: 'A' }))
    await vi.waitFor(() => expect(written.at(-1)).toBeDefined())
    const again = within(() => useStartBook(tables.survey, keep))
    await vi.waitFor(() => expect(again.restored.value).toBe(true))
    expect(again.methodId.value).toBe('tape-clinometer')
    expect(again.book.value).toEqual(first.book.value)
    again.clear()
    await vi.waitFor(() => expect(written.at(-1)).toBeUndefined())
  })

  it('what is no book is passed over, and what cannot be kept is said', async () => {
    const odd = within(() => useStartBook(tables.survey, keepOf({ books: 7 }).keep))
    await nextTick()
    expect(odd.book.value).toBeUndefined()
    const full: DraftKeep = {
      read: () => Promise.reject(new Error('no room')),
      write: () => Promise.reject(new Error('no room')),
    }
    const told = within(() => useStartBook(tables.survey, full))
    await vi.waitFor(() =>
      expect(told.trouble.value).toMatch(/^This browser keeps nothing for us \(no room\)/),
    )
  })

  it('is of today, as the calendar here has it', () => {
    expect(today(new Date(2026, 2, 5, 23, 59))).toBe('2026-03-05')
  })
})
