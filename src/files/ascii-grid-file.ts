import type { Outcome } from '#core/units'
import { parseAsciiGrid, type AsciiGrid } from '#io'
import { gridPart } from './grid-part'
import type { SurveyRead } from './survey-read.types'

/**
 * Reads an ESRI ASCII grid. The format names neither unit nor coordinate system.
 *
 * @param text - the file
 * @returns one part, a grid, or what is wrong
 */
export function readAsciiGridFile(text: string): Outcome<SurveyRead> {
  const parsed = parseAsciiGrid(text)
  if (!parsed.ok) return parsed
  const grid = parsed.value
  const inDegrees = looksLikeDegrees(grid)
  return {
    ok: true,
    value: {
      format: 'ascii-grid',
      parts: [gridPart('grid', 'Grid', grid)],
      unit: undefined,
      crs: inDegrees ? { name: 'longitude and latitude', epsg: 4326, definition: undefined } : undefined,
      ...(inDegrees ? { inDegrees } : {}),
      notes: [
        ...(grid.decimalCommas ? ['Commas were read as decimal marks.'] : []),
        ...(inDegrees
          ? [
              'The cells are in degrees of longitude and latitude, taken to be WGS 84; they are brought to metres.',
            ]
          : []),
      ],
      doubts: [],
    },
  }
}

/** Coarsest cell in degrees that is still of use on a plot [°]: some 1.1 km. */
const COARSEST_DEG = 0.01

/** A corner on the globe and cells far smaller than any in metres: only degrees make sense of both. */
function looksLikeDegrees({ west, south, columns, rows, cellEast, cellNorth }: AsciiGrid): boolean {
  const fits =
    west >= -180 && west + columns * cellEast <= 180.01 && south >= -90 && south + rows * cellNorth <= 90.01
  return fits && cellEast < COARSEST_DEG && cellNorth < COARSEST_DEG
}
