import { describe, expect, it } from 'vitest'
import { directionTo } from '#core/sun'
import { castShade } from '../../../src/core/shade/cast-shade'

const COLUMNS = 30
const ROWS = 24

/** An even slope that falls towards a bearing. */
function evenSlope(slopeDeg: number, aspectDeg: number) {
  const [rise, bearing] = [Math.tan((slopeDeg * Math.PI) / 180), (aspectDeg * Math.PI) / 180]
  const levelM = Float64Array.from({ length: COLUMNS * ROWS }, (_, cell) => {
    const [east, north] = [cell % COLUMNS, -Math.floor(cell / COLUMNS)]
    return 300 - rise * (east * Math.sin(bearing) + north * Math.cos(bearing))
  })
  return {
    frame: { columns: COLUMNS, rows: ROWS, cellM: 1, westM: 0, southM: 0 },
    levelM,
    share: new Float64Array(levelM.length).fill(1),
  }
}

describe('castShade', () => {
  it('exact geometry: an even slope throws no shadow on itself while the sun stands over its plane, border cells too', () => {
    for (const slopeDeg of [5, 18, 35])
      for (const aspectDeg of [0, 70, 180, 210, 305])
        for (let azimuthDeg = 3; azimuthDeg < 360; azimuthDeg += 17) {
          const gap = ((azimuthDeg - aspectDeg) * Math.PI) / 180
          // Rise of the plane itself towards the sun.
          const ownDeg = (Math.atan(-Math.tan((slopeDeg * Math.PI) / 180) * Math.cos(gap)) * 180) / Math.PI
          const lit = castShade(
            evenSlope(slopeDeg, aspectDeg),
            directionTo(azimuthDeg, Math.max(1, ownDeg + 1)),
          )
          expect(lit.every((share) => share === 1)).toBe(true)
        }
  })

  it('exact geometry: with the sun behind its plane all of it but the row that the light meets first is in shadow', () => {
    const lit = castShade(evenSlope(30, 0), directionTo(180, 20))
    lit.forEach((share, cell) => expect(share).toBe(cell >= COLUMNS * (ROWS - 1) ? 1 : 0))
  })

  it('exact geometry: a sun straight overhead lights every cell', () => {
    expect(castShade(evenSlope(60, 45), directionTo(0, 90)).every((share) => share === 1)).toBe(true)
  })
})
