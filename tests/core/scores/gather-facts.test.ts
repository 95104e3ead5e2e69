import { factNames, gatherFacts, type ZoneEvidence } from '#core/scores'
import { eachMonth } from '#core/units'
import { describe, expect, it } from 'vitest'

/** A zone whose month numbers can be told apart: January 1, February 2 and so on. */
const evidence: ZoneEvidence = {
  latitudeDeg: 52,
  heightAboveFootM: 2.5,
  hardWinterC: -9,
  soilLoss: { bareTPerHa: 20, coveredTPerHa: 0.4 },
  climate: eachMonth((month) => ({ tMinC: month === 1 ? -3 : 4, tMaxC: 12, rainMm: 50 })),
  soil: {
    sampleId: 's',
    textureClass: 'loam',
    sandPercent: 40,
    siltPercent: 40,
    clayPercent: 20,
    organicPercent: 3,
    wiltingPoint: 0.14,
    fieldCapacity: 0.28,
    saturation: 0.46,
    conductivityMmPerH: 15,
    depthM: 0.6,
    stonesPercent: 5,
    availableWaterMm: 80,
    drainableMm: 100,
    hydrologicGroup: 'B',
    ph: undefined,
  },
  water: {
    id: 'z',
    account: { subject: '', unit: '', lines: [], total: 0 },
    months: eachMonth((month) => ({
      rainMm: 50,
      runOnMm: 1,
      lateralInMm: 2,
      referenceEtMm: (month + 1) * 10,
      demandMm: 0,
      actualEtMm: 0,
      runoffMm: 0,
      lateralOutMm: 0,
      drainageMm: 0,
      storedChangeMm: 0,
      availableMm: 0,
      fullness: month + 1,
      dryDays: 3,
      wetDays: 2,
      airlessDays: 1,
    })),
  },
  zone: {
    slopeDegMean: 20,
    slopeDegSteep: 25,
    position: 0.4,
    formDown: 0.01,
    formAcross: -0.02,
    sunHours: eachMonth((month) => month + 1),
    seasonSunRatio: 0.9,
  },
}

describe('gathering facts', () => {
  it('gives every fact a figure', () => {
    const facts = gatherFacts(evidence)
    expect(factNames.filter((name) => !Number.isFinite(facts[name]))).toEqual([])
  })

  it('hand calculation: a northern year', () => {
    expect(gatherFacts(evidence)).toMatchObject({
      midsummerSunHours: 6,
      midwinterSunHours: 12,
      winterFullness: (12 + 1 + 2) / 3,
      summerFullness: (6 + 7 + 8) / 3,
      yearRainLessEtMm: 600 - 780,
      summerRainLessEtMm: 300 - (40 + 50 + 60 + 70 + 80 + 90),
      runOnMm: 36,
      dryDays: 36,
      wetDays: 24,
      airlessDays: 12,
      coldestMonthTMinC: -3,
    })
  })

  it('hand calculation: the seasons are turned round south of the equator', () => {
    expect(gatherFacts({ ...evidence, latitudeDeg: -38 })).toMatchObject({
      midsummerSunHours: 12,
      midwinterSunHours: 6,
      winterFullness: (6 + 7 + 8) / 3,
      summerFullness: (12 + 1 + 2) / 3,
      summerRainLessEtMm: 300 - (100 + 110 + 120 + 10 + 20 + 30),
    })
  })

  it('refuses fewer than twelve months', () => {
    expect(() => gatherFacts({ ...evidence, climate: evidence.climate.slice(1) })).toThrow(RangeError)
  })
})
