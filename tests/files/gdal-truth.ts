import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import { readSurveyFile, type SurveyRead } from '../../src/files'

const folder = join(import.meta.dirname, '../truth/files')

/** What GDAL reads from the files it wrote. */
export const truth = z
  .object({
    rasters: z.record(
      z.string(),
      z.object({
        columns: z.number(),
        rows: z.number(),
        west: z.number(),
        north: z.number(),
        cellEast: z.number(),
        cellNorth: z.number(),
        epsg: z.number().nullable(),
        unit: z.string(),
        scale: z.number().nullable(),
        levels: z.array(z.number().nullable()),
      }),
    ),
    points: z.array(z.tuple([z.string(), z.string(), z.number(), z.number(), z.number()])),
    pointsLonLat: z.array(z.tuple([z.string(), z.number(), z.number(), z.number()])),
    pointsLocal: z.array(z.tuple([z.string(), z.number(), z.number(), z.number()])),
  })
  .parse(JSON.parse(readFileSync(join(folder, 'gdal.json'), 'utf8')))

/** Bytes of a file of tests/truth/files. */
export const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(join(folder, name)))

/** Such a file as understood; fails with the problems. */
export async function understood(name: string): Promise<SurveyRead> {
  const read = await readSurveyFile(bytesOf(name), name)
  if (!read.ok) throw new Error(read.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'))
  return read.value
}

/** Bytes of a text in UTF-8. */
export const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text)

/** A text as a file, understood. */
export async function understoodText(text: string): Promise<SurveyRead> {
  const read = await readSurveyFile(utf8(text), 'typed')
  if (!read.ok) throw new Error(read.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'))
  return read.value
}

/** What is wrong with a text as a file, in one line. */
export async function wrongWith(text: string | Uint8Array): Promise<string> {
  const read = await readSurveyFile(typeof text === 'string' ? utf8(text) : text, 'typed')
  return read.ok ? '' : read.problems.map(({ where, what, mend }) => `${where}: ${what} ${mend}`).join(' ')
}
