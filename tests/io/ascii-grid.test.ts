import { expect, it } from 'vitest'
import { readAsciiGrid, writeAsciiGrid } from '../../src/io/ascii-grid'

const text = `NCOLS 3
NROWS 2
XLLCENTER 0.5
YLLCENTER 0.5
CELLSIZE 1
NODATA_value -9999
1 2 3
4 -9999 6.25
`

it('ESRI ASCII grid: header names in any case, centres half a cell inside, no-data as no ground', () => {
  expect(readAsciiGrid(text)).toEqual({
    ok: true,
    value: {
      kind: 'grid',
      columns: 3,
      rows: 2,
      cellM: 1,
      westM: 0,
      southM: 0,
      levelsM: [1, 2, 3, 4, null, 6.25],
    },
  })
})

it('what is written reads back the same', () => {
  const frame = { columns: 3, rows: 2, cellM: 1, westM: 0, southM: 0 }
  const share = Float64Array.of(1, 1, 1, 1, 0, 0.5)
  const written = writeAsciiGrid(frame, [1, 2, 3, 4, 7, 6.25], { share, decimals: 2 })
  expect(readAsciiGrid(written)).toEqual(readAsciiGrid(text))
})

it('a grid cut short says how many levels are missing', () => {
  const short = readAsciiGrid(text.replace('6.25', ''))
  expect(!short.ok && short.problems[0]?.what).toContain('holds 5')
})

it('a cell that is no number is named by row and column', () => {
  const bad = readAsciiGrid(text.replace('6.25', 'wet'))
  expect(!bad.ok && bad.problems[0]?.what).toContain('Row 2, column 3')
})

it('a header without a cell size is refused', () => {
  expect(readAsciiGrid('ncols 2\nnrows 2\n1 2 3 4').ok).toBe(false)
})
