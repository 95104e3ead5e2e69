import { cellCentre, distanceToSegmentM, pointInRing, ringAreaM2, sides } from '#core/geometry'
import { surfaceFrom, type GroundSurvey } from '#core/survey'
import { terrainOf } from '#core/terrain'
import { eachMonth } from '#core/units'
import {
  mergeZones,
  splitZone,
  zoneProblems,
  zoningOf,
  zonesFromSuggestion,
  type Zoning,
  type ZoningInput,
} from '#core/zones'
import { describe, expect, it } from 'vitest'
import { season } from './ground'

const sum = (values: readonly number[]) => values.reduce((so, value) => so + value, 0)

/** Ground as the person surveys it, with the same sun everywhere. */
function zoned(survey: GroundSurvey): { input: ZoningInput; zoning: Zoning } {
  const surface = surfaceFrom(survey)
  if (!surface.ok) throw new Error(JSON.stringify(surface.problems))
  const flat = () => new Float32Array(surface.value.share.length)
  const input = {
    surface: surface.value,
    terrain: terrainOf(surface.value),
    sunHours: eachMonth(() => flat().fill(9)),
    sunRatio: eachMonth(() => flat().fill(1)),
    season,
  }
  return { input, zoning: zoningOf(input, []) }
}

const bank = (facesDeg: number): GroundSurvey => ({
  kind: 'bank',
  lengthM: 12,
  riseM: 5,
  facesDeg,
  widthM: 20,
})
const slopeDeg = (Math.asin(5 / 12) * 180) / Math.PI

describe.each([0, 33, 90, 200, 315])('a bank of four numbers that faces %f°', (facesDeg) => {
  const { input, zoning } = zoned(bank(facesDeg))
  const { zones, zoneOfCell } = zoning

  it('exact solution: slope areas add up to taped length times width, plan areas to that times the cosine', () => {
    expect(zones).toHaveLength(3)
    expect(sum(zones.map(({ slopeAreaM2 }) => slopeAreaM2)) / 240).toBeCloseTo(1, 6)
    expect(
      sum(zones.map(({ planAreaM2 }) => planAreaM2)) / (240 * Math.cos((slopeDeg * Math.PI) / 180)),
    ).toBeCloseTo(1, 6)
    for (const zone of zones) {
      expect(zone.slopeDegMean).toBeCloseTo(slopeDeg, 4)
      const turnDeg = ((((zone.aspectDeg ?? NaN) - facesDeg + 180) % 360) + 360) % 360
      expect(turnDeg).toBeCloseTo(180, 3)
      // A third of the bank, to a cell's width at each end.
      expect(Math.abs(zone.planAreaM2 - 80 * Math.cos((slopeDeg * Math.PI) / 180))).toBeLessThan(20 * 0.5)
    }
  })

  it('exact solution: water passes from zone to zone and gathers on the way', () => {
    const [upper, middle, foot] = zones
    expect(upper?.handsOn.map(({ to }) => to)).toEqual([middle?.id])
    expect(middle?.handsOn.map(({ to }) => to)).toEqual([foot?.id])
    expect(foot?.handsOn).toEqual([])
    expect((middle?.upslopeAreaM2 ?? 0) / (upper?.planAreaM2 ?? 0)).toBeCloseTo(1, 1)
    expect((foot?.upslopeAreaM2 ?? 0) / ((upper?.planAreaM2 ?? 0) + (middle?.planAreaM2 ?? 0))).toBeCloseTo(
      1,
      1,
    )
  })

  it('exact solution: outlines fill the boundary without gap or overlap', () => {
    expect(sum(zones.map(({ ring }) => ringAreaM2(ring)))).toBeCloseTo(ringAreaM2(input.surface.boundary), 6)
  })

  it('Douglas and Peucker 1973: no cell lies farther outside its outline than the tolerance', () => {
    const { frame } = input.surface
    const farthestM = (1.5 + Math.SQRT1_2) * frame.cellM
    zoneOfCell.forEach((zone, cell) => {
      const ring = zones[zone]?.ring
      const centre = cellCentre(frame, cell)
      if (!ring || pointInRing(centre, ring)) return
      const gapM = Math.min(...sides(ring).map(([from, to]) => distanceToSegmentM(centre, from, to)))
      expect(gapM).toBeLessThanOrEqual(farthestM)
    })
  })

  it('the section passes through all zones from edge to edge', () => {
    const spans = zones.flatMap((zone) => zone.spans)
    expect(spans[0]?.fromM).toBe(0)
    expect(spans.at(-1)?.toM).toBeCloseTo(input.terrain.section.lengthM, 9)
    expect(spans.slice(1).map(({ fromM }) => fromM)).toEqual(spans.slice(0, -1).map(({ toM }) => toM))
  })

  it('zones taken over from the suggestion stand without a problem and hold the whole plot', () => {
    const taken = zonesFromSuggestion(zoning)
    if (!taken.ok) throw new Error('nothing to take over')
    expect(zoneProblems(input.surface, taken.value)).toEqual([])
    const again = zoningOf(input, taken.value)
    expect(again.zones.map(({ id, name }) => [id, name])).toEqual(zones.map(({ id, name }) => [id, name]))
    expect(sum(again.zones.map(({ planAreaM2 }) => planAreaM2))).toBeCloseTo(
      sum(zones.map(({ planAreaM2 }) => planAreaM2)),
      9,
    )
  })
})

