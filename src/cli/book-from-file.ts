import { lengthFromText, type Book, type WrittenUnit } from '#core/booking'
import type { Outcome } from '#core/units'
import { readFieldBook, type FieldBookHead, type FieldBookRead } from '#io'
import { readText, type Console } from './console'
import { UsageError } from './exit'
import type { Arguments } from './arguments'

/** Options that say what a table of readings does not. */
export const bookOptions: readonly string[] = [
  'kind',
  'start',
  'end',
  'km',
  'allowable',
  'reduction',
  'adjust',
  'unit',
  'span',
  'tool',
  'on',
]

const kinds: Readonly<Record<string, Book['kind']>> = {
  level: 'level-book',
  chain: 'chain',
  steps: 'steps',
  string: 'string',
}
const units: readonly WrittenUnit[] = ['m', 'cm', 'ft', 'ft-in', 'us-ft']
const reductions = ['rise-and-fall', 'height-of-collimation'] as const
const tools = ['a-frame', 'line-level'] as const

/** Reads a field book with what the command line says of it. */
export function bookFromFile(file: string, given: Arguments, console: Console): Outcome<FieldBookRead> {
  const unit = oneOf(given, 'unit', units)
  const kindName = oneOf(given, 'kind', Object.keys(kinds)) ?? 'level'
  const head = headOf(given, kinds[kindName] ?? 'level-book', unit)
  const read = readFieldBook(readText(file), head)
  if (read.ok) sayWhatWasTaken(read.value, given, console)
  return read
}

function headOf(given: Arguments, kind: Book['kind'], unit: WrittenUnit | undefined): FieldBookHead {
  const on = given.text('on')
  const head = {
    kind,
    id: 'book-1',
    name: given.text('name') ?? 'Field book',
    ...(on === undefined ? {} : { on }),
    ...(unit === undefined ? {} : { unit }),
    startLevelM: lengthOf(given, 'start', unit) ?? 0,
  }
  if (kind === 'level-book') return { ...head, level: levelOf(given, unit) }
  const strange = ['end', 'km', 'allowable', 'reduction', 'adjust'].find((name) =>
    given.options.includes(name),
  )
  if (strange !== undefined) throw new UsageError(`Only a level book takes --${strange}.`)
  return kind === 'steps' ? { ...head, steps: stepsOf(given, unit) } : head
}

function levelOf(given: Arguments, unit: WrittenUnit | undefined): NonNullable<FieldBookHead['level']> {
  const endLevelM = lengthOf(given, 'end', unit)
  const lineKm = given.number('km')
  const allowable = given.text('allowable')
  return {
    reduction: oneOf(given, 'reduction', reductions) ?? 'rise-and-fall',
    adjust: given.flag('adjust'),
    ...(endLevelM === undefined ? {} : { endLevelM }),
    ...(lineKm === undefined ? {} : { lineKm }),
    ...(allowable === undefined ? {} : { allowable }),
  }
}

function stepsOf(given: Arguments, unit: WrittenUnit | undefined): NonNullable<FieldBookHead['steps']> {
  const spanM = lengthOf(given, 'span', unit)
  if (spanM === undefined)
    throw new UsageError('Steps need --span: the level distance between the two feet or ends.')
  return { spanM, tool: oneOf(given, 'tool', tools) ?? 'a-frame' }
}

function oneOf<T extends string>(given: Arguments, name: string, known: readonly T[]): T | undefined {
  const asked = given.text(name)
  const found = known.find((one) => one === asked)
  if (asked !== undefined && found === undefined)
    throw new UsageError(`--${name} is one of ${known.join(', ')}, not “${asked}”.`)
  return found
}

/** Levels and spans count metres in a book of centimetres. */
function lengthOf(given: Arguments, name: string, unit: WrittenUnit | undefined): number | undefined {
  const text = given.text(name)
  if (text === undefined) return undefined
  const valueM = lengthFromText(text, unit === undefined || unit === 'cm' ? 'm' : unit)
  if (valueM === undefined) throw new UsageError(`--${name} needs a length, not “${text}”.`)
  return valueM
}

function sayWhatWasTaken(read: FieldBookRead, given: Arguments, console: Console): void {
  const { book, ignoredColumns, leftOut } = read
  if (ignoredColumns.length > 0) console.complain(`Not read: ${ignoredColumns.join(', ')}.`)
  if (leftOut.length > 0) console.complain(`Lines without a reading: ${leftOut.join(', ')}.`)
  if (given.text('start') === undefined) console.complain('No --start: the first mark is taken as level 0.')
  const lengths = ['start', 'end', 'span'].filter((name) => given.text(name) !== undefined)
  if (given.text('unit') === undefined && book.unit !== 'm' && book.unit !== 'cm' && lengths.length > 0)
    console.complain(
      `The headings say ${book.unit}; --${lengths.join(' and --')} count metres unless --unit says otherwise.`,
    )
}
