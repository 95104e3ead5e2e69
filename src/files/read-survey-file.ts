import type { Outcome } from '#core/units'
import type { LevelColumns } from '#io'
import { readAsciiGridFile } from './ascii-grid-file'
import { decodeText, type DecodedText } from './decode-text'
import { foreignFile, formatOfText, isTiff } from './detect-format'
import { doubtsOf } from './doubts-of'
import { readDxf } from './dxf'
import { readGeoJson } from './geojson-file'
import { readGeoTiff } from './geotiff-file'
import { readLandXml } from './land-xml'
import { refusal } from './refusal'
import type { SurveyFormat, SurveyRead } from './survey-read.types'
import { readTableFile } from './table-file'

/** Largest file that is read [bytes]: 64 MiB, some twenty times a survey of 100,000 points. */
export const MOST_BYTES = 64 * 1024 * 1024
const MEBIBYTE = 1024 * 1024

type TextReader = (text: string, columns?: LevelColumns) => Outcome<SurveyRead>

/** A reader for each format that is text; columns are for tables alone. */
const textReaders: Readonly<Record<Exclude<SurveyFormat, 'geotiff'>, TextReader>> = {
  table: readTableFile,
  'ascii-grid': readAsciiGridFile,
  geojson: readGeoJson,
  landxml: readLandXml,
  dxf: readDxf,
}

/**
 * Reads a survey file of any known format, which is told by what the file holds and not by its name.
 *
 * @param bytes - the file
 * @param fileName - its name, for messages
 * @param columns - which column of a table holds what, where the person has said so already
 * @returns what was understood, with notes and doubts; or why nothing was
 */
export async function readSurveyFile(
  bytes: Uint8Array,
  fileName: string,
  columns?: LevelColumns,
): Promise<Outcome<SurveyRead>> {
  const read = await readByFormat(bytes, fileName, columns)
  return read.ok
    ? { ok: true, value: { ...read.value, doubts: [...read.value.doubts, ...doubtsOf(read.value)] } }
    : read
}

function readByFormat(
  bytes: Uint8Array,
  fileName: string,
  columns: LevelColumns | undefined,
): Outcome<SurveyRead> | Promise<Outcome<SurveyRead>> {
  const where = fileName === '' ? 'file' : fileName
  if (bytes.length === 0)
    return refusal(where, 'The file is empty.', 'Choose another file, or export it again.')
  if (bytes.length > MOST_BYTES)
    return refusal(
      where,
      `The file has ${Math.ceil(bytes.length / MEBIBYTE)} MiB; at most ${MOST_BYTES / MEBIBYTE} MiB are read.`,
      'Cut it to the plot and its surroundings, or thin it out.',
    )
  const alien = foreignFile(bytes)
  if (alien) return refusal(where, alien.what, alien.mend)
  return isTiff(bytes) ? readGeoTiff(bytes) : readText(decodeText(bytes), where, columns)
}

function readText(
  decoded: DecodedText,
  where: string,
  columns: LevelColumns | undefined,
): Outcome<SurveyRead> {
  const format = formatOfText(decoded.text)
  if (typeof format !== 'string') return refusal(where, format.what, format.mend)
  const read = textReaders[format](decoded.text, columns)
  return read.ok && decoded.encoding === 'Windows-1252'
    ? { ok: true, value: { ...read.value, notes: [...read.value.notes, oldEncoding] } }
    : read
}

const oldEncoding = 'The text is not UTF-8; it was read as Windows-1252. Look at names with accents.'
