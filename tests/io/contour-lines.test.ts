import { describe, expect, it } from 'vitest'
import { z } from 'zod'
import { contoursOf, terrainOf } from '#core/terrain'
import { contoursGeoJson } from '#io'
import { plotSurface } from '#plan'
import { demo } from '../plan/plans'

const featureCollection = z.object({
  type: z.literal('FeatureCollection'),
  note: z.string(),
  features: z.array(
    z.object({
      type: z.literal('Feature'),
      properties: z.object({ levelM: z.number(), main: z.boolean() }),
      geometry: z.object({
        type: z.literal('LineString'),
        coordinates: z.array(z.tuple([z.number(), z.number()])).min(2),
      }),
    }),
  ),
})

describe('contours as GeoJSON', () => {
  it('RFC 7946 section 3: a collection of line features of two places or more, which says that it is in metres', () => {
    const surfaced = plotSurface(demo('bank-below-the-house'))
    if (!surfaced.ok) throw new Error('the demo has a surface')
    const surface = surfaced.value
    const read = featureCollection.parse(
      JSON.parse(contoursGeoJson(contoursOf(surface, terrainOf(surface), 0.5), 0.5)),
    )
    expect(read.note).toContain('metres')
    expect(read.features.length).toBeGreaterThan(5)
    for (const { properties } of read.features) {
      expect((properties.levelM * 2) % 1).toBe(0)
      expect(properties.main).toBe(properties.levelM % 2.5 === 0)
    }
  })
})
