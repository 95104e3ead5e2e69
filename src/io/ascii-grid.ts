import type { GridFrame } from '#core/geometry'
import type { GridSurvey } from '#core/survey'
import type { Outcome } from '#core/units'
import { NO_DATA, parseAsciiGrid } from './ascii-grid-text'

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
 * Reads an ESRI ASCII grid of levels in metres.
 *
 * @param text - the file
 * @returns a grid survey with its own coordinates, or what is wrong with the file
 */
export function readAsciiGrid(text: string): Outcome<GridSurvey> {
  const parsed = parseAsciiGrid(text)
  if (!parsed.ok) return parsed
  const { columns, rows, cellEast, cellNorth, west, south, levels } = parsed.value
  if (Math.abs(cellEast - cellNorth) > cellEast * SQUARE_ENOUGH)
    return {
      ok: false,
      problems: [
        {
          where: 'header › dx, dy',
          what: `The cells are not square: ${cellEast} by ${cellNorth}.`,
          mend: 'Open the file as a survey, which brings it to square cells.',
        },
      ],
    }
  return {
    ok: true,
    value: { kind: 'grid', columns, rows, cellM: cellEast, westM: west, southM: south, levelsM: levels },
  }
}

/** Difference of the sides that is rounding [share of a side]. */
const SQUARE_ENOUGH = 1e-6