it('common practice, no source: a surveyed slope of faces and shelves is zoned by them, each face whole', () => {
  const { zoning } = zoned({
    kind: 'profile',
    distancesAre: 'plan',
    facesDeg: 160,
    widthM: 20,
    stations: [
      { distanceM: 0, levelM: 20 },
      { distanceM: 6, levelM: 19.6 },
      { distanceM: 14, levelM: 15 },
      { distanceM: 20, levelM: 14.5 },
      { distanceM: 26, levelM: 11 },
      { distanceM: 34, levelM: 10.8 },
    ],
  })
  expect(zoning.zones.map(({ name }) => name)).toEqual([
    'Crest',
    'Steep face, higher',
    'Shelf',
    'Steep face, lower',
    'Foot',
  ])
  const ends = zoning.zones.map(({ spans }) => spans.at(-1)?.toM ?? NaN)
  for (const [index, distanceM] of [6, 14, 20, 26, 34].entries())
    expect(Math.abs((ends[index] ?? NaN) - distanceM)).toBeLessThanOrEqual(1)
})

it('common practice, no source: a round hill has sides that face different ways, named by them', () => {
  const { zoning } = zoned({
    kind: 'levels',
    points: Array.from({ length: 400 }, (_, at) => {
      const eastM = (at % 20) * 4
      const northM = Math.floor(at / 20) * 4
      return { eastM, northM, levelM: 20 - 0.01 * ((eastM - 38) ** 2 + (northM - 38) ** 2) }
    }),
  })
  const { zones } = zoning
  expect(zones.length).toBeLessThanOrEqual(8)
  expect(new Set(zones.map(({ name }) => name)).size).toBe(zones.length)
  expect(sum(zones.map(({ planAreaM2 }) => planAreaM2))).toBeCloseTo(76 * 76, 6)
  for (const zone of zones) expect(sum(zone.handsOn.map(({ share }) => share))).toBeLessThanOrEqual(1 + 1e-9)
})

it('exact solution: on rough ground too, joined neighbours hold the area of both, and a split keeps it', () => {
  const { zoning } = zoned({
    kind: 'levels',
    points: Array.from({ length: 900 }, (_, at) => {
      const eastM = (at % 30) * 2
      const northM = Math.floor(at / 30) * 2
      return { eastM, northM, levelM: 0.2 * northM + 3 * Math.sin(eastM / 8) + 1.5 * Math.cos(northM / 7) }
    }),
  })
  const taken = zonesFromSuggestion(zoning)
  if (!taken.ok) throw new Error('nothing to take over')
  const areaM2 = sum(taken.value.map(({ ring }) => ringAreaM2(ring)))
  expect(areaM2).toBeCloseTo(58 * 58, 6)
  let joined = 0
  for (const one of taken.value)
    for (const other of taken.value) {
      const merged = mergeZones(taken.value, [one.id, other.id])
      if (!merged.ok) continue
      joined++
      expect(sum(merged.value.map(({ ring }) => ringAreaM2(ring)))).toBeCloseTo(areaM2, 6)
    }
  expect(joined).toBeGreaterThanOrEqual(2 * (taken.value.length - 1))
  for (const zone of taken.value) {
    const corner = zone.ring[0] ?? { eastM: 0, northM: 0 }
    const split = splitZone(taken.value, zone.id, [corner, { eastM: 29.3, northM: 28.1 }])
    if (split.ok) expect(sum(split.value.map(({ ring }) => ringAreaM2(ring)))).toBeCloseTo(areaM2, 6)
  }
})
