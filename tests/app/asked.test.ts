import { describe, expect, it } from 'vitest'
import { scoreNames } from '#core/scores'
import { booksOut } from '#core/units'
import { loadTables } from '#io'
import { createDeriver } from '#plan'
import { bookedFor, type Asked } from '../../src/app/stores/asked'
import { readingAt } from '../../src/app/stores/reading'
import { questions } from '../../src/app/stores/sheet'
import { demoPlan } from './demo-plan'

const tables = loadTables()
const derived = createDeriver(tables).derive(demoPlan())
if (!derived.ok) throw new Error('the demo does not derive')
const findings = derived.value
const zoneId = findings.zoning.zones[1]?.id

describe('a figure that is asked', () => {
  const rows: Asked['about'][] = [...scoreNames, 'water', 'hours', 'cover']
  it.each(rows)('%s of a zone opens a book that books out, with the zone’s letter', (about) => {
    const booked = bookedFor({ zoneId, about }, findings, tables.scores)
    expect(booked?.letter).toBe('B')
    expect(booked && booksOut(booked.account)).toBe(true)
  })

  it.each(['water', 'hours'] as const)('%s of the whole plot books out', (about) => {
    const booked = bookedFor({ zoneId: undefined, about }, findings, tables.scores)
    expect(booked && booksOut(booked.account)).toBe(true)
  })

  it('has no book for a zone that is gone', () => {
    expect(bookedFor({ zoneId: 'gone', about: 'wetness' }, findings, tables.scores)).toBeUndefined()
  })
})

describe('the rod', () => {
  it.each(questions.map(({ id }) => id))('reads zone, place, slope and height for %s', (question) => {
    const { words, tag } = readingAt(findings, 12, { question, month: 5 })
    expect(words).toMatch(/^Zone [A-Z], .+ 12\.0 m from the top edge, \d+°, \d+\.\d m above the foot/)
    expect(tag.startsWith('12.0 m: ')).toBe(true)
  })
})
