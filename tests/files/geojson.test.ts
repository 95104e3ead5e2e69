import { describe, expect, it } from 'vitest'
import { groundOf, type SurveyRead } from '../../src/files'
import { truth, understood, understoodText, wrongWith } from './gdal-truth'

function pointsOf(read: SurveyRead, unit: 'm' | 'us-ft') {
  const made = groundOf(read, { partIds: ['points'], unit })
  if (!made.ok || made.value.ground.kind !== 'levels') throw new Error('no levels')
  return { points: made.value.ground.points, made: made.value }
}

describe('GeoJSON written by ogr2ogr (GDAL 3.6.2)', () => {
  it('points-27700.geojson: places and levels as written, moved by whole metres, and its place in England', async () => {
    const read = await understood('points-27700.geojson')
    expect([read.unit, read.crs?.epsg, read.inDegrees]).toEqual(['m', 27700, undefined])
    const { points, made } = pointsOf(read, 'm')
    expect(made.shift).toEqual({ eastM: 432_100, northM: 114_200 })
    expect(points).toEqual(
      truth.points.map(([mark, code, east, north, levelM]) => ({
        mark,
        code,
        eastM: east - 432_100,
        northM: north - 114_200,
        levelM,
      })),
    )
    expect(made.site?.latitudeDeg).toBeCloseTo(truth.pointsLonLat[0]?.[2] ?? NaN, 3)
    expect(made.site?.longitudeDeg).toBeCloseTo(truth.pointsLonLat[0]?.[1] ?? NaN, 3)
  })

  it('points-2227.geojson: coordinates of a grid in US survey feet', async () => {
    const read = await understood('points-2227.geojson')
    expect(read.unit).toBe('us-ft')
    const { points } = pointsOf(read, 'us-ft')
    const footM = 1200 / 3937
    expect(points[1]).toEqual({
      mark: 'A2',
      code: 'TOP',
      eastM: 5.5 * footM,
      northM: 3.125 * footM,
      levelM: 102.25 * footM,
    })
  })

  it('points-rfc7946.geojson: degrees become the metres of GDAL’s transverse Mercator about the middle', async () => {
    const read = await understood('points-rfc7946.geojson')
    expect(read.inDegrees).toBe(true)
    const { points, made } = pointsOf(read, 'm')
    points.forEach(({ eastM, northM, levelM }, row) => {
      const [, east = NaN, north = NaN, level = NaN] = truth.pointsLocal[row] ?? []
      // A tenth of a millimetre.
      expect(Math.hypot(eastM - east, northM - north)).toBeLessThan(1e-4)
      expect(levelM).toBe(level)
    })
    expect(made.shift).toBeUndefined()
  })
})

describe('GeoJSON by RFC 7946', () => {
  const feature = (geometry: unknown, properties: unknown = {}) => ({ type: 'Feature', properties, geometry })
  const text = (features: unknown[]) => JSON.stringify({ type: 'FeatureCollection', features })
  const at = (...coordinates: number[]) => ({ type: 'Point', coordinates })

  it('levels may be a property; lines become breaklines and a polygon the boundary', async () => {
    const read = await understoodText(
      text([
        feature(at(500_000, 200_000), { elevation: '12.5', name: 'A' }),
        feature(at(500_010, 200_000), { elevation: 13 }),
        feature(at(500_000, 200_010), { elevation: 14 }),
        feature(at(500_001, 200_001)),
        feature(
          {
            type: 'LineString',
            coordinates: [
              [500_000, 200_000, 1],
              [500_010, 200_010, 2],
            ],
          },
          { kind: 'top of bank' },
        ),
        feature({
          type: 'Polygon',
          coordinates: [
            [
              [500_000, 200_000],
              [500_010, 200_000],
              [500_010, 200_010],
              [500_000, 200_000],
            ],
          ],
        }),
      ]),
    )
    const part = read.parts[0]
    expect(part?.points.map(({ levelM }) => levelM)).toEqual([12.5, 13, 14])
    expect(part?.breaklines[0]).toMatchObject({ kind: 'top', vertices: [{ levelM: 1 }, { levelM: 2 }] })
    expect(part?.boundary?.length).toBe(3)
    expect(read.unit).toBeUndefined()
    expect(read.notes.join(' ')).toContain('Points without a level were left out: 1')
  })

  it('the outer ring of a polygon is the boundary (RFC 7946 section 3.1.6); holes are told, not lost in silence', async () => {
    const square = (from: number, to: number) => [
      [from, from],
      [to, from],
      [to, to],
      [from, to],
      [from, from],
    ]
    const read = await understoodText(
      text([
        feature(at(1, 1, 5)),
        feature(at(90, 2, 6)),
        feature(at(3, 80, 7)),
        feature({ type: 'Polygon', coordinates: [square(0, 100), square(40, 60)] }),
      ]),
    )
    expect(read.parts[0]?.boundary).toEqual([
      { eastM: 0, northM: 0 },
      { eastM: 100, northM: 0 },
      { eastM: 100, northM: 100 },
      { eastM: 0, northM: 100 },
    ])
    expect(read.notes.join(' ')).toContain('Holes of polygons were left out, 1 of them')
  })

  it('degrees that would span a county are asked about, and can be lengths', async () => {
    const read = await understoodText(
      text([feature(at(0, 0, 1)), feature(at(20, 0, 2)), feature(at(0, 30, 3))]),
    )
    expect(read.doubts.map(({ about }) => about)).toContain('crs')
    const made = groundOf(read, { partIds: ['points'], unit: 'm', inDegrees: false })
    expect(made.ok && made.value.ground.kind === 'levels' && made.value.ground.points[1]).toMatchObject({
      eastM: 20,
    })
  })

  it('hostile names are names, and broken files are told', async () => {
    const read = await understoodText(
      `{"type":"FeatureCollection","__proto__":{"z":1},"features":[${[0, 1, 2].map((row) => `{"type":"Feature","properties":{"__proto__":5,"name":"__proto__"},"geometry":{"type":"Point","coordinates":[${row},0.0${row},${row}]}}`).join()}]}`,
    )
    expect(read.parts[0]?.points[0]?.mark).toBe('__proto__')
    expect(await wrongWith('{"type":"FeatureCollection","features":[')).toContain('no complete JSON')
    expect(await wrongWith('{"type":"Point","coordinates":["a",2,3]}')).toContain('not numbers')
  })
})
