import type { GeoTIFFImage } from 'geotiff'

/** Where the cells of an image lie, in its own coordinates. */
export interface ImagePlace {
  readonly cellEast: number
  /** Below 0 when row 0 is the southernmost. */
  readonly cellNorth: number
  /** West edge, and the edge of row 0 that lies outward. */
  readonly west: number
  readonly north: number
  /** What is told of it. */
  readonly noted: string | undefined
}

/** GTRasterTypeGeoKey of GeoTIFF 1.1 (OGC 19-008r4) for values that stand at points, not for areas. */
const PIXEL_IS_POINT = 2

/**
 * Where an image lies, by its tie point and scale or by its matrix. Where values stand at points, the tie point is the
 * middle of a cell and not its corner.
 *
 * @param image - of a GeoTIFF
 * @returns the place, or why it has none, a sentence
 */
export async function placeOfImage(image: GeoTIFFImage): Promise<ImagePlace | string> {
  const directory = image.getFileDirectory()
  const tie = numbersOf(await directory.loadValue('ModelTiepoint'))
  const scale = numbersOf(await directory.loadValue('ModelPixelScale'))
  const matrix = numbersOf(await directory.loadValue('ModelTransformation'))
  const atPoints = image.getGeoKeys()?.GTRasterTypeGeoKey === PIXEL_IS_POINT
  const place = matrix.length === 16 ? byMatrix(matrix) : byTiePoint(tie, scale)
  if (typeof place === 'string') return place
  const { cellEast, cellNorth, west, north } = place
  if (![cellEast, cellNorth, west, north].every(Number.isFinite) || !(cellEast > 0) || cellNorth === 0)
    return 'The size of its cells makes no sense.'
  if (!atPoints) return place
  return {
    ...place,
    west: west - cellEast / 2,
    north: north + cellNorth / 2,
    noted: 'Values stand at points: each is taken as the level in the middle of its cell.',
  }
}

function byTiePoint(tie: readonly number[], scale: readonly number[]): ImagePlace | string {
  const [column, row, , east, north] = tie
  const [cellEast, cellNorth] = scale
  if (column === undefined || row === undefined || east === undefined || north === undefined)
    return 'The TIFF does not say where it lies.'
  if (cellEast === undefined || cellNorth === undefined)
    return 'The TIFF does not say how large its cells are.'
  return {
    cellEast,
    cellNorth,
    west: east - column * cellEast,
    north: north + row * cellNorth,
    noted: undefined,
  }
}

/** A turn smaller than this share of a cell is rounding. */
const TURNED = 1e-9

function byMatrix(matrix: readonly number[]): ImagePlace | string {
  const [cellEast = 0, eastPerRow = 0, , west = 0, northPerColumn = 0, northPerRow = 0, , north = 0] = matrix
  if (Math.abs(eastPerRow) > TURNED * cellEast || Math.abs(northPerColumn) > TURNED * cellEast)
    return 'The grid is turned: its rows do not run west to east.'
  return { cellEast, cellNorth: -northPerRow, west, north, noted: undefined }
}

function numbersOf(value: unknown): number[] {
  if (!Array.isArray(value) && !ArrayBuffer.isView(value)) return []
  return Array.from(value as ArrayLike<unknown>, Number)
}
