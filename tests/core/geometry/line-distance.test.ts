import { describe, expect, it } from 'vitest'
import { lineDistanceM } from '#core/geometry'

const line = (...corners: [number, number][]) => corners.map(([eastM, northM]) => ({ eastM, northM }))
const square = line([0, 0], [20, 0], [20, 20], [0, 20], [0, 0])

describe('distance between lines', () => {
  it('exact: a line that crosses a square with both ends outside touches it', () => {
    expect(lineDistanceM(line([-5, 10], [25, 10]), square)).toBe(0)
  })

  it('exact: parallel, aslant, and from a point', () => {
    expect(lineDistanceM(line([0, -3], [20, -3]), square)).toBe(3)
    expect(lineDistanceM(line([23, 24], [40, 40]), square)).toBe(5)
    expect(lineDistanceM(line([26, 10]), square)).toBe(6)
  })

  it('a line that is not closed has no side from its last corner to its first', () => {
    expect(lineDistanceM(line([0, -4], [-30, -4], [-30, 40], [0, 40]), line([10, 10]))).toBeGreaterThan(9)
  })

  it('refuses a line without corners', () => {
    expect(() => lineDistanceM([], square)).toThrow(RangeError)
  })
})
