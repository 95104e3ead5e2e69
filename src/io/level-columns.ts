import { looksNumeric } from './table-numbers'
import type { TextTable } from './text-table'

/** Which column holds what: indices into the table's columns. */
export interface LevelColumns {
  readonly mark: number | undefined
  readonly east: number
  readonly north: number
  readonly level: number
  /** What the surveyor coded the point as. */
  readonly code?: number | undefined
}

/** Words that head a column of each kind, in the languages surveys come in; units are taken off first. */
const headings = {
  mark: /^(marks?|points?|pts?|pkt|(point|pt|mark)[ _.]?(no|nr|num|number|id|name)|id|fid|no|nr|num|number|name|station|stn|p|punkt(nr|nummer)?|n°|matricule)$/i,
  code: /^((point|feature|survey)?[ _]?code|codes|desc(ription)?|feature|remarks?|notes?|comments?|layer|type|d|bemerkung|art)$/i,
  east: /^(east(ing)?s?|e|x|(coord(inate)?[ _.]?)?x([ _.]?coord(inate)?)?|e[ _.]?coord|pos[ _]?x|point[ _]?x|rechts(wert)?|ostwert|este|est|lon(g|gitude)?|lng)$/i,
  north:
    /^(north(ing)?s?|n|y|(coord(inate)?[ _.]?)?y([ _.]?coord(inate)?)?|n[ _.]?coord|pos[ _]?y|point[ _]?y|hoch(wert)?|nordwert|norte|nord|lat(itude)?)$/i,
  level:
    /^((reduced|ground|spot)?[ _]?levels?|z|h|rl|ht|heights?|elev(ation)?s?|alt(itude)?s?|(coord(inate)?[ _.]?)?z([ _.]?coord(inate)?)?|pos[ _]?z|point[ _]?z|höhe|hoehe|cota|quota|hauteur|nn)$/i,
} as const

const isWord = (kind: keyof typeof headings) => (name: string) => headings[kind].test(headingParts(name).word)

/** Whether a name, of a column or a property, stands for a level. */
export const isLevelWord = isWord('level')
/** Whether it stands for a point's own name. */
export const isMarkWord = isWord('mark')
/** Whether it stands for a point's code. */
export const isCodeWord = isWord('code')

/** A unit at the end of a heading: "east (m)", "level [ft]", "eastM", "z_us-ft". */
const unitEnd =
  /^(.*?)(?:[\s_]*[([]\s*([^)\]]+?)\s*[)\]]|[\s_]+(us-?ft|ftus|ft|feet|foot|mm|cm|m|in|metres?|meters?)|(?<=[a-z])(M|Ft|Mm|Cm))$/

/**
 * A heading without its unit, and the unit.
 *
 * @param heading - such as "Easting (m)"
 * @returns the word, and the unit as written, if any
 */
export function headingParts(heading: string): { readonly word: string; readonly unit: string | undefined } {
  const [, word, bracketed, spaced, camel] = unitEnd.exec(heading.trim()) ?? []
  return word === undefined || word === ''
    ? { word: heading.trim(), unit: undefined }
    : { word: word.trim(), unit: bracketed ?? spaced ?? camel }
}

/**
 * Columns that the headings name.
 *
 * @param columns - the headings
 * @returns which column holds what; undefined unless east, north and level are all named
 */
export function headedColumns(columns: readonly string[]): LevelColumns | undefined {
  const words = columns.map((column) => headingParts(column).word.replace(/[.:#]$/, ''))
  const find = (kind: keyof typeof headings) => words.findIndex((word) => headings[kind].test(word))
  const [east, north, level] = [find('east'), find('north'), find('level')]
  if (east < 0 || north < 0 || level < 0) return undefined
  const rest = (at: number) => (at < 0 || [east, north, level].includes(at) ? undefined : at)
  return { mark: rest(find('mark')), east, north, level, code: rest(find('code')) }
}

/**
 * Guesses which columns hold east, north and level, for the person to confirm.
 *
 * @param table - the table as read
 * @returns column indices; the likeliest usual order when the headings do not tell
 */
export function guessLevelColumns(table: TextTable): LevelColumns {
  return headedColumns(table.columns) ?? usualOrders(table)[0]?.columns ?? orders.ENZ
}

const orders = {
  ENZ: { mark: undefined, east: 0, north: 1, level: 2, code: undefined },
  NEZ: { mark: undefined, east: 1, north: 0, level: 2, code: undefined },
  ENZD: { mark: undefined, east: 0, north: 1, level: 2, code: 3 },
  NEZD: { mark: undefined, east: 1, north: 0, level: 2, code: 3 },
  PENZ: { mark: 0, east: 1, north: 2, level: 3, code: undefined },
  PNEZ: { mark: 0, east: 2, north: 1, level: 3, code: undefined },
  PENZD: { mark: 0, east: 1, north: 2, level: 3, code: 4 },
  PNEZD: { mark: 0, east: 2, north: 1, level: 3, code: 4 },
} as const satisfies Record<string, LevelColumns>

/** Name of a usual order of columns: P point, E east, N north, Z level, D description. */
export type ColumnOrder = keyof typeof orders

/**
 * The columns of a named order.
 *
 * @param name - such as "PNEZD", in either case
 * @returns the columns, or undefined when there is no such order
 */
export function columnsOfOrder(name: string): LevelColumns | undefined {
  return Object.entries(orders).find(([order]) => order === name.toUpperCase())?.[1]
}

/** Rows looked at to tell the order. */
const LOOKED_AT = 200

/**
 * Usual orders of columns that a table may be in, east before north first.
 *
 * @param table - the table as read
 * @returns names and columns; empty when no usual order fits
 */
export function usualOrders(
  table: TextTable,
): { readonly name: ColumnOrder; readonly columns: LevelColumns }[] {
  return likelyOrders(table).map((name) => ({ name, columns: orders[name] }))
}

function likelyOrders(table: TextTable): ColumnOrder[] {
  const rows = table.rows.slice(0, LOOKED_AT)
  const numeric = (at: number) => rows.filter((row) => looksNumeric(row[at] ?? '')).length > rows.length / 2
  const filled = (at: number) => rows.some((row) => (row[at] ?? '') !== '')
  const figuresFrom = (from: number) => [from, from + 1, from + 2].every(numeric)
  const marked = figuresFrom(1) && !(figuresFrom(0) && hasDecimals(rows, 0))
  if (marked) return filled(4) ? ['PENZD', 'PNEZD'] : ['PENZ', 'PNEZ']
  if (!figuresFrom(0)) return []
  return filled(3) ? ['ENZD', 'NEZD'] : ['ENZ', 'NEZ']
}

/** Point numbers are whole; coordinates seldom are all of them. */
const hasDecimals = (rows: TextTable['rows'], at: number): boolean =>
  rows.some((row) => /[.,]\d*[1-9]/.test(row[at] ?? ''))
