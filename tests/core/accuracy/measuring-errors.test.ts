import { describe, expect, it } from 'vitest'
import { measuringErrors } from '#core/accuracy'
import type { GroundSurvey } from '#core/survey'
import { loadTables } from '#io'
import { levels } from './surfaces'

const tables = loadTables()
const given = { methods: tables.survey.methods, assumed: tables.assumed }

const bank: GroundSurvey = { kind: 'bank', lengthM: 10, riseM: 4, facesDeg: 180, widthM: 5 }
const profile = (distancesAre: 'plan' | 'slope'): GroundSurvey => ({
  kind: 'profile',
  distancesAre,
  stations: [
    { distanceM: 0, levelM: 4 },
    { distanceM: 9, levelM: 0 },
  ],
  facesDeg: 180,
  widthM: 5,
})
const grid: GroundSurvey = {
  kind: 'grid',
  columns: 2,
  rows: 2,
  cellM: 1,
  westM: 0,
  southM: 0,
  levelsM: [1, 1, 0, 0],
}

describe('how well it was measured', () => {
  it('is assumed for each kind of ground when nobody says, and says so (common practice, no source)', () => {
    const assumed = (ground: GroundSurvey) => measuringErrors(ground, undefined, given)
    expect(assumed(bank)).toMatchObject({ methodId: 'tape-clinometer', angleSdDeg: 1, assumed: true })
    expect(assumed(profile('plan'))).toMatchObject({
      methodId: 'level-and-staff',
      chained: false,
      assumed: true,
    })
    expect(assumed(profile('slope'))).toMatchObject({ methodId: 'tape-clinometer', chained: true })
    expect(assumed(levels([0, 0, 0], [1, 0, 0], [0, 1, 0]))).toMatchObject({ methodId: 'level-and-staff' })
    expect(assumed(grid)).toMatchObject({ methodId: 'aerial-grid' })
  })

  it('every assumed method is in the table', () => {
    const ids = tables.survey.methods.map(({ id }) => id)
    for (const { methodId } of tables.assumed) expect(ids).toContain(methodId)
  })

  it('is the method the person names', () => {
    expect(measuringErrors(bank, { methodId: 'level-and-staff' }, given)).toMatchObject({
      methodId: 'level-and-staff',
      assumed: false,
    })
  })

  it('is what the person types, the whole of it', () => {
    expect(measuringErrors(bank, { levelSdM: 0.2, planSdM: 0.3 }, given)).toEqual({
      levelSdM: 0.2,
      levelSdPerM: 0,
      angleSdDeg: undefined,
      chained: false,
      planSdM: 0.3,
      methodId: undefined,
      assumed: false,
    })
  })

  it('refuses methods and figures that cannot be', () => {
    expect(() => measuringErrors(bank, { methodId: 'divining-rod' }, given)).toThrow(RangeError)
    expect(() => measuringErrors(bank, { levelSdM: 0 }, given)).toThrow(RangeError)
    expect(() => measuringErrors(bank, { planSdM: Number.NaN }, given)).toThrow(RangeError)
  })
})
