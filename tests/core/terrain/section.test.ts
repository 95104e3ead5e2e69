import { describe, expect, it } from 'vitest'
import { surfaceFrom, type Surface } from '#core/survey'
import { cutSections, sectionProblem, terrainOf } from '#core/terrain'
import { surfaceOf } from './grids'
import { volcanoSurface } from './volcano'

function bank(facesDeg: number): Surface {
  const outcome = surfaceFrom({ kind: 'bank', lengthM: 13, riseM: 5, facesDeg, widthM: 30 })
  if (!outcome.ok) throw new Error('a plain bank must do')
  return outcome.value
}

describe('section', () => {
  it.each([0, 75, 180, 222])(
    'exact solution: a bank facing %i° is cut straight down its fall',
    (facesDeg) => {
      const { section } = terrainOf(bank(facesDeg))
      const faces = (facesDeg * Math.PI) / 180
      expect(section.lengthM).toBeCloseTo(12, 9)
      expect(section.from.eastM).toBeCloseTo(-6 * Math.sin(faces), 9)
      expect(section.from.northM).toBeCloseTo(-6 * Math.cos(faces), 9)
      expect(section.stations[0]?.distanceM).toBe(0)
      expect(section.stations.at(-1)?.distanceM).toBeCloseTo(12, 9)
      for (const station of section.stations)
        expect(station.levelM).toBeCloseTo(5 - (5 / 12) * station.distanceM, 9)
    },
  )

  it('property: stations lie about a cell apart, at most 401, on ground of the plot', () => {
    for (const surface of [bank(33), volcanoSurface()]) {
      const { section } = terrainOf(surface)
      expect(section.stations.length).toBeLessThanOrEqual(401)
      const stepM = (section.stations[1]?.distanceM ?? NaN) - (section.stations[0]?.distanceM ?? NaN)
      expect(stepM / surface.frame.cellM).toBeGreaterThan(0.6)
      expect(stepM / surface.frame.cellM).toBeLessThan(1.7)
      for (const { cell } of section.stations) expect(surface.share[cell]).toBeGreaterThan(0)
    }
  })

  it('exact solution: a wished line is clipped to the plot and starts at its higher end', () => {
    const plane = surfaceOf({ columns: 10, rows: 20, cellM: 1 }, (_eastM, northM) => 10 + 0.5 * northM)
    const { section } = terrainOf(plane, { from: { eastM: 2, northM: -50 }, to: { eastM: 2, northM: 4 } })
    expect(section.from).toEqual({ eastM: 2, northM: 4 })
    expect(section.to.northM).toBeCloseTo(-10, 9)
    expect(section.stations[0]?.levelM).toBeCloseTo(12, 9)
    expect(section.stations.at(-1)?.levelM).toBeCloseTo(5, 9)
  })

  it('refuses a line that misses the plot, and says how to mend it', () => {
    const line = { from: { eastM: 900, northM: 0 }, to: { eastM: 900, northM: 10 } }
    expect(() => terrainOf(bank(0), line)).toThrow(RangeError)
    expect(sectionProblem(bank(0), line)?.where).toBe('survey.sectionLine')
    expect(
      sectionProblem(bank(0), { from: { eastM: 0, northM: 9 }, to: { eastM: 0, northM: -9 } }),
    ).toBeUndefined()
  })

  it('exact solution: a plot bent round its centre is cut through the ground nearest to that centre', () => {
    const hook = surfaceOf({ columns: 20, rows: 20, cellM: 1 }, (eastM, northM) =>
      eastM > -6 && northM > -6 ? null : 10 + 0.1 * northM,
    )
    const { section } = terrainOf(hook)
    for (const { cell, levelM, northM } of section.stations) {
      expect(hook.share[cell]).toBe(1)
      expect(levelM).toBeCloseTo(10 + 0.1 * northM, 9)
    }
    expect(section.from.northM).toBeGreaterThan(section.to.northM)
  })

  it('exact solution: level ground is cut from north to south', () => {
    const { section } = terrainOf(surfaceOf({ columns: 6, rows: 8, cellM: 1 }, () => 3))
    expect(section.from.northM).toBeCloseTo(4, 9)
    expect(section.lengthM).toBeCloseTo(8, 9)
  })
})

describe('further sections', () => {
  const plane = surfaceOf({ columns: 10, rows: 20, cellM: 1 }, (_eastM, northM) => 10 + 0.5 * northM)

  it('exact solution: a plane is cut along any line, the higher end first', () => {
    const terrain = terrainOf(plane)
    const [down, across] = cutSections(plane, terrain, [
      { from: { eastM: 1, northM: -50 }, to: { eastM: 1, northM: 4 } },
      { from: { eastM: -9, northM: 2 }, to: { eastM: 9, northM: 2 } },
    ])
    for (const { levelM, northM, slopeDeg } of [...(down?.stations ?? []), ...(across?.stations ?? [])]) {
      expect(levelM).toBeCloseTo(10 + 0.5 * northM, 9)
      expect(slopeDeg).toBeCloseTo((Math.atan(0.5) * 180) / Math.PI, 9)
    }
    expect(down?.from.northM).toBe(4)
    expect(across?.lengthM).toBeCloseTo(10, 9)
  })

  it('property: the main line cut again gives the main section again', () => {
    const surface = volcanoSurface()
    const terrain = terrainOf(surface)
    const [again] = cutSections(surface, terrain, [terrain.section])
    again?.stations.forEach(({ levelM }, at) =>
      expect(levelM).toBeCloseTo(terrain.section.stations[at]?.levelM ?? NaN, 6),
    )
    expect(again?.stations.length).toBe(terrain.section.stations.length)
  })

  it('a line that misses the plot gives none', () => {
    const aside = { from: { eastM: 900, northM: 0 }, to: { eastM: 900, northM: 10 } }
    expect(cutSections(plane, terrainOf(plane), [aside])).toEqual([undefined])
  })
})
