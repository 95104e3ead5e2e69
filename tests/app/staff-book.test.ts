import { readFileSync } from 'node:fs'
import { reduceLevelBook, type LevelBook } from '#core/booking'
import { describe, expect, it } from 'vitest'
import { setBookCell } from '../../src/app/edits/book-cell'
import { keptBook, levelsOfBook, profileOfBook } from '../../src/app/edits/book-ground'
import { emptyBook, takeBack, withLeg } from '../../src/app/edits/field-books'
import { bookedWords, nextDistanceM, tellLeg, tellSight } from '../../src/app/edits/running-words'
import {
  bookSight,
  endsWithFore,
  expectedSight,
  runningBook,
  takeSightBack,
  type Sight,
} from '../../src/app/edits/staff-book'
import { loadTables } from '#io'

const tables = loadTables().survey

function emptyOf(id: string) {
  const method = tables.methods.find((one) => one.id === id)
  const book = method && emptyBook(method, '2026-06-01')
  if (!book) throw new Error(`no book for ${id}`)
  return book
}

function staffBook(): LevelBook {
  const book = emptyOf('level-and-staff')
  if (book.kind !== 'level-book') throw new Error('not a level book')
  return book
}

function booked(sights: readonly Sight[], from = staffBook()): LevelBook {
  return sights.reduce((book, sight) => {
    const next = bookSight(book, sight)
    if (!next.ok) throw new Error(next.problems[0]?.what)
    return next.value
  }, from)
}

interface BookletRow {
  readonly mark: string
  readonly backM?: number
  readonly interM?: number
  readonly foreM?: number
  readonly levelM: number
  readonly adjustedM: number
}
const { booklet } = JSON.parse(readFileSync('tests/truth/booking-levelling.json', 'utf8')) as {
  booklet: { startM: number; endM: number; misclosureM: number; rows: readonly BookletRow[] }
}
/** The booklet’s readings in the order they were taken: the fore sight to a change point before the back sight on it. */
const bookletSights = booklet.rows.flatMap(({ mark, backM, interM, foreM }): Sight[] => [
  ...(interM === undefined ? [] : [{ kind: 'inter' as const, readingM: interM, mark }]),
  ...(foreM === undefined ? [] : [{ kind: 'fore' as const, readingM: foreM, mark }]),
  ...(backM === undefined ? [] : [{ kind: 'back' as const, readingM: backM, mark }]),
])

describe('a level booked reading by reading', () => {
  it('levelling booklet, example of 7 points: the same lines and levels as its book', () => {
    const book = booked(bookletSights, { ...staffBook(), startLevelM: booklet.startM })
    expect(book.rows).toEqual(
      booklet.rows.map(({ mark, backM, interM, foreM }) => ({ mark, backM, interM, foreM })),
    )
    const reduced = runningBook(book, tables)
    if (!reduced.ok) throw new Error('not reduced')
    for (const [at, { levelM }] of booklet.rows.entries())
      expect(reduced.value.lines[at]?.levelM).toBeCloseTo(levelM, 9)
  })

  it('levelling booklet, misclosure -0.009 m over 3 set-ups: shared out as the booklet does', () => {
    const book = booked(bookletSights, { ...staffBook(), startLevelM: booklet.startM })
    const closed = { ...book, endLevelM: booklet.endM, allowable: 'garden-20', adjust: true }
    const reduced = runningBook(closed, tables)
    if (!reduced.ok) throw new Error('not reduced')
    expect(reduced.value.closing?.misclosureM).toBeCloseTo(booklet.misclosureM, 9)
    for (const [at, { adjustedM }] of booklet.rows.entries())
      expect(reduced.value.lines[at]?.adjustedM).toBeCloseTo(adjustedM, 9)
  })

  it('levelling booklet: each reading taken back leaves the book as it was before it', () => {
    let book = booked(bookletSights)
    for (let count = bookletSights.length; count > 0; count--) {
      book = takeSightBack(book)
      expect(book).toEqual(booked(bookletSights.slice(0, count - 1)))
    }
  })

  it('common practice, no source: a back sight comes first, and again after every fore sight', () => {
    const expected = bookletSights.map((_, at) => expectedSight(booked(bookletSights.slice(0, at))))
    for (const [at, { kind }] of bookletSights.entries())
      expect(expected[at]).toBe(kind === 'fore' ? 'inter' : kind)
  })

  it.each([
    [[], { kind: 'inter', readingM: 1 }, 'reading 1'],
    [bookletSights.slice(0, 4), { kind: 'inter', readingM: 1 }, 'reading 5'],
    [bookletSights.slice(0, 2), { kind: 'back', readingM: 1 }, 'reading 3'],
  ] as const)('%# refuses a sight that cannot stand there, and says which', (before, sight, where) => {
    const next = bookSight(booked(before), sight)
    expect(next.ok ? '' : next.problems[0]?.where).toBe(where)
    expect(tellSight(booked(before), sight).wrong).not.toBe('')
  })

  it('levelling booklet: the running level is told before a reading is booked', () => {
    const book = booked(bookletSights.slice(0, 1), { ...staffBook(), startLevelM: booklet.startM })
    expect(tellSight(book, { kind: 'inter', readingM: 2.507 })).toEqual({
      words: 'level 49.556 m, 0.316 m below the last',
      wrong: '',
    })
    expect(tellSight(book, { kind: 'inter', readingM: 152 }).wrong).toContain('another unit')
    expect(bookedWords(book)).toBe('1 booked; level 49.872 m')
  })

  it('an unfinished book gives the levels of a finished one, and is held against nothing yet', () => {
    const book = { ...booked(bookletSights.slice(0, 6)), endLevelM: 1, adjust: true }
    expect(endsWithFore(book)).toBe(false)
    const reduced = runningBook(book, tables)
    expect(reduced.ok && reduced.value.closing).toBeUndefined()
    const kept = keptBook(book)
    expect(kept.ok && kept.value.kind === 'level-book' && kept.value.rows.at(-1)?.foreM).toBe(2.513)
  })
})

