import { describe, expect, it } from 'vitest'
import type { ProfileSurvey } from '#core/survey'
import { cellCentre } from '#core/geometry'
import { errorsOf, innerCells, known } from './surfaces'

const chain: ProfileSurvey = {
  kind: 'profile',
  distancesAre: 'slope',
  stations: [
    { distanceM: 0, levelM: 6 },
    { distanceM: 5, levelM: 4 },
    { distanceM: 10, levelM: 2 },
    { distanceM: 15, levelM: 0 },
  ],
  facesDeg: 90,
  widthM: 4,
}

describe('a chain of legs, by the law of JCGM 100:2008', () => {
  it('has the error of one angle in every slope, and levels whose errors gather along the way', () => {
    const { surface, accuracy } = known(chain, 0.5, { ...errorsOf(0.05), angleSdDeg: 2, chained: true })
    const legM = Math.sqrt(25 - 4)
    const gradient = 2 / legM
    const risePerM = ((2 * Math.PI) / 180) * (1 + gradient ** 2)
    for (const cell of innerCells(surface)) {
      expect(accuracy.slopeSdDeg[cell]).toBeCloseTo(2, 5)
      const alongM = cellCentre(surface.frame, cell).eastM + 1.5 * legM
      const before = Math.floor(alongM / legM)
      const expected = risePerM * Math.sqrt(before * legM ** 2 + (alongM - before * legM) ** 2)
      expect(accuracy.levelSdM[cell]).toBeCloseTo(expected, 4)
    }
  })

  it('of steps, each measured from the last, has the error of one step over its length', () => {
    const { surface, accuracy } = known(chain, 0.5, { ...errorsOf(0.01), chained: true })
    const legM = Math.sqrt(25 - 4)
    const expected = ((0.01 / legM) * (180 / Math.PI)) / (1 + (2 / legM) ** 2)
    for (const cell of innerCells(surface)) expect(accuracy.slopeSdDeg[cell]).toBeCloseTo(expected, 5)
  })
})
