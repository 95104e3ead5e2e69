import { lengthFromText, type Book, type WrittenUnit } from '#core/booking'
import type { Outcome } from '#core/units'
import { refused } from './refused'

/** Columns of the field books that are written by hand. */
export type BookCell =
  | 'mark'
  | 'remark'
  | 'backM'
  | 'interM'
  | 'foreM'
  | 'distanceM'
  | 'eastM'
  | 'northM'
  | 'lengthM'
  | 'angleDeg'
  | 'runM'
  | 'dropM'

const names: Readonly<Record<BookCell, string>> = {
  mark: 'mark',
  remark: 'remark',
  backM: 'back sight',
  interM: 'sight between',
  foreM: 'fore sight',
  distanceM: 'distance',
  eastM: 'east',
  northM: 'north',
  lengthM: 'length',
  angleDeg: 'angle',
  runM: 'run',
  dropM: 'drop',
}

/** Distances beside readings in centimetres or in feet and inches are written in whole metres or plain feet. */
export function placeUnit(unit: WrittenUnit): Exclude<WrittenUnit, 'cm' | 'ft-in'> {
  if (unit === 'cm') return 'm'
  return unit === 'ft-in' ? 'ft' : unit
}

const farUnit = new Set<BookCell>(['distanceM', 'eastM', 'northM'])
const needed = new Set<BookCell>(['lengthM', 'angleDeg', 'runM', 'dropM'])

/**
 * The book with one cell written anew.
 *
 * @param book - the book
 * @param at - row, from 0
 * @param cell - which column, and what was written into it, in the unit of the book
 * @returns the book, or what cannot be read
 */
export function setBookCell(
  book: Book,
  at: number,
  { key, text }: { readonly key: BookCell; readonly text: string },
): Outcome<Book> {
  const value = text.trim() === '' ? undefined : read(book.unit, key, text.trim())
  if ((value === undefined && text.trim() !== '') || (value === undefined && needed.has(key)))
    return refused(
      `line ${at + 1} of the book, ${names[key]}`,
      text.trim() === '' ? 'A figure is needed here.' : `“${text.trim()}” cannot be read.`,
      'Write a figure in the unit of the book, such as 1.250; a unit beside the figure counts before it.',
    )
  return { ok: true, value: changed(book, at, { [key]: value }) }
}

function read(unit: WrittenUnit, key: BookCell, text: string): number | string | undefined {
  if (key === 'mark' || key === 'remark') return text
  if (key === 'angleDeg') {
    const angle = Number(
      text
        .replace(',', '.')
        .replace(/^\u2212/, '-')
        .replace(/°$/, ''),
    )
    return Number.isFinite(angle) ? angle : undefined
  }
  return lengthFromText(text, farUnit.has(key) ? placeUnit(unit) : unit)
}

function changed(book: Book, at: number, change: Record<string, unknown>): Book {
  const put = <Row extends object>(rows: readonly Row[]): Row[] =>
    rows.map((row, index) => (index === at ? written(row, change) : row))
  if (book.kind === 'level-book') return { ...book, rows: put(book.rows) }
  if (book.kind === 'chain') return { ...book, legs: put(book.legs) }
  if (book.kind === 'steps') return { ...book, steps: put(book.steps) }
  return { ...book, drops: put(book.drops) }
}

/** An emptied cell is no cell. */
function written<Row extends object>(row: Row, change: Record<string, unknown>): Row {
  const all = { ...row, ...change }
  for (const key of Object.keys(change)) if (change[key] === undefined) Reflect.deleteProperty(all, key)
  return all
}
