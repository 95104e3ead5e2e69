import Papa from 'papaparse'

/** A cell of a table to write; nothing where it is undefined. */
export type CsvCell = string | number | undefined

/**
 * A table as CSV (RFC 4180): comma, CRLF, quotes where needed. Text that a spreadsheet would take for a formula is
 * written so that it stays text.
 *
 * @param columns - headings, units in their names
 * @param rows - one value to each heading
 * @returns the file's text
 */
export function csvText(columns: readonly string[], rows: readonly (readonly CsvCell[])[]): string {
  const data = rows.map((row) => row.map((cell) => cell ?? ''))
  return `${Papa.unparse({ fields: [...columns], data }, { newline: '\r\n', escapeFormulae: true })}\r\n`
}

/** A figure rounded for a table; nothing where there is none. */
export function rounded(value: number | undefined, decimals: number): number | undefined {
  return value === undefined ? undefined : Number(value.toFixed(decimals)) + 0
}
