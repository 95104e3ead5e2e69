import { describe, expect, it } from 'vitest'
import { climateOfPlace } from '#core/climate'
import { textureClasses } from '#core/soil'
import { assessSpot, usualSoil, type Spot } from '#plan'
import { loadTables } from '../../src/io/tables'

const tables = loadTables()

function spot(
  change: Partial<Spot> & { readonly texture?: (typeof textureClasses)[number] },
  placeId: string,
): Spot {
  const place = tables.places.find(({ id }) => id === placeId)
  if (!place) throw new Error(`${placeId} must be listed`)
  const { texture = 'loam', ...rest } = change
  return {
    id: 'one',
    latitudeDeg: place.latitudeDeg,
    elevationM: place.elevationM,
    slopeDeg: 20,
    aspectDeg: 90,
    position: 0.5,
    formDown: 'straight',
    formAcross: 'straight',
    soil: { id: 'one', name: 'one', texture: { by: 'class', class: texture }, ...usualSoil },
    climate: climateOfPlace(place),
    plantRegion: 'europe',
    legalRegion: undefined,
    ...rest,
  }
}

const wetness = (one: Spot) => assessSpot(one, tables).scores.wetness.ours
const sun = (one: Spot) => assessSpot(one, tables).scores.sun.ours

const north = ['london', 'bergen', 'madrid', 'minneapolis', 'chicago', 'los-angeles'] as const
const south = ['melbourne', 'wellington', 'cape-town', 'buenos-aires'] as const

describe.each([...north, ...south])('a place near %s', (place) => {
  it.each(textureClasses)('common practice, no source: on %s the crest is drier than the foot', (texture) => {
    for (const slopeDeg of [5, 20, 35]) {
      const at = (position: number) => wetness(spot({ texture, slopeDeg, position }, place))
      const down = [0.9, 0.7, 0.5, 0.3, 0.1].map(at)
      expect(down[0]).toBeLessThan(down[4] ?? 0)
      down.slice(1).forEach((wet, index) => expect(wet).toBeGreaterThanOrEqual(down[index] ?? 0))
    }
  })

  it.each(textureClasses)(
    'common practice, no source: on %s the slope facing the midday sun is sunnier and drier',
    (texture) => {
      const midday = (south as readonly string[]).includes(place) ? 0 : 180
      const facing = spot({ texture, aspectDeg: midday }, place)
      const away = spot({ texture, aspectDeg: 180 - midday }, place)
      expect(sun(facing)).toBeGreaterThan(sun(away))
      expect(wetness(facing)).toBeLessThan(wetness(away))
    },
  )

  it('common practice, no source: sand is drier than clay', () => {
    for (const position of [0.1, 0.5, 0.9])
      expect(wetness(spot({ texture: 'sand', position }, place))).toBeLessThan(
        wetness(spot({ texture: 'clay', position }, place)),
      )
  })

  it('common practice, no source: a hollow is no drier than a nose', () => {
    const hollow = spot({ formDown: 'concave', formAcross: 'concave' }, place)
    const nose = spot({ formDown: 'convex', formAcross: 'convex' }, place)
    expect(wetness(hollow)).toBeGreaterThan(wetness(nose))
  })
})

describe('a place', () => {
  it('needs no direction on level ground, and the direction makes no difference there', () => {
    const level = assessSpot(spot({ slopeDeg: 0, aspectDeg: undefined }, 'london'), tables)
    expect(assessSpot(spot({ slopeDeg: 0, aspectDeg: 200 }, 'london'), tables).scores).toEqual(level.scores)
  })

  it('McCune & Keon 2002, equation 1 by hand: 45° N, 30° facing 225° has a heat load of 0.941', () => {
    // exp(-1.467 + 1.582 cos45 cos30 - 1.5 cos180 sin30 sin45 - 0.262 sin45 sin30 + 0.607 sin180 sin30)
    const { heatLoad } = assessSpot(spot({ latitudeDeg: 45, slopeDeg: 30, aspectDeg: 225 }, 'lyon'), tables)
    expect(heatLoad).toBeCloseTo(Math.exp(-1.467 + 0.96877 + 0.53033 - 0.09263), 4)
  })

  it('McCune & Keon 2002: there is no heat load beyond 60° of latitude', () => {
    expect(assessSpot(spot({ latitudeDeg: 60.4 }, 'bergen'), tables).heatLoad).toBeUndefined()
  })

  it('books every score', () => {
    const { scores } = assessSpot(spot({}, 'london'), tables)
    for (const { account, ours } of Object.values(scores))
      expect(account.lines.reduce((sum, { amount }) => sum + amount, 0)).toBe(ours)
  })
})
