import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import type { GridFrame } from '#core/geometry'

/** An ESRI ASCII grid as read: row 0 northernmost; NaN where the file has no value. */
export interface TruthGrid extends GridFrame {
  readonly values: Float64Array
}

/** Reads an ESRI ASCII grid that lies beside this file, such as 'volcano/dem.asc'. */
export function readGrid(path: string): TruthGrid {
  const words = readFileSync(fileURLToPath(new URL(path, import.meta.url)), 'utf8')
    .trim()
    .split(/\s+/)
  const head = new Map<string, number>()
  let at = 0
  while (/^[a-z_]+$/i.test(words[at] ?? '')) {
    head.set((words[at] ?? '').toLowerCase(), Number(words[at + 1]))
    at += 2
  }
  const field = (name: string): number => {
    const value = head.get(name)
    if (value === undefined || !Number.isFinite(value)) throw new Error(`${path}: no ${name} in its head`)
    return value
  }
  const [columns, rows, none] = [field('ncols'), field('nrows'), field('nodata_value')]
  const values = Float64Array.from(words.slice(at), (word) => (Number(word) === none ? NaN : Number(word)))
  if (values.length !== columns * rows)
    throw new Error(`${path}: holds ${values.length} values, not ${columns * rows}`)
  return {
    columns,
    rows,
    cellM: field('cellsize'),
    westM: field('xllcorner'),
    southM: field('yllcorner'),
    values,
  }
}
