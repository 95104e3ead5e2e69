import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PlanPoint } from '#core/geometry'
import {
  coveredRise,
  directLight,
  sunOnGround,
  type Crown,
  type Screen,
  type Shading,
  type Standing,
} from '#core/shade'
import { directionTo } from '#core/sun'
import { eachMonth } from '#core/units'
import { centre, crown, oneCell, planeGround, rad, screen, thing } from './things-scenes'

/** A square plot about the plan's origin. */
const side = 24
const frame = { columns: side, rows: side, cellM: 1, westM: -side / 2, southM: -side / 2 }
const cells = Array.from({ length: side * side }, (_, cell) => cell)

/** Numbers that never fall on a cell's centre or on each other: a tie between light and shade has no answer. */
const metres = (from: number, to: number) =>
  fc
    .integer({ min: Math.ceil(from / UNEVEN), max: Math.floor(to / UNEVEN) - 1 })
    .map((count) => UNEVEN * (count + 0.3137))
const UNEVEN = 0.017_320_508
const place = fc.tuple(metres(-14, 14), metres(-14, 14))
const through = fc.oneof(fc.constant(0), metres(0.05, 0.95))
const screenThing = fc
  .tuple(fc.array(place, { minLength: 2, maxLength: 5 }), metres(0.5, 8), metres(-1, 3), through)
  .map(([corners, topM, rises, share]) =>
    thing(
      {
        screens: corners
          .slice(1)
          .map((corner, at) => screen(corners[at]!, corner, topM + at * rises, topM + (at + 1) * rises)),
      },
      share,
    ),
  )
const crownThing = fc
  .tuple(place, metres(0.5, 5), metres(-1, 5), metres(0.2, 8), through)
  .map(([at, radiusM, baseM, highM, share]) =>
    thing({ crowns: [crown(at, radiusM, baseM, baseM + highM)] }, share),
  )
const standing = fc.array(fc.oneof(screenThing, crownThing), { minLength: 1, maxLength: 4 })
const sun = fc.record({ azimuthDeg: metres(0.5, 359.5), altitudeDeg: metres(2, 89) })
const slope = fc.record({ slopeDeg: metres(0, 15), aspectDeg: metres(0, 359) })

function lightOf(shading: Shading, { azimuthDeg, altitudeDeg }: { azimuthDeg: number; altitudeDeg: number }) {
  return directLight(shading, directionTo(azimuthDeg, altitudeDeg), 5)
}

/** Furthest that two grids lie apart anywhere. */
function furthest(one: Float32Array, other: Float32Array): number {
  return Math.max(...one.map((value, cell) => Math.abs(value - other[cell]!)))
}

/** The same things turned clockwise about the plan's origin. */
function turned(things: readonly Standing[], byDeg: number): readonly Standing[] {
  const [sine, cosine] = [Math.sin(rad(byDeg)), Math.cos(rad(byDeg))]
  const point = ({ eastM, northM }: PlanPoint) => ({
    eastM: eastM * cosine + northM * sine,
    northM: northM * cosine - eastM * sine,
  })
  return things.map((each) => ({
    ...each,
    screens: each.screens.map((one): Screen => ({ ...one, from: point(one.from), to: point(one.to) })),
    crowns: each.crowns.map((one): Crown => ({ ...one, at: point(one.at) })),
  }))
}

