import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { z } from 'zod'
import { writeGeoTiff } from '../../src/files'
import { bytesOf, understood } from './gdal-truth'

const gdal = z
  .object({
    geoTransform: z.array(z.number()),
    columns: z.number(),
    rows: z.number(),
    type: z.string(),
    noData: z.number(),
    values: z.array(z.number().nullable()),
    local: z.boolean(),
    unit: z.string(),
  })
  .parse(JSON.parse(readFileSync(join(import.meta.dirname, '../truth/files/written.json'), 'utf8')))

const frame = { columns: 4, rows: 3, cellM: 0.25, westM: -1.5, southM: 2 }
const values = [1.5, 2.25, -3, 4, 5.125, 6, NaN, 8, 9, 10, 11, 12]
const share = [1, 1, 0.5, 1, 0, 1, 1, 1, 1, 1, 1, 1]

it('GDAL 3.6.2 reads what we write: place, size, float cells, no data, metres of a local system', () => {
  // The very bytes that GDAL read.
  expect(Buffer.from(writeGeoTiff(frame, values, share, { noData: -9999 }))).toEqual(
    Buffer.from(bytesOf('written.tif')),
  )
  expect([gdal.columns, gdal.rows, gdal.type, gdal.noData]).toEqual([4, 3, 'Float32', -9999])
  expect(gdal.geoTransform).toEqual([-1.5, 0.25, 0, 2.75, 0, -0.25])
  expect(gdal.values).toEqual([1.5, 2.25, -3, 4, null, 6, null, 8, 9, 10, 11, 12])
  expect([gdal.local, gdal.unit]).toEqual([true, 'metre'])
})

it('the geotiff library (npm) reads it too', async () => {
  const read = await understood('written.tif')
  expect(read.unit).toBe('m')
  expect(read.parts[0]?.grid).toMatchObject({ columns: 4, rows: 3, cellM: 0.25, westM: -1.5, southM: 2 })
  expect(read.parts[0]?.grid?.levelsM).toEqual(gdal.values)
})
