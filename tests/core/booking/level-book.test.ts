import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bookSchema, reduceLevelBook, type LevelBook, type ReducedLevelBook } from '#core/booking'
import { levelBook, levelling, tables, type PrintedRow } from './books'

const { booklet, busse2011, fgccThirdOrder } = levelling
const ways = ['rise-and-fall', 'height-of-collimation'] as const

/** Printed to the millimetre; ours must agree to its last figure and beyond. */
const EXACT = 9

function reduced(book: LevelBook): ReducedLevelBook {
  const outcome = reduceLevelBook(book, tables)
  if (!outcome.ok) throw new Error(outcome.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'))
  return outcome.value
}

const exactly = (found: number | undefined, printed: number | undefined) => {
  if (printed === undefined) expect(found).toBeUndefined()
  else expect(found).toBeCloseTo(printed, EXACT)
}

describe.each(ways)('by %s', (reduction) => {
  const start = { reduction, startLevelM: booklet.startM, endLevelM: booklet.endM }

  it('levelling booklet, example of 7 points: every rise, fall, height of collimation, level and sum', () => {
    const found = reduced(levelBook(booklet.rows, start))
    booklet.rows.forEach((printed, at) => {
      const line = found.lines[at]
      expect(line?.mark).toBe(printed.mark)
      exactly(line?.riseM, printed.riseM)
      exactly(line?.fallM, printed.fallM)
      exactly(line?.collimationM, printed.collimationM)
      exactly(line?.levelM, printed.levelM)
    })
    exactly(found.sums.backM, booklet.sums.backM)
    exactly(found.sums.foreM, booklet.sums.foreM)
    exactly(found.sums.riseM, booklet.sums.riseM)
    exactly(found.sums.fallM, booklet.sums.fallM)
    expect(found.checks.length).toBe(reduction === 'rise-and-fall' ? 2 : 3)
    expect(found.checks.filter(({ ok }) => !ok)).toEqual([])
    for (const { expected, found: other } of found.checks.slice(0, 2)) {
      exactly(expected, booklet.sums.differenceM)
      exactly(other, booklet.sums.differenceM)
    }
  })

  it('levelling booklet, misclosure -0.009 m over 3 set-ups: equal shares, corrected levels', () => {
    const found = reduced(levelBook(booklet.rows, { ...start, adjust: true }))
    expect(found.setUps).toBe(booklet.setUps)
    exactly(found.closing?.misclosureM, booklet.misclosureM)
    exactly(found.closing?.perSetUpM, booklet.perSetUpM)
    booklet.rows.forEach((printed, at) => exactly(found.lines[at]?.adjustedM, printed.adjustedM))
  })

  it('Busse 2011, slides on levelling: rises, falls and sums of a line with two change points', () => {
    const found = reduced(levelBook(busse2011.rows, { reduction }))
    busse2011.rows.slice(1).forEach((printed, at) => {
      exactly(found.lines[at + 1]?.riseM, printed.riseM)
      exactly(found.lines[at + 1]?.fallM, printed.fallM)
    })
    exactly(found.sums.backM, busse2011.sums.backM)
    exactly(found.sums.foreM, busse2011.sums.foreM)
    exactly((found.lines.at(-1)?.levelM ?? 0) - 100, busse2011.sums.differenceM)
    expect(found.closing).toBeUndefined()
  })
})

describe('allowable misclosure', () => {
  const closed = (more: Partial<LevelBook>) =>
    reduced(levelBook(booklet.rows, { startLevelM: booklet.startM, endLevelM: booklet.endM, ...more }))
      .closing

  it('levelling booklet, 5 mm for the root of the set-ups: 9 mm just fails 8.66 mm', () => {
    const limit = closed({ allowable: 'set-ups-5' })?.limit
    expect((limit?.limitM ?? 0) * 1000).toBeCloseTo(booklet.setUpRuleMm, 2)
    expect(limit?.within).toBe(false)
  })

  it('FGCC 1984, third order: 12 mm for the root of 10 km is 37.9 mm', () => {
    const limit = closed({ allowable: 'third-order-12', lineKm: fgccThirdOrder.lineKm })?.limit
    expect((limit?.limitM ?? 0) * 1000).toBeCloseTo(fgccThirdOrder.limitMm, 1)
    expect(limit?.within).toBe(true)
  })

  it('a misclosure of exactly what is allowed is within it (by hand: 10 mm, 4 set-ups, 5 mm each root)', () => {
    const turns = Array.from({ length: 3 }, () => ({ backM: 1.3, foreM: 1.1 }))
    const rows = [{ backM: 1.3 }, ...turns, { foreM: 1.11 }]
    const book = levelBook(rows, { startLevelM: 7, endLevelM: 7.8, allowable: 'set-ups-5' })
    const { closing } = reduced(book)
    expect(closing?.misclosureM).toBeCloseTo(-0.01, 12)
    expect(closing?.limit?.within).toBe(true)
  })
})

it('an inverted staff is negative: a soffit 2.1 m above the line of sight (by hand)', () => {
  const found = reduced(levelBook([{ backM: 1.5 }, { interM: -2.1 }, { foreM: 1.2 }]))
  expect(found.lines[1]?.levelM).toBeCloseTo(103.6, EXACT)
  expect(found.lines[2]?.levelM).toBeCloseTo(100.3, EXACT)
})

it('levels worked out by hand are held against ours: the 1.497 of one copy of the levelling booklet is caught', () => {
  const rows = booklet.rows.map((row) => (row.mark === 'C' ? { ...row, foreM: 1.497 } : row))
  const book = levelBook(rows, { startLevelM: booklet.startM })
  const withHand: LevelBook = {
    ...book,
    rows: book.rows.map((row, at) => {
      const handLevelM = booklet.rows[at]?.levelM
      return handLevelM === undefined ? row : { ...row, handLevelM }
    }),
  }
  const wrong = reduced(withHand).checks.filter(({ ok }) => !ok)
  expect(wrong.map(({ what }) => what)).toEqual([
    'level worked out by hand, line 4',
    'level worked out by hand, line 5',
    'level worked out by hand, line 6',
    'level worked out by hand, line 7',
  ])
})

describe('what keeps a book from being reduced, by its line', () => {
  const good: PrintedRow[] = [{ backM: 1 }, { interM: 2 }, { foreM: 1.5, backM: 1.2 }, { foreM: 0.4 }]
  const put = (at: number, row: PrintedRow) => good.map((one, index) => (index === at ? row : one))
  it.each<[string, PrintedRow[], string, RegExp]>([
    ['first line without back sight', put(0, { interM: 1 }), 'line 1 of the book', /no back sight/],
    [
      'first line with a fore sight',
      put(0, { backM: 1, foreM: 2 }),
      'line 1 of the book',
      /fore sight beside/,
    ],
    ['intermediate beside back', put(1, { interM: 1, backM: 1 }), 'line 2 of the book', /beside another/],
    ['intermediate beside fore', put(1, { interM: 1, foreM: 1 }), 'line 2 of the book', /beside another/],
    ['no sight', put(1, {}), 'line 2 of the book', /no sight/],
    ['change point without fore sight', put(2, { backM: 1 }), 'line 3 of the book', /no fore sight/],
    ['change point without back sight', put(2, { foreM: 1 }), 'line 3 of the book', /no back sight/],
    ['reading in centimetres', put(1, { interM: 152 }), 'line 2 of the book', /152 m cannot be read/],
    ['last sight intermediate', put(3, { interM: 1 }), 'line 4 of the book', /intermediate/],
    [
      'last line with back sight',
      put(3, { foreM: 1, backM: 1 }),
      'line 4 of the book',
      /ends with a back sight/,
    ],
    ['one line', [{ backM: 1 }], 'line 1 of the book', /One line/],
  ])('%s', (_, rows, where, what) => {
    const outcome = reduceLevelBook(levelBook(rows), tables)
    expect(outcome.ok ? [] : outcome.problems.map((one) => one.where)).toEqual([where])
    expect(outcome.ok ? '' : outcome.problems[0]?.what).toMatch(what)
  })

  it.each<[string, Partial<LevelBook>, string]>([
    ['sharing out without a closing level', { adjust: true }, 'closing level of the book'],
    ['a rule that is not in the table', { allowable: 'nonsuch' }, 'allowable of the book'],
    ['a rule by kilometres without a length', { allowable: 'site-10' }, 'length of the levelled line'],
  ])('%s', (_, more, where) => {
    const outcome = reduceLevelBook(levelBook(good, more), tables)
    expect(outcome.ok ? [] : outcome.problems.map((one) => one.where)).toEqual([where])
  })

  it('tells all at once', () => {
    const outcome = reduceLevelBook(levelBook([{ interM: 9 }, {}, { backM: 1 }], { adjust: true }), tables)
    expect(outcome.ok ? 0 : outcome.problems.length).toBe(5)
  })
})

const sight = fc.integer({ min: -4999, max: 4999 }).map((mm) => mm / 1000)
const between = fc.oneof(fc.record({ interM: sight }), fc.record({ backM: sight, foreM: sight }))
const books = fc
  .record({
    first: sight,
    middle: fc.array(between, { maxLength: 40 }),
    last: sight,
    startLevelM: fc.integer({ min: -100_000, max: 3_000_000 }).map((mm) => mm / 1000),
    endLevelM: fc.integer({ min: -100_000, max: 3_000_000 }).map((mm) => mm / 1000),
  })
  .map(({ first, middle, last, startLevelM, endLevelM }) =>
    levelBook([{ backM: first }, ...middle, { foreM: last }], { startLevelM, endLevelM, adjust: true }),
  )

describe('of any book', () => {
  it('both ways of reducing give the same levels, and every sum agrees', () => {
    fc.assert(
      fc.property(books, (book) => {
        const [one, other] = ways.map((reduction) => reduced({ ...book, reduction }))
        one?.lines.forEach(({ levelM }, at) => expect(other?.lines[at]?.levelM).toBeCloseTo(levelM, 8))
        expect([...(one?.checks ?? []), ...(other?.checks ?? [])].every(({ ok }) => ok)).toBe(true)
        expect(bookSchema.safeParse(book).success).toBe(true)
      }),
    )
  })

  it('an adjusted book closes on its known level, and shifts no point by more than the misclosure', () => {
    fc.assert(
      fc.property(books, (book) => {
        const { lines, closing } = reduced(book)
        expect(lines.at(-1)?.adjustedM).toBeCloseTo(book.endLevelM ?? NaN, 8)
        expect(lines[0]?.adjustedM).toBe(book.startLevelM)
        const most = Math.abs(closing?.misclosureM ?? 0) + 1e-9
        expect(lines.every(({ levelM, adjustedM }) => Math.abs(adjustedM - levelM) <= most)).toBe(true)
      }),
    )
  })

  it('a higher start lifts every level by as much', () => {
    fc.assert(
      fc.property(books, (book) => {
        const low = reduced({ ...book, adjust: false })
        const high = reduced({ ...book, startLevelM: book.startLevelM + 12.5, adjust: false })
        low.lines.forEach(({ levelM }, at) => expect(high.lines[at]?.levelM).toBeCloseTo(levelM + 12.5, 8))
      }),
    )
  })
})
