import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { FOOT_M, lengthFromText, lengthToText, type WrittenUnit } from '#core/booking'

describe('lengths as written', () => {
  // Expected figures: the foot of 1959 is 0.3048 m, the inch a twelfth of it, the US survey foot 1200/3937 m.
  it.each<[string, WrittenUnit, number]>([
    ['1.234', 'm', 1.234],
    ['1,234', 'm', 1.234],
    ['123.4', 'cm', 1.234],
    ['123.4 cm', 'm', 1.234],
    ['1234 mm', 'm', 1.234],
    ['.5', 'm', 0.5],
    ['-0.35', 'm', -0.35],
    ['−0.35', 'm', -0.35],
    ['5', 'ft', 1.524],
    ['10', 'us-ft', (10 * 1200) / 3937],
    ['5 ft', 'm', 1.524],
    [`5' 3 1/2"`, 'ft-in', 1.6129],
    [`5′ 3 1/2″`, 'ft-in', 1.6129],
    [`5'3.5"`, 'm', 1.6129],
    ['5 ft 3 in', 'ft-in', 1.6002],
    ['5 feet 3 inches', 'ft-in', 1.6002],
    ['5-3 1/2', 'ft-in', 1.6129],
    ['5-3-1/2', 'ft-in', 1.6129],
    [`-5' 3 1/2"`, 'ft-in', -1.6129],
    [`63 1/2"`, 'ft-in', 1.6129],
    [`1/2"`, 'ft-in', 0.0127],
    [`5'`, 'ft-in', 1.524],
    ['5.25', 'ft-in', 1.6002],
  ])('foot of 1959, US survey foot, metre: %s in %s', (text, unit, expectedM) => {
    expect(lengthFromText(text, unit)).toBeCloseTo(expectedM, 12)
  })

  it.each<[string, WrittenUnit]>([
    ['', 'm'],
    ['-', 'm'],
    ['five', 'm'],
    ['1.2.3', 'm'],
    ['1,234.5', 'm'],
    [`5' 13"`, 'ft-in'],
    [`5' 3 3/2"`, 'ft-in'],
    [`1/0"`, 'ft-in'],
    ['5-3', 'm'],
    ['5 3', 'ft-in'],
    ['1e3', 'm'],
    ['Infinity', 'm'],
  ])('refuses %s in %s', (text, unit) => {
    expect(lengthFromText(text, unit)).toBeUndefined()
  })

  it.each<[number, WrittenUnit, string]>([
    [1.6129, 'ft-in', `5' 3 1/2"`],
    [-1.6129, 'ft-in', `-5' 3 1/2"`],
    [1.524, 'ft-in', `5' 0"`],
    [0.0127, 'ft-in', `0' 1/2"`],
    // 11 31/32 in are nearest to a whole foot.
    [(FOOT_M * 11.97) / 12, 'ft-in', `1' 0"`],
    [1.2346, 'cm', '123.5'],
    [1.5, 'm', '1.500'],
    [-0.0001, 'm', '0.000'],
    [1.524, 'ft', '5.000'],
    [1200 / 3937, 'us-ft', '1.000'],
  ])('foot of 1959, US survey foot, metre: %s m written in %s', (valueM, unit, text) => {
    expect(lengthToText(valueM, unit)).toBe(text)
  })

  it('what was written in feet and inches is read back, to the sixteenth', () => {
    fc.assert(
      fc.property(fc.integer({ min: -3000, max: 3000 }), (sixteenths) => {
        const valueM = ((sixteenths / 16) * FOOT_M) / 12
        expect(lengthFromText(lengthToText(valueM, 'ft-in'), 'ft-in')).toBeCloseTo(valueM, 12)
      }),
    )
  })

  it('never gives anything but a finite length, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom<WrittenUnit>('m', 'cm', 'ft', 'ft-in'), (text, unit) => {
        const valueM = lengthFromText(text, unit)
        expect(valueM === undefined || Number.isFinite(valueM)).toBe(true)
      }),
    )
  })

  it('refuses to write what is no length', () => {
    expect(() => lengthToText(NaN, 'm')).toThrow(RangeError)
  })
})
