import { describe, expect, it } from 'vitest'
import { modifiedZ, robustScale } from '../../../src/core/survey/modified-z'
import type { LevelsSurvey } from '#core/survey'
import { edge, said, spot, surfaceOf } from './survey-of'

/** Points every 4 m, moved a little so that no four lie on a circle. */
function net(levelM: (eastM: number, northM: number) => number) {
  return Array.from({ length: 100 }, (_, at) => {
    const eastM = (at % 10) * 4 + ((at * 7) % 5) * 0.2
    const northM = Math.floor(at / 10) * 4 + ((at * 3) % 7) * 0.15
    return spot(eastM, northM, levelM(eastM, northM))
  })
}

const outliers = (points: LevelsSurvey['points'], breaklines: LevelsSurvey['breaklines'] = []) =>
  said(surfaceOf({ kind: 'levels', points, breaklines }), 'outlier')

describe('modified z-score', () => {
  it('Iglewicz and Hoaglin 1993: of the isotope readings of Tietjen and Moore (NIST e-Handbook 1.3.5.17) only 245.57 is beyond 3.5', () => {
    const readings = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57]
    const scale = robustScale(Float64Array.from(readings))
    expect(readings.filter((reading) => Math.abs(modifiedZ(reading, scale)) > 3.5)).toEqual([245.57])
  })

  it('Iglewicz and Hoaglin 1993: the example of spatialEco (100 values from 0.1 to 5, the last three 100, 55 and 250) has three beyond 9.9', () => {
    const values = Array.from({ length: 100 }, (_, at) => 0.1 + (at * 4.9) / 99)
    values.splice(97, 3, 100, 55, 250)
    const scale = robustScale(Float64Array.from(values))
    expect(values.filter((value) => modifiedZ(value, scale) > 9.9)).toEqual([100, 55, 250])
  })

  it('Iglewicz and Hoaglin 1993: where most values are equal the others are infinitely far', () => {
    const scale = robustScale(Float64Array.of(1, 1, 1, 1, 2))
    expect([modifiedZ(1, scale), modifiedZ(2, scale)]).toEqual([0, Infinity])
    expect(() => robustScale(new Float64Array(0))).toThrow(RangeError)
  })
})

describe('levels that stand out', () => {
  it('exact solution: on a plane one level misread by a metre is named, by how much, and is kept', () => {
    const points = net((eastM, northM) => 50 + 0.2 * eastM - 0.3 * northM)
    points[44] = { ...points[44]!, levelM: points[44]!.levelM + 1, mark: 'B4' }
    expect(outliers(points)).toEqual([
      'Row 45 (B4) stands 1.00 m above the ground around it. Look at it again; it is used as it is.',
    ])
    const surface = surfaceOf({ kind: 'levels', points })
    expect([...surface.tin!.points].map(({ levelM }) => levelM)).toContain(points[44].levelM)
  })

  it('exact solution: a level at the edge of the survey misread by half a metre is named too', () => {
    const points = net((eastM) => eastM * 0.1)
    points[5] = { ...points[5]!, levelM: points[5]!.levelM - 0.5 }
    expect(outliers(points)).toEqual([
      'Row 6 stands 0.50 m below the ground around it. Look at it again; it is used as it is.',
    ])
  })

  it('own judgement: nothing under 100 mm stands out, however flat the survey', () => {
    const points = net(() => 3)
    points[44] = { ...points[44]!, levelM: 3.09 }
    expect(outliers(points)).toEqual([])
    points[44] = { ...points[44], levelM: 3.11 }
    expect(outliers(points)).toHaveLength(1)
  })

  it('exact solution: crest and foot of a bank are none, with lines, with codes, or with neither', () => {
    const bank = (_: number, northM: number) => Math.max(0, Math.min(3, (northM - 14) * 0.8))
    const ground = net(bank).filter(({ northM }) => northM < 13 || northM > 19)
    const edges = [14, 17.75].flatMap((northM) =>
      [0, 5.1, 11.2, 17.4, 22.9, 28.6, 36].map((eastM) => spot(eastM, northM, bank(0, northM))),
    )
    expect(outliers([...ground, ...edges])).toEqual([])
    const coded = edges.map((point, at) => ({ ...point, code: at < 7 ? 'TOE' : 'TOP' }))
    expect(outliers([...ground, ...coded])).toEqual([])
    const lines = [14, 17.75].map((northM) =>
      edge(`at ${northM}`, [0, northM, bank(0, northM)], [36, northM, bank(0, northM)]),
    )
    expect(outliers([...ground, ...edges], lines)).toEqual([])
    const wrong = coded.map((point, at) => (at === 10 ? { ...point, levelM: 5 } : point))
    expect(outliers([...ground, ...wrong])).toEqual([
      `Row ${ground.length + 11} stands 2.00 m above the ground around it. Look at it again; it is used as it is.`,
    ])
    expect(outliers([...ground, ...wrong], lines)).toHaveLength(1)
  })

  it('own judgement: fewer than eight points say nothing of what is usual', () => {
    const points = [spot(0, 0, 0), spot(9, 1, 0), spot(8, 9, 0), spot(1, 8, 0), spot(4, 4, 9)]
    expect(outliers(points)).toEqual([])
  })
})
