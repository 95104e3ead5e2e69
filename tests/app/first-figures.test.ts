import { describe, expect, it } from 'vitest'
import { loadTables } from '#io'
import { firstFigures } from '../../src/app/drawing/what-numbers-tell'
import { obliqueBank } from '../../src/app/drawing/oblique-bank'

const { machines } = loadTables().care.cover
const bank = { lengthM: 5, riseM: 3, widthM: 10, facesDeg: 180, latitudeDeg: 50 }

describe('what four numbers tell', () => {
  it('Euclid I.47: 5 m down and 3 m up run 4 m along, at 36.87°', () => {
    const told = firstFigures(bank, machines)
    expect(told.slopeDeg).toBeCloseTo(36.87, 2)
    expect(told.runPerRise).toBeCloseTo(4 / 3, 9)
    expect([told.slopeAreaM2, told.planAreaM2]).toEqual([50, 40])
  })

  it('the sun does not set on level ground at 70° north at midsummer, nor rise at midwinter', () => {
    const told = firstFigures({ ...bank, riseM: 0, latitudeDeg: 70 }, machines)
    expect(told.midsummerHours).toBeCloseTo(24, 0)
    expect(told.midwinterHours).toBe(0)
  })

  it('a bank facing south at 35° south has its midsummer in December', () => {
    const north = firstFigures({ ...bank, facesDeg: 0, latitudeDeg: -35 }, machines)
    expect(north.midsummerHours).toBeGreaterThan(north.midwinterHours)
  })

  it('the steeper the bank, the fewer machines may go there', () => {
    const counts = [0, 1, 2, 3, 4].map((riseM) => firstFigures({ ...bank, riseM }, machines).mayMow.length)
    expect(counts).toEqual([...counts].sort((one, other) => other - one))
    expect(counts.at(-1)).toBe(0)
  })
})

describe('the oblique drawing', () => {
  it.each([
    [0.5, 0.1, 0.5],
    [7.2, 2.4, 11],
    [200, 5, 3],
    [3, 2.9, 400],
  ])('of %f m long, %f m high, %f m wide stays on its sheet', (lengthM, riseM, widthM) => {
    const drawn = obliqueBank({ lengthM, riseM, widthM }, 800, 430)
    const places = [...drawn.topFlat, ...drawn.face, ...drawn.footFlat, ...drawn.body, ...drawn.end]
    expect(drawn.heightPx).toBeLessThanOrEqual(431)
    for (const { xPx, yPx } of places) {
      expect(xPx).toBeGreaterThanOrEqual(0)
      expect(xPx).toBeLessThanOrEqual(800)
      expect(yPx).toBeGreaterThanOrEqual(0)
      expect(yPx).toBeLessThanOrEqual(drawn.heightPx)
    }
  })
})
