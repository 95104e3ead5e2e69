import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { addingUp } from '../../src/io/adding-up'

describe('rounding parts to what they make together', () => {
  it('arithmetic: thirds of one make 0.34, 0.33 and 0.33', () => {
    expect(addingUp(1, [1 / 3, 1 / 3, 1 / 3], 2)).toEqual([0.34, 0.33, 0.33])
  })

  it('arithmetic: any parts, some of them negative, add up to their rounded total and stay by their own figures', () => {
    const hours = fc.array(fc.double({ min: -24, max: 24, noNaN: true }), { minLength: 1, maxLength: 12 })
    fc.assert(
      fc.property(hours, (parts) => {
        const total = parts.reduce((sum, one) => sum + one, 0)
        const rounded = addingUp(total, parts, 2)
        const cents = rounded.reduce((sum, one) => sum + Math.round(one * 100), 0)
        expect(cents).toBe(Math.round(total * 100) + 0)
        rounded.forEach((one, at) => expect(Math.abs(one - (parts[at] ?? NaN))).toBeLessThan(0.0201))
      }),
    )
  })

  it('arithmetic: a total that was rounded itself is met too, by the largest part', () => {
    expect(addingUp(2.99, [1.004, 1.996], 2)).toEqual([1, 1.99])
  })
})