describe('directLight past things: properties', () => {
  it('property: on each cell it is what coveredRise leaves of the ray to the sun, thing by thing', () => {
    const rise = { low: 0, high: 0 }
    fc.assert(
      fc.property(standing, sun, slope, (things, at, { slopeDeg, aspectDeg }) => {
        const { ground } = planeGround(frame, slopeDeg, aspectDeg)
        const open = lightOf({ ground, standing: [], far: [] }, at)
        const light = lightOf({ ground, standing: things, far: [] }, at)
        const ray = Math.tan(rad(at.altitudeDeg))
        for (const cell of cells) {
          const from = { ...centre(frame, cell), levelM: ground.levelM[cell]! }
          const expected = things.reduce((share, { screens, crowns, through: shares }) => {
            const hit = [...screens, ...crowns].some(
              (part) =>
                coveredRise(part, from, rad(at.azimuthDeg), rise) && ray > rise.low && ray < rise.high,
            )
            return hit ? share * shares[5] : share
          }, open[cell]!)
          if (Math.abs(light[cell]! - expected) > 1e-5) expect([cell, light[cell]]).toEqual([cell, expected])
        }
      }),
      { numRuns: 150 },
    )
  })

  it('property: turning plot, things and sun together by 90° turns the light, and nothing else', () => {
    fc.assert(
      fc.property(standing, sun, slope, (things, at, { slopeDeg, aspectDeg }) => {
        const { ground } = planeGround(frame, slopeDeg, aspectDeg)
        const light = lightOf({ ground, standing: things, far: [] }, at)
        const other = lightOf(
          {
            ground: planeGround(frame, slopeDeg, aspectDeg + 90).ground,
            standing: turned(things, 90),
            far: [],
          },
          { ...at, azimuthDeg: at.azimuthDeg + 90 },
        )
        const back = light.map(
          (_, cell) => light[(side - 1 - (cell % side)) * side + Math.floor(cell / side)]!,
        )
        expect(furthest(other, back)).toBeLessThan(1e-5)
      }),
      { numRuns: 100 },
    )
  })

  it('property: turning plot and things together by 90° turns the share of sky, and nothing else', () => {
    const site = { latitudeDeg: 45, elevationM: 0, linke: 3, albedo: 0.2 }
    const sky = { site, usual: eachMonth(() => ({ levelWhPerM2: 3000, diffuseShare: 0.5 })) }
    const viewOf = (things: readonly Standing[], slopeDeg: number, aspectDeg: number) => {
      const { ground, cells: tilted } = planeGround(frame, slopeDeg, aspectDeg)
      return sunOnGround({ ground, standing: things, far: [] }, tilted, sky).skyView
    }
    fc.assert(
      fc.property(standing, slope, (things, { slopeDeg, aspectDeg }) => {
        const view = viewOf(things, slopeDeg, aspectDeg)
        const other = viewOf(turned(things, 90), slopeDeg, aspectDeg + 90)
        const back = view.map((_, cell) => view[(side - 1 - (cell % side)) * side + Math.floor(cell / side)]!)
        expect(furthest(other, back)).toBeLessThan(1e-4)
      }),
      { numRuns: 25 },
    )
  })

  it('property: seen from one place, turning things and sun by any angle changes nothing', () => {
    const { ground } = planeGround(oneCell(0, 0))
    fc.assert(
      fc.property(standing, sun, metres(0, 360), (things, at, byDeg) => {
        const light = lightOf({ ground, standing: things, far: [] }, at)
        const other = lightOf(
          { ground, standing: turned(things, byDeg), far: [] },
          { ...at, azimuthDeg: at.azimuthDeg + byDeg },
        )
        expect(other[0]).toBeCloseTo(light[0]!, 6)
      }),
      { numRuns: 500 },
    )
  })

  it('property: lifting a screen’s top, thickening a crown or taking light from it never adds sun to any cell', () => {
    fc.assert(
      fc.property(standing, sun, metres(0.1, 3), slope, (things, at, moreM, { slopeDeg, aspectDeg }) => {
        const { ground } = planeGround(frame, slopeDeg, aspectDeg)
        const light = lightOf({ ground, standing: things, far: [] }, at)
        const bigger = things.map((each) => ({
          ...each,
          screens: each.screens.map((one) => ({
            ...one,
            topFromM: one.topFromM + moreM,
            topToM: one.topToM + moreM,
          })),
          crowns: each.crowns.map((one) => ({
            ...one,
            radiusM: one.radiusM + moreM,
            baseM: one.baseM - moreM,
            topM: one.topM + moreM,
          })),
        }))
        const denser = things.map((each) => ({
          ...each,
          through: eachMonth((month) => each.through[month] / 2),
        }))
        for (const others of [bigger, denser]) {
          const less = lightOf({ ground, standing: others, far: [] }, at)
          expect(Math.max(...less.map((share, cell) => share - light[cell]!))).toBeLessThan(1e-7)
        }
      }),
      { numRuns: 100 },
    )
  })

  it('property: what lets all light through changes nothing, and far hills take all or nothing', () => {
    const hills = fc.array(fc.record({ azimuthDeg: metres(0, 359), angleDeg: metres(0, 40) }), {
      maxLength: 5,
    })
    fc.assert(
      fc.property(standing, sun, hills, (things, at, far) => {
        const { ground } = planeGround(frame)
        const light = lightOf({ ground, standing: things, far: [] }, at)
        const clear = things.map((each) => ({ ...each, through: eachMonth(() => 1) }))
        expect(Math.min(...lightOf({ ground, standing: clear, far: [] }, at))).toBe(1)
        const past = lightOf({ ground, standing: things, far }, at)
        expect([light, light.map(() => 0)]).toContainEqual(past)
      }),
      { numRuns: 60 },
    )
  })
})
