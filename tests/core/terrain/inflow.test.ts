import { describe, expect, it } from 'vitest'
import { surfaceFrom } from '#core/survey'
import { edgeEntries, inflowM2 } from '#core/terrain'

const bankFacing = (facesDeg: number) => {
  const bank = surfaceFrom({ kind: 'bank', lengthM: 13, riseM: 5, facesDeg, widthM: 21 })
  if (!bank.ok) throw new Error('a plain bank must do')
  return bank.value
}

const sumOf = (values: Iterable<number>): number => [...values].reduce((sum, value) => sum + value, 0)

describe('water that comes onto the plot', () => {
  it.each([0, 33, 100, 215, 300])(
    'exact solution: onto a bank facing %i° it comes over the top edge alone, 21 m wide',
    (facesDeg) => {
      const entries = edgeEntries(bankFacing(facesDeg), [])
      expect(sumOf(entries.map(({ widthM }) => widthM))).toBeCloseTo(21, 9)
    },
  )

  it('exact solution: ground that rises for 30 m all round sheds 30 m by 21 m, from above alone', () => {
    const surface = bankFacing(215)
    const [from] = surface.boundary
    if (!from) throw new Error('a bank has corners')
    const field = { id: 'field', from, to: from, uphillM: 30 }
    expect(sumOf(inflowM2(surface, [field]) ?? [])).toBeCloseTo(630, 6)
    expect(inflowM2(surface, [{ ...field, uphillM: undefined }])).toBeUndefined()
    expect(inflowM2(surface, [])).toBeUndefined()
    expect(() => inflowM2(surface, [{ ...field, uphillM: -1 }])).toThrow(RangeError)
  })

  it('exact solution: half the top edge described is half the width', () => {
    const surface = bankFacing(180)
    const top = Math.max(...surface.boundary.map(({ northM }) => northM))
    const [one, other] = surface.boundary.filter(({ northM }) => northM > top - 0.01)
    if (!one || !other) throw new Error('a bank has a top edge')
    const middle = { eastM: (one.eastM + other.eastM) / 2, northM: top }
    const at = surface.boundary.indexOf(one)
    // Onwards in the order of the corners.
    const next = surface.boundary[(at + 1) % surface.boundary.length]
    const start = next === other ? one : other
    const areaM2 = inflowM2(surface, [{ id: 'wood', from: start, to: middle, uphillM: 10 }])
    expect(sumOf(areaM2 ?? [])).toBeCloseTo(105, 0)
  })
})
