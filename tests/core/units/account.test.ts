import { describe, expect, it } from 'vitest'
import { book, booksOut } from '#core/units'

const line = (id: string, amount: number) => ({ id, amount, because: 'because', source: 'yours' })

describe('account', () => {
  it('exact solution: the total is the sum of the entries', () => {
    const account = book('Wetness of zone B', 'points of 100', [
      line('a', 40),
      line('b', -12.5),
      line('c', 3),
    ])
    expect(account.total).toBe(30.5)
    expect(booksOut(account)).toBe(true)
    expect(booksOut({ ...account, total: 31 })).toBe(false)
    expect(book('nothing', 'h', []).total).toBe(0)
  })

  it('refuses an amount that is no number', () => {
    expect(() => book('x', 'h', [line('a', NaN)])).toThrow(RangeError)
  })
})
