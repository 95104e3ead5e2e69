import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import proj4 from 'proj4'
import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { crsOfEpsg } from '../../src/files/known-crs'

const truth = z
  .object({ points: z.array(z.tuple([z.number(), z.number(), z.number(), z.number(), z.number()])) })
  .parse(JSON.parse(readFileSync(join(import.meta.dirname, '../truth/crs-points.json'), 'utf8')))

/** How far a place may be off [m]: datums of this age are brought to WGS 84 by published shifts of that quality. */
const WITHIN_M = 2
const WITHIN_SHIFTED_M = 10
const METRES_PER_DEG = 111_195

describe('coordinate systems by EPSG code', () => {
  it.each(truth.points)(
    'EPSG dataset v10.076: EPSG:%i at longitude %f, latitude %f lies where GDAL 3.6.2 puts it',
    (epsg, longitudeDeg, latitudeDeg, east, north) => {
      const crs = crsOfEpsg(epsg)
      const [lon = NaN, lat = NaN] = proj4(crs?.definition ?? '', 'WGS84', [east, north])
      const offM =
        Math.hypot((lon - longitudeDeg) * Math.cos((lat * Math.PI) / 180), lat - latitudeDeg) * METRES_PER_DEG
      expect(offM).toBeLessThan(crs?.definition.includes('+towgs84') ? WITHIN_SHIFTED_M : WITHIN_M)
    },
  )

  it('knows longitude and latitude as such, and no code that is not in its table', () => {
    expect(crsOfEpsg(4326)?.unit).toBeUndefined()
    expect(crsOfEpsg(99_999)).toBeUndefined()
    expect(crsOfEpsg(0)).toBeUndefined()
  })

  it('tells the unit with the code: New York Long Island is 2263 in US survey feet, 32118 in metres', () => {
    expect(crsOfEpsg(2263)?.unit).toBe('us-ft')
    expect(crsOfEpsg(32118)?.unit).toBe('m')
  })
})
