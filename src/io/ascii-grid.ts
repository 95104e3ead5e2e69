import type { GridFrame } from '#core/geometry'
import type { GridSurvey } from '#core/survey'
import type { Outcome, Problem } from '#core/units'

/** Value that stands for "no ground here" in the grids we write. */
const NO_DATA = -9999

const headerNames = [
  'ncols',
  'nrows',
  'xllcorner',
  'xllcenter',
  'yllcorner',
  'yllcenter',
  'cellsize',
  'nodata_value',
]

/**
 * Writes a grid as ESRI ASCII text.
 *
 * @param frame - where the grid lies
 * @param values - one value per cell, row 0 northernmost
 * @param options - which cells are ground, and how many decimals to print
 * @returns text with one row of cells a line
 */
export function writeAsciiGrid(
  frame: GridFrame,
  values: ArrayLike<number>,
  options: { readonly share: Float64Array; readonly decimals: number },
): string {
  const lines = [
    `ncols ${frame.columns}`,
    `nrows ${frame.rows}`,
    `xllcorner ${frame.westM}`,
    `yllcorner ${frame.southM}`,
    `cellsize ${frame.cellM}`,
    `NODATA_value ${NO_DATA}`,
  ]
  for (let row = 0; row < frame.rows; row++) {
    const cells: string[] = []
    for (let column = 0; column < frame.columns; column++) {
      const cell = row * frame.columns + column
      const inside = (options.share[cell] ?? 0) > 0
      cells.push(inside ? String(Number((values[cell] ?? NO_DATA).toFixed(options.decimals))) : `${NO_DATA}`)
    }
    lines.push(cells.join(' '))
  }
  return `${lines.join('\n')}\n`
}

/**
 * Reads an ESRI ASCII grid of levels.
 *
 * @param text - the file
 * @returns a grid survey with its own coordinates, or what is wrong with the file
 */
export function readAsciiGrid(text: string): Outcome<GridSurvey> {
  const tokens = text.trim().split(/\s+/)
  const { header, used } = readHeader(tokens)
  const problems = headerProblems(header)
  const columns = header.get('ncols') ?? 0
  const rows = header.get('nrows') ?? 0
  if (problems.length > 0) return { ok: false, problems }
  const body = tokens.slice(used)
  if (body.length !== columns * rows)
    return refuse(
      `The header promises ${columns} × ${rows} = ${columns * rows} levels; the file holds ${body.length}.`,
      'The file may be cut short. Export it again.',
    )
  const levels = body.map(Number)
  const bad = levels.findIndex((level) => !Number.isFinite(level))
  if (bad >= 0)
    return refuse(
      `Row ${Math.floor(bad / columns) + 1}, column ${(bad % columns) + 1} holds “${body[bad] ?? ''}”, which is not a number.`,
      'Correct this cell, or mark it as no data.',
    )
  return { ok: true, value: gridOf(header, levels) }
}

function gridOf(header: ReadonlyMap<string, number>, levels: readonly number[]): GridSurvey {
  const cellM = header.get('cellsize') ?? 1
  const corner = (axis: 'x' | 'y') =>
    header.get(`${axis}llcorner`) ?? (header.get(`${axis}llcenter`) ?? 0) - cellM / 2
  const noData = header.get('nodata_value') ?? NO_DATA
  return {
    kind: 'grid',
    columns: header.get('ncols') ?? 0,
    rows: header.get('nrows') ?? 0,
    cellM,
    westM: corner('x'),
    southM: corner('y'),
    levelsM: levels.map((level) => (level === noData ? null : level)),
  }
}

function readHeader(tokens: readonly string[]): { header: Map<string, number>; used: number } {
  const header = new Map<string, number>()
  let used = 0
  for (;;) {
    const name = tokens[used]?.toLowerCase()
    if (!name || !headerNames.includes(name)) return { header, used }
    header.set(name, Number(tokens[used + 1]))
    used += 2
  }
}

function headerProblems(header: ReadonlyMap<string, number>): Problem[] {
  return ['ncols', 'nrows', 'cellsize']
    .filter((name) => !((header.get(name) ?? 0) > 0))
    .map((name) => ({
      where: `header › ${name}`,
      what: `The grid’s header has no usable ${name}.`,
      mend: 'An ESRI ASCII grid starts with ncols, nrows, xllcorner, yllcorner, cellsize.',
    }))
}

function refuse(what: string, mend: string): Outcome<never> {
  return { ok: false, problems: [{ where: 'grid', what, mend }] }
}
