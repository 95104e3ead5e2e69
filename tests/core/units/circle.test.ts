import { describe, expect, it } from 'vitest'
import {
  bearingGapDeg,
  daysInMonth,
  eachMonth,
  northernTwin,
  toDegrees,
  toRadians,
  wholeCircleDeg,
  windName,
} from '#core/units'

describe('bearings', () => {
  it('exact solution: any bearing comes back into the circle', () => {
    expect([-90, 0, 359.5, 360, 725].map(wholeCircleDeg)).toEqual([270, 0, 359.5, 0, 5])
    expect(toDegrees(toRadians(217))).toBeCloseTo(217, 12)
    expect(toRadians(180)).toBe(Math.PI)
  })

  it('exact solution: the gap goes the short way round', () => {
    expect(bearingGapDeg(350, 10)).toBe(20)
    expect(bearingGapDeg(10, 350)).toBe(20)
    expect(bearingGapDeg(0, 180)).toBe(180)
  })

  it('exact solution: the eight winds', () => {
    expect([0, 44, 90, 157.4, 225, 338, 359].map(windName)).toEqual([
      'north',
      'north-east',
      'east',
      'south-east',
      'south-west',
      'north',
      'north',
    ])
  })
})

describe('months', () => {
  it('exact solution: a common year has 365 days', () => {
    expect(daysInMonth.reduce((sum: number, days) => sum + days, 0)).toBe(365)
    expect(eachMonth((month) => month)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11])
  })

  it('exact solution: seasons turn over south of the tropics’ belt', () => {
    expect(northernTwin(0, -40)).toBe(6)
    expect(northernTwin(8, -40)).toBe(2)
    expect(northernTwin(8, 52)).toBe(8)
    expect(northernTwin(8, -3)).toBe(8)
  })
})
