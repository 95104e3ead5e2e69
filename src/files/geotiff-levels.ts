import type { GeoTIFFImage } from 'geotiff'
import { unitOfWord } from './length-unit'
import type { LengthUnit } from './survey-read.types'

/** One band as stored, and how to make levels of it. */
export interface LevelBand {
  readonly values: ArrayLike<number>
  readonly noData: number | undefined
  readonly scale: number
  readonly offset: number
  /** Unit that the band names. */
  readonly unit: LengthUnit | undefined
}

/** Beyond this no unit makes a level of it. */
const NEVER_A_LEVEL = 1e7

/**
 * The only band of an image.
 *
 * @param image - of one band
 * @returns its values, no-data value, scale, offset and unit
 */
export async function bandOf(image: GeoTIFFImage): Promise<LevelBand> {
  const directory = image.getFileDirectory()
  const noData = textOf(await directory.loadValue('GDAL_NODATA'))
  const about = textOf(await directory.loadValue('GDAL_METADATA'))
  const [values] = await image.readRasters({ samples: [0], interleave: false })
  if (!values || values.length !== image.getWidth() * image.getHeight())
    throw new RangeError('bandOf: the image must hold one value per cell')
  return {
    values,
    noData: noData === '' ? undefined : Number(noData),
    scale: item(about, 'scale', 1),
    offset: item(about, 'offset', 0),
    unit: unitOfWord(/<Item[^>]*role="unittype"[^>]*>([^<]{1,40})</.exec(about)?.[1] ?? ''),
  }
}

const textOf = (value: unknown): string =>
  typeof value === 'string' ? value.split('\0').join('').trim() : ''

/** A number of the metadata that GDAL writes, by the role it has. */
function item(about: string, role: string, otherwise: number): number {
  const text = new RegExp(`<Item[^>]*role="${role}"[^>]*>([^<]{1,40})<`).exec(about)?.[1]
  const value = Number(text)
  return text === undefined || !Number.isFinite(value) ? otherwise : value
}

/**
 * Levels of a band, with nothing where there is no ground.
 *
 * @param band - as stored
 * @returns levels, row 0 first, and what was done to them
 */
export function levelsOfBand(band: LevelBand): { levels: (number | null)[]; notes: string[] } {
  const { values, noData, scale, offset } = band
  // Single precision holds a no-data value only nearly as it is written.
  const rounded = noData === undefined ? NaN : Math.fround(noData)
  let unlikely = 0
  const levels = Array.from(values, (value) => {
    if (Number.isNaN(value) || value === noData || value === rounded) return null
    const level = value * scale + offset
    if (Math.abs(level) <= NEVER_A_LEVEL) return level
    unlikely++
    return null
  })
  return {
    levels,
    notes: [
      ...(scale !== 1 || offset !== 0
        ? [`Stored values were multiplied by ${scale} and ${offset} added, as the file says.`]
        : []),
      ...(unlikely > 0
        ? [`${unlikely} cells hold values that no level can have; they count as no ground.`]
        : []),
    ],
  }
}
