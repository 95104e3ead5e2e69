import { describe, expect, it } from 'vitest'
import { cellCentre } from '#core/geometry'
import { seenFrom, terrainOf, type SightBlock } from '#core/terrain'
import { surfaceOf } from './grids'
import { hilly, squarePlot, turnedPlot, turnings } from './turned'

const size = { columns: 81, rows: 41, cellM: 1 }
const eye = (eastM: number, northM: number, eyeM: number) => ({
  id: 'seat',
  name: 'Seat',
  at: { eastM, northM },
  eyeM,
})

describe('what is seen from a place', () => {
  it('exact: all of a plane, whichever way it falls', () => {
    for (const rise of [0, 0.3, -0.2]) {
      const plane = surfaceOf(size, (e, n) => rise * e - 0.1 * n)
      const view = seenFrom(plane, terrainOf(plane), eye(-30.2, 4.4, 1.5), [])
      expect(view.seenShare).toBe(1)
      expect(view.eyeLevelM).toBeCloseTo(rise * -30.2 - 0.44 + 1.5, 9)
    }
  })

  it('exact, similar triangles: an eye 2 m up, 20 m from a ridge 1.5 m high, sees ground again from 80 m on', () => {
    // The line over the ridge falls 0.5 m in 20 m, so 2 m in 80 m, on every line of sight alike.
    const ridge = surfaceOf(size, (e) => (e === -20 ? 1.5 : 0))
    const view = seenFrom(ridge, terrainOf(ridge), eye(-40, 0, 2), [])
    view.seen.forEach((seen, cell) => {
      const { eastM } = cellCentre(ridge.frame, cell)
      if (eastM > -20 && eastM !== 40) expect([eastM, seen]).toEqual([eastM, eastM < 40 ? 0 : 1])
      if (eastM <= -20) expect([eastM, seen]).toEqual([eastM, 1])
    })
  })

  it('exact, similar triangles: a wall 1.2 m high, 10 m away, hides the 30 m behind it from an eye 1.6 m up', () => {
    const level = surfaceOf(size, () => 0)
    const wall: SightBlock = {
      name: 'Wall',
      isHouse: false,
      ring: [
        { eastM: -29.5, northM: -99 },
        { eastM: -29.5, northM: 99 },
      ],
      heightM: 1.2,
    }
    const view = seenFrom(level, terrainOf(level), eye(-39.5, 0.5, 1.6), [wall])
    view.seen.forEach((seen, cell) => {
      const { eastM } = cellCentre(level.frame, cell)
      // 1.6 m - 1.2 m in 10 m: the line comes down to the ground 40 m from the eye.
      expect([eastM, seen]).toEqual([eastM, eastM > -29.5 && eastM < 0.5 ? 0 : 1])
    })
    const unknown = seenFrom(level, terrainOf(level), eye(-39.5, 0.5, 1.6), [{ ...wall, heightM: undefined }])
    expect(unknown.seenShare).toBe(1)
    expect(unknown.withoutHeight).toEqual(['Wall'])
  })

  it('exact: a house hides its shadow of sight; the one looked out of hides only the ground under it', () => {
    const level = surfaceOf(size, () => 0)
    const house = (eastM: number): SightBlock => ({
      name: 'House',
      isHouse: true,
      ring: [
        { eastM: eastM - 3, northM: -3 },
        { eastM: eastM + 3, northM: -3 },
        { eastM: eastM + 3, northM: 3 },
        { eastM: eastM - 3, northM: 3 },
      ],
      heightM: 5,
    })
    const cellsHidden = (blocks: readonly SightBlock[]) => {
      const view = seenFrom(level, terrainOf(level), eye(-30.25, 0, 1.5), blocks)
      return [...view.seen.keys()]
        .filter((cell) => !view.seen[cell])
        .map((cell) => cellCentre(level.frame, cell))
    }
    const behind = cellsHidden([house(-10)])
    // Edges of the shadow run from the eye past the near corners, 3 m aside in 17.25 m.
    for (let cell = 0; cell < level.share.length; cell++) {
      const { eastM, northM } = cellCentre(level.frame, cell)
      const shadowed = eastM > -13 && Math.abs(northM) < ((eastM + 30.25) * 3) / 17.25
      const onEdge = eastM === -13 || Math.abs(Math.abs(northM) - ((eastM + 30.25) * 3) / 17.25) < 1e-6
      if (!onEdge)
        expect(behind.some((place) => place.eastM === eastM && place.northM === northM)).toBe(shadowed)
    }
    const under = cellsHidden([house(-31)])
    expect(under.length).toBeGreaterThan(20)
    expect(under.every(({ eastM, northM }) => Math.abs(eastM + 31) <= 3 && Math.abs(northM) <= 3)).toBe(true)
  })

  it('an eye beyond the boundary stands level with the nearest ground', () => {
    const plane = surfaceOf(size, (e) => 0.1 * e)
    const view = seenFrom(plane, terrainOf(plane), eye(45, 0, 1.6), [])
    expect(view.eyeLevelM).toBeCloseTo(5.6, 9)
  })

  it.each(turnings)('property: from a plot %s the same cells are seen, turned', (_name, turn) => {
    const at = { eastM: -8.2, northM: 6.7 }
    const [plain, other] = [squarePlot(31, hilly), turnedPlot(31, hilly, turn)]
    const seenAt = (plot: typeof plain, from: typeof at) => {
      const view = seenFrom(plot, terrainOf(plot), { ...eye(0, 0, 1.2), at: from }, [])
      return [...view.seen.keys()]
        .filter((cell) => view.seen[cell])
        .map((cell) => cellCentre(plot.frame, cell))
    }
    const own = seenAt(plain, at)
    expect(own.length).toBeLessThan(31 * 31)
    const name = (place: typeof at) => `${Math.round(place.eastM)} ${Math.round(place.northM)}`
    expect(seenAt(other, turn(at)).map(name).sort()).toEqual(own.map((place) => name(turn(place))).sort())
  })

  it('refuses an eye below the ground', () => {
    const plane = surfaceOf(size, () => 0)
    expect(() => seenFrom(plane, terrainOf(plane), eye(0, 0, -1), [])).toThrow(RangeError)
  })
})
