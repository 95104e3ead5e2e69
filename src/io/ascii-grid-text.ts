import type { Outcome, Problem } from '#core/units'

/** An ESRI ASCII grid as written, in the file's own unit. */
export interface AsciiGrid {
  readonly columns: number
  readonly rows: number
  /** Side of a cell eastwards and northwards. */
  readonly cellEast: number
  readonly cellNorth: number
  /** West and south edge, not centres. */
  readonly west: number
  readonly south: number
  /** Row 0 northernmost; null where there is no ground. */
  readonly levels: (number | null)[]
  /** True when the numbers have decimal commas. */
  readonly decimalCommas: boolean
}

/** Most cells of one grid that are read. */
export const MOST_CELLS = 4_000_000

/** Value that stands for "no ground" where a header names none; also in the grids we write. */
export const NO_DATA = -9999

/** Beyond this no unit makes a level of it: what is left of a no-data value of single precision. */
const NEVER_A_LEVEL = 1e7

const headerNames = [
  'ncols',
  'nrows',
  'xllcorner',
  'xllcenter',
  'yllcorner',
  'yllcenter',
  'cellsize',
  'dx',
  'dy',
  'nodata_value',
]

/**
 * Reads the text of an ESRI ASCII grid: header in any order and case, origin at corner or centre, one or two cell
 * sizes, any no-data value, decimal points or commas.
 *
 * @param text - the file
 * @returns the grid as written, or what is wrong with the file
 */
export function parseAsciiGrid(text: string): Outcome<AsciiGrid> {
  const tokens = text.trim().split(/\s+/)
  const { header, used } = readHeader(tokens)
  const problems = headerProblems(header)
  if (problems.length > 0) return { ok: false, problems }
  const size = { columns: header.get('ncols') ?? 0, rows: header.get('nrows') ?? 0 }
  const cells = size.columns * size.rows
  if (cells > MOST_CELLS)
    return refuse(
      `The grid has ${size.columns} × ${size.rows} cells; at most ${MOST_CELLS} are read.`,
      'Cut it to the plot and its surroundings.',
    )
  if (tokens.length - used !== cells)
    return refuse(
      `The header promises ${size.columns} × ${size.rows} = ${cells} levels; the file holds ${tokens.length - used}.`,
      'The file may be cut short. Export it again.',
    )
  const levels = readLevels(tokens, used, header.get('nodata_value') ?? NO_DATA)
  if (typeof levels === 'number')
    return refuse(
      `Row ${Math.floor(levels / size.columns) + 1}, column ${(levels % size.columns) + 1} holds “${(tokens[used + levels] ?? '').slice(0, 40)}”, which is not a number.`,
      'Correct this cell, or mark it as no data.',
    )
  return { ok: true, value: { ...size, ...placeOf(header), levels, decimalCommas: commas(tokens) } }
}

/** Levels, or the place of the first cell that is no number. */
function readLevels(tokens: readonly string[], used: number, noData: number): (number | null)[] | number {
  const levels: (number | null)[] = []
  for (let at = used; at < tokens.length; at++) {
    const value = numberOf(tokens[at] ?? '')
    if (value === undefined) return at - used
    levels.push(isNoData(value, noData) ? null : value)
  }
  return levels
}

/** Single precision writes the same no-data value with more or fewer digits. */
function isNoData(value: number, noData: number): boolean {
  if (Number.isNaN(value) || Math.abs(value) > NEVER_A_LEVEL) return true
  return Math.abs(value - noData) <= Math.abs(noData) * 1e-6
}

/** A number with a point or a comma, or a word for "not a number"; undefined when it is neither. */
function numberOf(token: string): number | undefined {
  const plain = token.replace(',', '.')
  if (/^[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?$/i.test(plain)) return Number(plain)
  return /^[-+]?(nan|1\.#(qnan|ind|snan)0*|inf(inity)?)$/i.test(plain) ? NaN : undefined
}

const commas = (tokens: readonly string[]): boolean => tokens.some((token) => token.includes(','))

function placeOf(header: ReadonlyMap<string, number>) {
  const cellEast = header.get('dx') ?? header.get('cellsize') ?? 1
  const cellNorth = header.get('dy') ?? header.get('cellsize') ?? cellEast
  const edge = (axis: 'x' | 'y', cell: number) =>
    header.get(`${axis}llcorner`) ?? (header.get(`${axis}llcenter`) ?? 0) - cell / 2
  return { cellEast, cellNorth, west: edge('x', cellEast), south: edge('y', cellNorth) }
}

function readHeader(tokens: readonly string[]): { header: Map<string, number>; used: number } {
  const header = new Map<string, number>()
  let used = 0
  for (;;) {
    const name = tokens[used]?.toLowerCase()
    if (!name || !headerNames.includes(name)) return { header, used }
    header.set(name, numberOf(tokens[used + 1] ?? '') ?? Number.NEGATIVE_INFINITY)
    used += 2
  }
}

function headerProblems(header: ReadonlyMap<string, number>): Problem[] {
  const whole = (name: string) => Number.isSafeInteger(header.get(name)) && (header.get(name) ?? 0) > 1
  const positive = (name: string) => (header.get(name) ?? 0) > 0 && Number.isFinite(header.get(name))
  const placed = (name: string) => !header.has(name) || Number.isFinite(header.get(name))
  const wrong = [
    ...['ncols', 'nrows'].filter((name) => !whole(name)),
    ...(positive('dx') && positive('dy') ? [] : ['cellsize'].filter((name) => !positive(name))),
    ...['xllcorner', 'xllcenter', 'yllcorner', 'yllcenter'].filter((name) => !placed(name)),
  ]
  return wrong.map((name) => ({
    where: `header › ${name}`,
    what: `The grid’s header has no usable ${name}.`,
    mend: 'An ESRI ASCII grid starts with ncols, nrows, xllcorner, yllcorner, cellsize, and has two cells or more each way.',
  }))
}

function refuse(what: string, mend: string): Outcome<never> {
  return { ok: false, problems: [{ where: 'grid', what, mend }] }
}
