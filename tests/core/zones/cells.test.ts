import { describe, expect, it } from 'vitest'
import { connectedParts } from '../../../src/core/zones/connected-parts'
import { risingCells } from '../../../src/core/zones/rising-cells'
import { smoothClasses } from '../../../src/core/zones/smooth-classes'

/** Rows of digits as classes of cells; a dot lies outside. */
function sheet(...rows: string[]) {
  const classes = Int32Array.from(rows.join(''), (sign) => (sign === '.' ? -1 : Number(sign)))
  return {
    classes,
    frame: { columns: rows[0]?.length ?? 0, rows: rows.length, cellM: 1, westM: 0, southM: 0 },
  }
}

const smoothed = (...rows: string[]): string[] => {
  const { classes, frame } = sheet(...rows)
  const text = Array.from(smoothClasses(classes, frame), (kind) => (kind < 0 ? '.' : String(kind))).join('')
  return rows.map((_, row) => text.slice(row * frame.columns, (row + 1) * frame.columns))
}

/** A repeatable jumble of whole numbers from 0 to below `size`. */
function jumble(count: number, size: number): number[] {
  let state = 7
  return Array.from({ length: count }, () => {
    state = (state * 1103515245 + 12345) % 2 ** 31
    return Math.floor(state / 1000) % size
  })
}

describe('cells in rising order', () => {
  it('exact solution: the order of a stable sort, with many equal values', () => {
    for (const size of [1, 3, 50, 100_000]) {
      const values = Float64Array.from(jumble(400, size), (value) => value / 7 - 2)
      const cells = [...values.keys()].filter((cell) => cell % 3 !== 1)
      const sorted = cells.toSorted((one, other) => (values[one] ?? 0) - (values[other] ?? 0))
      expect([...risingCells(cells, values)]).toEqual(sorted)
    }
  })

  it('exact solution: no cells, no order', () => {
    expect([...risingCells([], new Float64Array(3))]).toEqual([])
  })
})

describe('majority of nine cells', () => {
  it('exact solution: a speck is taken in, even ground and the outside stay', () => {
    expect(smoothed('11111', '11211', '11111', '.....')).toEqual(['11111', '11111', '11111', '.....'])
    expect(smoothed('...', '.3.', '...')).toEqual(['...', '.3.', '...'])
  })

  it('exact solution: a straight line between two halves stays where it is', () => {
    const halves = ['111222', '111222', '111222', '111222']
    expect(smoothed(...halves)).toEqual(halves)
  })

  it('exact solution: in a tie the cell keeps its own class', () => {
    expect(smoothed('12', '21')).toEqual(['12', '21'])
  })
})

describe('parts joined side to side', () => {
  it('exact solution: cells that touch only at corners are parts of their own, numbered as they are met', () => {
    const { classes, frame } = sheet('1122', '2.22', '1111')
    const { partOfCell, count } = connectedParts(classes, frame)
    expect([...partOfCell]).toEqual([0, 0, 1, 1, 2, -1, 1, 1, 3, 3, 3, 3])
    expect(count).toBe(4)
  })

  it('exact solution: rows do not join at the ends', () => {
    const { classes, frame } = sheet('121', '121')
    expect([...connectedParts(classes, frame).partOfCell]).toEqual([0, 1, 2, 0, 1, 2])
  })
})
