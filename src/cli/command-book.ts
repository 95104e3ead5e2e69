import { methodOfBook, pointSdsM, reduceLevelBook, stationsOf, type Book } from '#core/booking'
import { loadTables } from '#io'
import type { Arguments } from './arguments'
import { bookFromFile } from './book-from-file'
import { levelBookText, stationsText, type BookError } from './book-text'
import { complainOf, writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'

/** Reduces a field book and proves its sums. */
export function book(given: Arguments, console: Console): number {
  const [file] = given.words
  if (file === undefined) throw new UsageError('book needs a CSV file.')
  const read = bookFromFile(file, given, console)
  if (!read.ok) return complainOf(read.problems, console)
  const { survey } = loadTables()
  const written = read.value.book
  const method = methodOfBook(written, survey)
  const error = { method, sdsM: pointSdsM(written, method) }
  const done =
    written.kind === 'level-book' ? levels(written, error, survey) : stations(written, error, survey)
  if (!done.ok) return complainOf(done.problems, console)
  writeText(given.text('out'), given.flag('json') ? done.json : done.text, console)
  return exitCodes.done
}

type Survey = ReturnType<typeof loadTables>['survey']

function levels(written: Extract<Book, { kind: 'level-book' }>, error: BookError, survey: Survey) {
  const reduced = reduceLevelBook(written, survey)
  if (!reduced.ok) return reduced
  const json = jsonOf({ book: written, reduced: reduced.value, ...errorOf(error) })
  return { ok: true, json, text: levelBookText(written, reduced.value, error) } as const
}

function stations(written: Book, error: BookError, survey: Survey) {
  const found = stationsOf(written, survey)
  if (!found.ok) return found
  const json = jsonOf({ book: written, stations: found.value, ...errorOf(error) })
  return { ok: true, json, text: stationsText(written, found.value, error) } as const
}

const errorOf = ({ sdsM, method }: BookError) => ({ levelSdM: sdsM, methodId: method.id })

/** Decimals of a metre in the file: a thousandth of a millimetre. */
const DECIMALS = 6

function jsonOf(value: object): string {
  const rounded = (_: string, one: unknown) =>
    typeof one === 'number' ? Number(one.toFixed(DECIMALS)) + 0 : one
  return `${JSON.stringify({ format: 'lynchet-book', version: 1, ...value }, rounded, 2)}\n`
}
