import {
  FOOT_M,
  lengthToText,
  US_SURVEY_FOOT_M,
  type Book,
  type LevelBook,
  type WrittenUnit,
} from '#core/booking'
import { csvText, rounded, type CsvCell } from './csv-text'
import { placeUnitOf } from './field-book-units'

/** Smallest part of an inch written to a file, so that nothing of a tape's sixteenths is lost. */
const INCH_PARTS = 64
/** Decimals written to a file: a thousandth of a millimetre and finer. */
const DECIMALS = 6
const unitM = { m: 1, cm: 0.01, ft: FOOT_M, 'us-ft': US_SURVEY_FOOT_M } as const

/**
 * A field book as a CSV file that can be read again.
 *
 * @param book - the book as written
 * @returns the file's text, in the unit of the book
 */
export function fieldBookCsv(book: Book): string {
  const reading = (valueM: number | undefined) => cell(valueM, book.unit)
  const place = (valueM: number | undefined) => cell(valueM, placeUnitOf(book.unit))
  const [read, far] = [`(${book.unit})`, `(${placeUnitOf(book.unit)})`]
  if (book.kind === 'level-book') return levelCsv(book, { reading, place, read, far })
  if (book.kind === 'chain')
    return csvText(
      ['Mark', `Length ${read}`, 'Angle (°)', 'Remark'],
      book.legs.map((leg) => [leg.mark, reading(leg.lengthM), rounded(leg.angleDeg, DECIMALS), leg.remark]),
    )
  if (book.kind === 'steps')
    return csvText(
      ['Mark', `Drop ${read}`, 'Remark'],
      book.steps.map((step) => [step.mark, reading(step.dropM), step.remark]),
    )
  return csvText(
    ['Mark', `Run ${read}`, `Drop ${read}`, 'Remark'],
    book.drops.map((drop) => [drop.mark, reading(drop.runM), reading(drop.dropM), drop.remark]),
  )
}

interface Writing {
  readonly reading: (valueM: number | undefined) => CsvCell
  readonly place: (valueM: number | undefined) => CsvCell
  readonly read: string
  readonly far: string
}

function levelCsv(book: LevelBook, { reading, place, read, far }: Writing): string {
  const heads = ['Back sight', 'Intermediate sight', 'Fore sight'].map((head) => `${head} ${read}`)
  const places = ['Distance', 'East', 'North', 'Level by hand'].map((head) => `${head} ${far}`)
  return csvText(
    ['Mark', ...heads, ...places, 'Remark'],
    book.rows.map((row) => [
      row.mark,
      reading(row.backM),
      reading(row.interM),
      reading(row.foreM),
      place(row.distanceM),
      place(row.eastM),
      place(row.northM),
      place(row.handLevelM),
      row.remark,
    ]),
  )
}

function cell(valueM: number | undefined, unit: WrittenUnit): CsvCell {
  if (valueM === undefined) return undefined
  return unit === 'ft-in' ? lengthToText(valueM, unit, INCH_PARTS) : rounded(valueM / unitM[unit], DECIMALS)
}
