import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { directLight, standingOf, type Thing } from '#core/shade'
import { directionTo } from '#core/sun'
import { cellCentre } from '#core/geometry'
import { loadTables } from '#io'

const tables = loadTables().shade

/** Level ground of 40 by 40 cells of a metre around the origin, at 0 m. */
const frame = { columns: 40, rows: 40, cellM: 1, westM: -20, southM: -20 }
const ground = { frame, levelM: new Float64Array(1600), share: new Float64Array(1600).fill(1) }

interface House {
  readonly lengthM: number
  readonly widthM: number
  readonly turnDeg: number
  readonly eavesM: number
  readonly ridgeM: number
}

/** A house around the origin. */
function houseOf({ lengthM, widthM, turnDeg, eavesM, ridgeM }: House): Thing {
  const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)]
  const corners = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([along = 0, aside = 0]) => {
    const [x, y] = [(along * lengthM) / 2, (aside * widthM) / 2]
    return { eastM: x * cos - y * sin, northM: x * sin + y * cos }
  })
  return { id: 'house', kind: 'house', name: 'House', ring: corners, heightM: eavesM, ridgeM }
}

/**
 * How far the ray from a place on the ground to the sun runs through the body of the house [m of plan distance]; below 0
 * how far it misses. The body is what lies between its walls and below both planes of its roof: each bounds the ray on
 * one side.
 */
function insideM(house: House, at: { eastM: number; northM: number }, sun: Sun): number {
  const { lengthM, widthM, turnDeg, eavesM, ridgeM } = house
  const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)]
  const along = { from: at.eastM * cos + at.northM * sin, per: sun.east * cos + sun.north * sin }
  const aside = { from: at.northM * cos - at.eastM * sin, per: sun.north * cos - sun.east * sin }
  const roofRise = (ridgeM - eavesM) / (widthM / 2)
  let [enters, leaves] = [0, Infinity]
  // Keeps the part of the ray on which from + per x t is 0 or less.
  const below = (from: number, per: number) => {
    if (per > 0) leaves = Math.min(leaves, -from / per)
    else if (per < 0) enters = Math.max(enters, -from / per)
    else if (from > 0) leaves = -Infinity
  }
  for (const side of [1, -1]) {
    below(side * along.from - lengthM / 2, side * along.per)
    below(side * aside.from - widthM / 2, side * aside.per)
    below(side * roofRise * aside.from - ridgeM, side * roofRise * aside.per + sun.rise)
  }
  return leaves - enters
}

/** A direction in plan, of length 1, and the rise of the light over plan distance. */
interface Sun {
  readonly east: number
  readonly north: number
  readonly rise: number
}

/** Rays that pass the body by less than this, or cut off less, are not asked [m]: cells are compared, not roundings. */
const GRAZING_M = 1e-6

const houses = fc.record({
  lengthM: fc.double({ min: 8, max: 16, noNaN: true }),
  widthM: fc.double({ min: 4, max: 7.5, noNaN: true }),
  turnDeg: fc.double({ min: 0, max: 180, noNaN: true }),
  eavesM: fc.double({ min: 1, max: 6, noNaN: true }),
  ridgeM: fc.double({ min: 6.1, max: 12, noNaN: true }),
})

const azimuths = fc.double({ min: 0, max: 360, noNaN: true })
const altitudes = fc.double({ min: 3, max: 75, noNaN: true })

describe('a house with a ridge', () => {
  it('throws the shadow of its whole body, roof and all (exact geometry: a ray through a solid)', () => {
    let compared = 0
    fc.assert(
      fc.property(houses, azimuths, altitudes, (house, azimuthDeg, altitudeDeg) => {
        const direction = directionTo(azimuthDeg, altitudeDeg)
        const level = Math.hypot(direction.east, direction.north)
        const sun = {
          east: direction.east / level,
          north: direction.north / level,
          rise: direction.up / level,
        }
        const standing = standingOf([houseOf(house)], ground, tables, 48)
        const light = directLight({ ground, standing, far: [] }, direction, 5)
        const wrong: number[] = []
        for (let cell = 0; cell < light.length; cell += 1) {
          const at = cellCentre(frame, cell)
          const through = insideM(house, at, sun)
          // Under its own roof there is no ground to light.
          if (insideHouse(house, at) || Math.abs(through) < GRAZING_M) continue
          compared += 1
          if (light[cell] !== (through > 0 ? 0 : 1)) wrong.push(cell)
        }
        expect(wrong).toEqual([])
      }),
      { numRuns: 60, seed: 20261125 },
    )
    expect(compared).toBeGreaterThan(20_000)
  })
})

function insideHouse({ lengthM, widthM, turnDeg }: House, at: { eastM: number; northM: number }): boolean {
  const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)]
  const along = at.eastM * cos + at.northM * sin
  const aside = at.northM * cos - at.eastM * sin
  return Math.abs(along) <= lengthM / 2 && Math.abs(aside) <= widthM / 2
}
