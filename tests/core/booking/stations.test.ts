import { describe, expect, it } from 'vitest'
import {
  fromTheTop,
  markedLevelsOf,
  reduceLevelBook,
  stationsOf,
  type Book,
  type BookStation,
  type LevelBook,
} from '#core/booking'
import { levelBook, tables } from './books'

const head = { id: 'book', name: 'Book', unit: 'm', startLevelM: 20 } as const

function stations(book: Book): readonly BookStation[] {
  const outcome = stationsOf(book, tables)
  if (!outcome.ok) throw new Error(outcome.problems[0]?.what)
  return outcome.value
}

describe('points along a line', () => {
  it('trigonometry: a leg of 10 m falling 30° drops 5 m over 5 √3 m, one rising 45° as much as it runs', () => {
    const found = stations({
      kind: 'chain',
      ...head,
      legs: [
        { mark: 'crest', lengthM: 10, angleDeg: -30 },
        { lengthM: 2, angleDeg: 45 },
      ],
    })
    expect(found.map(({ mark }) => mark)).toEqual([undefined, 'crest', undefined])
    expect(found[1]?.distanceM).toBeCloseTo(5 * Math.sqrt(3), 12)
    expect(found[1]?.levelM).toBeCloseTo(15, 12)
    expect(found[2]?.distanceM).toBeCloseTo(5 * Math.sqrt(3) + Math.SQRT2, 12)
    expect(found[2]?.levelM).toBeCloseTo(15 + Math.SQRT2, 12)
  })

  it('A-frame, by hand: three steps of 2 m that drop 0.5 m each fall 1 in 4', () => {
    const steps = Array.from({ length: 3 }, () => ({ dropM: 0.5 }))
    const found = stations({ kind: 'steps', ...head, tool: 'a-frame', spanM: 2, steps })
    expect(found.map(({ distanceM, levelM }) => [distanceM, levelM])).toEqual([
      [0, 20],
      [2, 19.5],
      [4, 19],
      [6, 18.5],
    ])
  })

  it('string, by hand: runs add up level, drops add up downward', () => {
    const drops = [
      { runM: 1.5, dropM: 0.4 },
      { runM: 0.5, dropM: -0.1 },
    ]
    const found = stations({ kind: 'string', ...head, drops })
    expect(found.at(-1)?.distanceM).toBeCloseTo(2, 12)
    expect(found.at(-1)?.levelM).toBeCloseTo(19.7, 12)
  })

  it('a profile is counted from the top, so a line walked uphill is turned round', () => {
    const legs = [{ mark: 'gate', lengthM: 10, angleDeg: 30 }]
    const { stations: turned, turned: isTurned } = fromTheTop(stations({ kind: 'chain', ...head, legs }))
    expect(isTurned).toBe(true)
    expect(turned.map(({ mark, distanceM }) => [mark, distanceM])).toEqual([
      ['gate', 0],
      [undefined, 10 * Math.cos(Math.PI / 6)],
    ])
    const down = stations({ kind: 'chain', ...head, legs: [{ lengthM: 10, angleDeg: -30 }] })
    expect(fromTheTop(down)).toEqual({ stations: down, turned: false })
  })
})

describe('a level book on the ground', () => {
  const placed = (rows: LevelBook['rows'], more: Partial<LevelBook> = {}): LevelBook => ({
    ...levelBook([]),
    ...more,
    rows,
  })

  it('gives the lines with a distance, nearest first, with adjusted levels', () => {
    const rows = [
      { backM: 1, distanceM: 0 },
      { interM: 2, distanceM: 8 },
      { interM: 1.5, distanceM: 4 },
      { foreM: 1.02 },
    ]
    const found = stations(placed(rows, { startLevelM: 50, endLevelM: 50, adjust: true }))
    expect(found.map(({ line }) => line)).toEqual([1, 3, 2])
    // The one set-up takes the whole misclosure of -0.02 m.
    expect(found[2]?.levelM).toBeCloseTo(49.02, 12)
  })

  it('says when there are no distances, or two levels at one', () => {
    const none = stationsOf(placed([{ backM: 1 }, { foreM: 2 }]), tables)
    expect(none.ok ? '' : none.problems[0]?.what).toBe('No line has a distance.')
    const one = stationsOf(placed([{ backM: 1, distanceM: 1 }, { foreM: 2 }]), tables)
    expect(one.ok ? '' : one.problems[0]?.what).toBe('Only one line has a distance.')
    const step = stationsOf(
      placed([
        { backM: 1, distanceM: 3 },
        { foreM: 2, distanceM: 3 },
      ]),
      tables,
    )
    expect(step.ok ? '' : step.problems[0]?.where).toBe('lines 1 and 2 of the book')
    const bad = stationsOf(placed([{ interM: 1 }, { foreM: 2 }]), tables)
    expect(bad.ok).toBe(false)
  })

  it('makes spot levels of lines with a place, keeps the first of two, and names lines without one', () => {
    const rows = [
      { mark: 'BM', backM: 1, eastM: 0, northM: 0 },
      { mark: 'A', interM: 2, eastM: 5, northM: 0 },
      { mark: 'pipe', interM: 2.5 },
      { mark: 'BM', foreM: 1.004, eastM: 0, northM: 0 },
    ]
    const book = reduceLevelBook(placed(rows, { startLevelM: 50 }), tables)
    const found = book.ok ? markedLevelsOf(book.value) : undefined
    expect(found?.levels.map(({ mark, levelM }) => [mark, levelM])).toEqual([
      ['BM', 50],
      ['A', 49],
    ])
    expect(found?.withoutPlace).toEqual([3])
    expect(found?.again).toEqual([{ line: 4, first: 1, apartM: expect.closeTo(-0.004, 9) as number }])
  })
})
