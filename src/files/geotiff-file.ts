import type { Outcome } from '#core/units'
import { MOST_CELLS } from '#io'
import { fromArrayBuffer, type GeoTIFFImage } from 'geotiff'
import { registerCappedDecoders } from './capped-decoders'
import { crsOfKeys, type KeyedCrs } from './geotiff-crs'
import { bandOf, levelsOfBand } from './geotiff-levels'
import { placeOfImage, type ImagePlace } from './geotiff-place'
import { gridPart, northFirst } from './grid-part'
import { refusal } from './refusal'
import { soundDirectory } from './tiff-directory'
import type { LengthUnit, SurveyRead } from './survey-read.types'

/**
 * Reads a GeoTIFF of levels: the first image, its only band, stripped or tiled.
 *
 * @param bytes - the file
 * @returns one part, a grid; or what is wrong
 */
export async function readGeoTiff(bytes: Uint8Array): Promise<Outcome<SurveyRead>> {
  if (!soundDirectory(bytes))
    return refusal(
      'file',
      'The TIFF cannot be read: its directory points outside the file.',
      'It is cut short or damaged. Export it again.',
    )
  registerCappedDecoders()
  try {
    // A copy, because the library wants a whole buffer, and bytes may be a view of a larger one.
    const tiff = await fromArrayBuffer(new Uint8Array(bytes).buffer)
    return await readImage(await tiff.getImage(0))
  } catch (error) {
    const reason = error instanceof Error ? error.message.slice(0, 200) : 'no reason given'
    return refusal(
      'file',
      `The TIFF cannot be read (${reason}).`,
      'It may be cut short or damaged, or packed in a way that is not read here. Export it again as a plain GeoTIFF.',
    )
  }
}

async function readImage(image: GeoTIFFImage): Promise<Outcome<SurveyRead>> {
  const unfit = unfitImage(image)
  if (unfit) return unfit
  const place = await placeOfImage(image)
  if (typeof place === 'string')
    return refusal('place', place, 'Export it again as a GeoTIFF with north at the top.')
  const band = await bandOf(image)
  const crs = crsOfKeys(image.getGeoKeys() ?? {})
  const { levels, notes } = levelsOfBand(band)
  return {
    ok: true,
    value: {
      format: 'geotiff',
      parts: [gridPart('grid', 'Grid', gridOf(image, place, levels))],
      ...unitsOf(crs, band.unit ?? crs.levelUnit),
      crs: crs.crs,
      notes: [...(place.noted ? [place.noted] : []), ...notes, ...unitNotes(crs, band.unit)],
      doubts: [],
    },
  }
}

function unitsOf(
  { inDegrees, unit }: KeyedCrs,
  levelUnit: LengthUnit | undefined,
): Pick<SurveyRead, 'unit' | 'levelUnit' | 'inDegrees'> {
  return inDegrees ? { unit: levelUnit, inDegrees } : { unit, levelUnit }
}

function unitNotes({ inDegrees, levelUnit }: KeyedCrs, bandUnit: LengthUnit | undefined): string[] {
  if (inDegrees) return ['The cells are in degrees of longitude and latitude; they are brought to metres.']
  return bandUnit === undefined && levelUnit === undefined
    ? ['The file does not say the unit of levels; it is taken to be that of east and north.']
    : []
}

function gridOf(image: GeoTIFFImage, place: ImagePlace, levels: (number | null)[]) {
  const columns = image.getWidth()
  const rows = image.getHeight()
  const { cellEast, cellNorth, west, north } = place
  return northFirst({ columns, rows, cellEast, cellNorth, west, south: north - rows * cellNorth, levels })
}

/** Ways of packing that hold levels exactly: none, LZW, deflate, PackBits, LERC, Zstandard. */
const packings = [undefined, 1, 5, 8, 32_946, 32_773, 34_887, 50_000]
/** Most cells of one strip or tile: a damaged file must not ask for all of the memory. */
const MOST_BLOCK_CELLS = 4 * MOST_CELLS

function unfitImage(image: GeoTIFFImage): Outcome<never> | undefined {
  const [columns, rows] = [image.getWidth(), image.getHeight()]
  if (!(Number.isInteger(columns) && Number.isInteger(rows) && columns >= 2 && rows >= 2))
    return refusal(
      'size',
      `The image has ${columns} × ${rows} cells.`,
      'A grid has two cells or more each way.',
    )
  if (columns * rows > MOST_CELLS)
    return refusal(
      'size',
      `The grid has ${columns} × ${rows} cells; at most ${MOST_CELLS} are read.`,
      'Cut it to the plot and its surroundings.',
    )
  const block = image.getTileWidth() * image.getTileHeight()
  if (!(block > 0 && block <= MOST_BLOCK_CELLS))
    return refusal('size', 'The size of its strips or tiles makes no sense.', 'Export it again.')
  const bands = image.getSamplesPerPixel()
  if (bands !== 1)
    return refusal(
      'bands',
      `The image has ${bands} bands; levels are one band.`,
      'A picture or shaded relief holds no levels. Choose the elevation model, or save its level band alone.',
    )
  const packing: unknown = image.getFileDirectory().getValue('Compression')
  if (!packings.some((one) => one === packing))
    return refusal(
      'packing',
      'The image is packed in a way that loses levels.',
      'Export it with deflate, LZW or no compression.',
    )
  return undefined
}
