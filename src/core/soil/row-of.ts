/**
 * The row of a table that stands for a kind.
 *
 * @param rows - the table
 * @param fits - says whether a row stands for the kind
 * @param what - the kind, for the message
 * @returns the first row that fits
 * @throws RangeError when no row does
 */
export function rowOf<Row>(rows: readonly Row[], fits: (row: Row) => boolean, what: string): Row {
  const row = rows.find(fits)
  if (row === undefined) throw new RangeError(`rowOf: the table has no row for ${what}`)
  return row
}