/** A loop of two set-ups that comes home 6 mm high; by hand. */
const loop: readonly Sight[] = [
  { kind: 'back', readingM: 1, distanceM: 0 },
  { kind: 'inter', readingM: 2, distanceM: 5 },
  { kind: 'fore', readingM: 3, distanceM: 10 },
  { kind: 'back', readingM: 3.206 },
  { kind: 'fore', readingM: 1.2 },
]

describe('ground from a book', () => {
  it('by hand: a loop that comes home 6 mm high is shared out by 3 mm a set-up', () => {
    const book = { ...booked(loop), endLevelM: 100, adjust: true }
    const made = profileOfBook(book, tables)
    expect(made.ok && made.value.stations).toEqual([
      { distanceM: 0, levelM: 100 },
      { distanceM: 5, levelM: 98.997 },
      { distanceM: 10, levelM: 97.997 },
    ])
  })

  it('by hand: lines with a place become spot levels with their marks', () => {
    const places = [
      { eastM: 0, northM: 0, mark: 'A' },
      { eastM: 6, northM: 0, mark: 'B' },
      { eastM: 0, northM: 8 },
    ]
    const book = booked(
      [1.5, 1.75, 3.1].map((readingM, at) => ({
        kind: at === 0 ? 'back' : 'inter',
        readingM,
        ...places[at],
      })),
    )
    const made = levelsOfBook(book, tables)
    expect(made.ok && made.value.ground.points).toEqual([
      { mark: 'A', eastM: 0, northM: 0, levelM: 100 },
      { mark: 'B', eastM: 6, northM: 0, levelM: 99.75 },
      { eastM: 0, northM: 8, levelM: 98.4 },
    ])
    expect(levelsOfBook(booked(loop), tables).ok).toBe(false)
  })

  it('common practice, no source: the next point lies as far on as the last did', () => {
    expect(nextDistanceM(staffBook())).toBe(0)
    expect(nextDistanceM(booked(loop.slice(0, 1)))).toBe(2)
    expect(nextDistanceM(booked(loop.slice(0, 2)))).toBe(10)
  })

  it('trigonometry: a leg of 10 m falling 30° drops 5 m over 8.660 m', () => {
    const book = emptyOf('tape-clinometer')
    if (book.kind === 'level-book') throw new Error('not a chain')
    const line = { lengthM: 10, angleDeg: -30 }
    expect(tellLeg(book, line).words).toBe('level 95.000 m, 5.000 m below the last, 8.660 m out')
    const made = profileOfBook(withLeg(book, line), tables)
    expect(made.ok && made.value.stations).toEqual([
      { distanceM: 0, levelM: 100 },
      { distanceM: 8.66, levelM: 95 },
    ])
    expect(tellLeg(book, { lengthM: 0, angleDeg: 1 }).wrong).not.toBe('')
    expect(tellLeg(book, { lengthM: 1, angleDeg: 85 }).wrong).toContain('wall')
    expect(takeBack(withLeg(book, line))).toEqual(book)
  })

  it('by hand: three A-frame steps walked uphill are turned to begin at the top', () => {
    let book = emptyOf('a-frame')
    for (const dropM of [-0.5, -0.4, -0.3]) if (book.kind !== 'level-book') book = withLeg(book, { dropM })
    const made = profileOfBook(book, tables)
    expect(made.ok && made.value).toEqual({
      turned: true,
      stations: [
        { distanceM: 0, levelM: 101.2 },
        { distanceM: 2, levelM: 100.9 },
        { distanceM: 4, levelM: 100.5 },
        { distanceM: 6, levelM: 100 },
      ],
    })
  })
})

describe('a cell of a book', () => {
  const book = booked(loop)
  it('by hand: feet and inches in a book of metres count as what they say', () => {
    const next = setBookCell(book, 1, { key: 'interM', text: '6\' 6"' })
    expect(next.ok && next.value.kind === 'level-book' && next.value.rows[1]?.interM).toBeCloseTo(1.9812, 9)
  })

  it('is left out when it is emptied, and named when it cannot be read', () => {
    const emptied = setBookCell(book, 1, { key: 'distanceM', text: '' })
    expect(
      emptied.ok && emptied.value.kind === 'level-book' && 'distanceM' in (emptied.value.rows[1] ?? {}),
    ).toBe(false)
    const wrong = setBookCell(book, 1, { key: 'interM', text: 'two' })
    expect(wrong.ok ? '' : wrong.problems[0]?.where).toBe('line 2 of the book, sight between')
  })

  it('a fault names its line of the book', () => {
    const rows = book.rows.map((row, at) => (at === 1 ? { ...row, interM: undefined } : row))
    const reduced = reduceLevelBook({ ...book, rows }, tables)
    expect(reduced.ok ? '' : reduced.problems[0]?.where).toBe('line 2 of the book')
  })
})
