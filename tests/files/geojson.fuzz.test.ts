import fc from 'fast-check'
import { expect, it } from 'vitest'
import { broken } from './fuzz-bytes'
import { FUZZ_RUNS, hostile, survives } from './fuzz-check'

const seeds = [
  '{"type":"FeatureCollection","features":[{"type":"Feature","properties":{"name":"A","z":3},"geometry":{"type":"Point","coordinates":[-1.5,50.9]}},{"type":"Feature","properties":{},"geometry":{"type":"LineString","coordinates":[[1,2,3],[4,5,6],[7,9,8]]}},{"type":"Feature","properties":null,"geometry":{"type":"Polygon","coordinates":[[[0,0],[1,0],[1,1],[0,0]]]}}]}',
  '{"type":"MultiPoint","crs":{"type":"name","properties":{"name":"EPSG:27700"}},"coordinates":[[432100,114200,10],[432110,114200,11],[432100,114210,12]]}',
]

it(
  'GeoJSON: 20,000 malformed files give a plain problem or a right result',
  { timeout: 60_000 },
  async () => {
    const leaf = fc.oneof(
      fc.double(),
      fc.constantFrom<unknown>(...hostile, null, true, [], {}, 1e308, -1e308),
      fc.array(fc.double(), { maxLength: 4 }),
    )
    const geometry = fc.record(
      {
        type: fc.constantFrom(
          'Point',
          'MultiPoint',
          'LineString',
          'Polygon',
          'MultiPolygon',
          'GeometryCollection',
          '__proto__',
        ),
        coordinates: fc.oneof(
          leaf,
          fc.array(fc.oneof(leaf, fc.array(leaf, { maxLength: 4 })), { maxLength: 5 }),
        ),
        geometries: leaf,
      },
      { requiredKeys: ['type'] },
    )
    const feature = fc.record({
      type: fc.constantFrom('Feature', 'feature', 7),
      properties: fc.oneof(
        leaf,
        fc.dictionary(fc.constantFrom('z', 'name', '__proto__', 'level', 'constructor'), leaf),
      ),
      geometry: fc.oneof(geometry, leaf),
    })
    const typed = fc
      .record({
        type: fc.constantFrom('FeatureCollection', 'x'),
        crs: leaf,
        features: fc.oneof(fc.array(feature, { maxLength: 5 }), leaf),
      })
      .map((value) => new TextEncoder().encode(JSON.stringify(value)))
    await fc.assert(fc.asyncProperty(fc.oneof(broken(seeds), typed), survives), {
      numRuns: FUZZ_RUNS,
      seed: 32,
    })
    expect.hasAssertions()
  },
)
