import { describe, expect, it } from 'vitest'
import { nearestSource } from '../../../src/core/survey/nearest-source'

const frame = { columns: 23, rows: 17, cellM: 1, westM: 0, southM: 0 }
const gap = (one: number, other: number) =>
  Math.hypot((one % 23) - (other % 23), Math.floor(one / 23) - Math.floor(other / 23))

describe('nearest cell of a set', () => {
  it('second method (every pair) against Danielsson 1980 sweeps: as near, to a tenth of a cell', () => {
    const isSource = new Uint8Array(23 * 17)
    const sources = [3, 40, 118, 119, 200, 265, 300, 388]
    for (const cell of sources) isSource[cell] = 1
    nearestSource(frame, isSource).forEach((nearest, cell) => {
      expect(sources).toContain(nearest)
      const exact = Math.min(...sources.map((source) => gap(cell, source)))
      expect(gap(cell, nearest) - exact).toBeLessThan(0.1)
    })
  })

  it('exact solution: an empty set has no nearest cell', () => {
    expect(new Set(nearestSource(frame, new Uint8Array(23 * 17)))).toEqual(new Set([-1]))
  })
})
