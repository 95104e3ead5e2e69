import { bookSchema, type Book, type LevelBook, type StepBook, type WrittenUnit } from '#core/booking'
import type { Outcome, Problem } from '#core/units'
import { cellsOfRow, withUnits, type RowCells, type UnitColumn } from './field-book-cells'
import { columnNames, type BookColumn } from './field-book-columns'
import { readBookTable } from './field-book-table'

/** What a file of readings does not say of its book. */
export interface FieldBookHead {
  readonly kind: Book['kind']
  readonly id: string
  readonly name: string
  /** Day of the measuring, ISO 8601. */
  readonly on?: string
  /** Unit of the readings; what the headings say when left out, else metres. */
  readonly unit?: WrittenUnit
  /** Level of the first mark [m]. */
  readonly startLevelM: number
  readonly level?: Partial<Pick<LevelBook, 'reduction' | 'endLevelM' | 'lineKm' | 'allowable' | 'adjust'>>
  readonly steps?: Pick<StepBook, 'tool' | 'spanM'>
}

/** A field book as read, and what was passed over. */
export interface FieldBookRead {
  readonly book: Book
  readonly ignoredColumns: readonly string[]
  /** Lines of the file that hold no reading. */
  readonly leftOut: readonly number[]
}

/**
 * Reads a field book from a CSV file or a pasted table with named columns, in any order and case.
 *
 * @param text - the table
 * @param head - kind, start level and what else the table does not say
 * @returns the book as written, or every problem with its line
 */
export function readFieldBook(text: string, head: FieldBookHead): Outcome<FieldBookRead> {
  const table = readBookTable(text, head.kind)
  if (!table.ok) return table
  const { columns, problems: unitProblems } = withUnits(table.value.columns, head.unit)
  const problems: Problem[] = [...unitProblems]
  const rows = table.value.rows.map((row) => cellsOfRow(row, columns, problems))
  const draft = drafts[head.kind](rows, { ...headOf(head, columns) }, head)
  if (problems.length > 0) return { ok: false, problems }
  const book = bookSchema.safeParse(draft)
  if (!book.success)
    return { ok: false, problems: book.error.issues.map(({ path, message }) => problemAt(path, message)) }
  const { ignoredColumns, leftOut } = table.value
  return { ok: true, value: { book: book.data, ignoredColumns, leftOut } }
}

/** Unit of the book: what its first column of readings is written in. */
function headOf(head: FieldBookHead, columns: readonly UnitColumn[]) {
  const reading = columns.find(({ holds }) => ['back', 'length', 'drop'].includes(holds))
  const inUnit = reading?.inUnit ?? head.unit ?? 'm'
  const unit = inUnit === 'mm' ? 'm' : inUnit === 'in' ? 'ft-in' : inUnit
  const { id, name, on, startLevelM } = head
  return { id, name, ...(on === undefined ? {} : { on }), unit, startLevelM }
}

type Head = ReturnType<typeof headOf>

const drafts: Readonly<
  Record<Book['kind'], (rows: readonly RowCells[], head: Head, asked: FieldBookHead) => unknown>
> = {
  'level-book': (rows, head, { level }) => ({
    kind: 'level-book',
    reduction: 'rise-and-fall',
    adjust: false,
    ...head,
    ...level,
    rows: rows.map(levelRow),
  }),
  chain: (rows, head) => ({ kind: 'chain', ...head, legs: rows.map(chainRow) }),
  steps: (rows, head, { steps }) => ({
    kind: 'steps',
    tool: 'a-frame',
    ...head,
    ...steps,
    steps: rows.map((row) => ({ dropM: needed(row, 'drop', row.lengthM('drop')), ...words(row) })),
  }),
  string: (rows, head) => ({
    kind: 'string',
    ...head,
    drops: rows.map((row) => ({
      runM: needed(row, 'run', row.lengthM('run')),
      dropM: needed(row, 'drop', row.lengthM('drop')),
      ...words(row),
    })),
  }),
}

function levelRow(row: RowCells) {
  return {
    ...some('backM', row.lengthM('back')),
    ...some('interM', row.lengthM('inter')),
    ...some('foreM', row.lengthM('fore')),
    ...some('handLevelM', row.lengthM('hand')),
    ...some('distanceM', row.lengthM('distance')),
    ...some('eastM', row.lengthM('east')),
    ...some('northM', row.lengthM('north')),
    ...words(row),
  }
}

function chainRow(row: RowCells) {
  return {
    lengthM: needed(row, 'length', row.lengthM('length')),
    angleDeg: needed(row, 'angle', row.angleDeg('angle')),
    ...words(row),
  }
}

function words(row: RowCells) {
  return { ...some('mark', row.word('mark')), ...some('remark', row.word('remark')) }
}

const some = <T>(key: string, value: T | undefined): Record<string, T> =>
  value === undefined ? {} : { [key]: value }

function needed(row: RowCells, holds: BookColumn, value: number | undefined): number | undefined {
  if (value === undefined && row.word(holds) === undefined) row.miss(holds)
  return value
}

const pathNames: Readonly<Record<string, string>> = {
  backM: columnNames.back,
  interM: columnNames.inter,
  foreM: columnNames.fore,
  lengthM: columnNames.length,
  angleDeg: columnNames.angle,
  runM: columnNames.run,
  dropM: columnNames.drop,
  spanM: 'span of a step',
  startLevelM: 'start level',
  endLevelM: 'closing level',
}

function problemAt(path: readonly PropertyKey[], message: string): Problem {
  const row = path.find((step) => typeof step === 'number')
  const last = String(path.at(-1) ?? 'field book')
  const name = pathNames[last] ?? last
  return {
    where: row === undefined ? name : `line ${row + 1} of the book, ${name}`,
    what: `${message.charAt(0).toUpperCase()}${message.slice(1)}.`.replace(/\?\.$/, '?'),
    mend: 'Mend it in the file.',
  }
}
