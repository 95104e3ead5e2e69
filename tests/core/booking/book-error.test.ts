import { describe, expect, it } from 'vitest'
import { bookSdM, methodOfBook, pointSdsM, type Book, type ChainBook } from '#core/booking'
import { levelBook, tables } from './books'

const head = { id: 'book', name: 'Book', unit: 'm', startLevelM: 20 } as const
const clinometer = { levelSdM: 0.05, levelSdPerM: 0, angleSdDeg: 1, lengthSdM: 0.05 }
const chain: ChainBook = {
  kind: 'chain',
  ...head,
  legs: [
    { lengthM: 10, angleDeg: -30 },
    { lengthM: 6, angleDeg: -5 },
    { lengthM: 12, angleDeg: 20 },
  ],
}

/** Numbers that look like chance and are the same in every run (Park and Miller 1988). */
function chance(seed: number): () => number {
  let state = seed
  return () => {
    state = (state * 48271) % 2147483647
    return state / 2147483647
  }
}

/** Standard normal numbers (Box and Muller 1958). */
const normal = (next: () => number): number =>
  Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next())

function simulatedSdM(runs: number, fallM: (draw: () => number) => number): number {
  const next = chance(20260321)
  const draw = () => normal(next)
  const falls = Array.from({ length: runs }, () => fallM(draw))
  const mean = falls.reduce((sum, one) => sum + one, 0) / runs
  return Math.sqrt(falls.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (runs - 1))
}

describe('standard error of a book', () => {
  it('JCGM 100:2008, equation 10: one leg of 10 m at 30°, worked by hand', () => {
    const one: Book = { ...chain, legs: [{ lengthM: 10, angleDeg: -30 }] }
    // 10 × cos 30° × 1° = 0.15115 m, and sin 30° × 0.05 = 0.025 m.
    expect(bookSdM(one, clinometer)).toBeCloseTo(Math.hypot(0.151149947, 0.025), 8)
  })

  it('JCGM 100:2008, equation 10: a chain of three legs against 200,000 simulated chains', () => {
    const rad = Math.PI / 180
    const simulated = simulatedSdM(200_000, (draw) =>
      chain.legs.reduce(
        (sum, { lengthM, angleDeg }) =>
          sum + (lengthM + draw() * 0.05) * Math.sin((angleDeg + draw() * 1) * rad),
        0,
      ),
    )
    // 200,000 runs know a standard deviation to 0.16 %.
    expect(bookSdM(chain, clinometer) / simulated).toBeGreaterThan(0.993)
    expect(bookSdM(chain, clinometer) / simulated).toBeLessThan(1.007)
  })

  it('JCGM 100:2008, equation 13: an index error shared by all legs, against 200,000 simulated chains', () => {
    const rad = Math.PI / 180
    const method = { ...clinometer, lengthSdM: 0, levelSdPerM: 0.5 * rad }
    const simulated = simulatedSdM(200_000, (draw) => {
      const index = draw() * 0.5
      return chain.legs.reduce(
        (sum, { lengthM, angleDeg }) => sum + lengthM * Math.sin((angleDeg + index + draw()) * rad),
        0,
      )
    })
    expect(bookSdM(chain, method) / simulated).toBeGreaterThan(0.993)
    expect(bookSdM(chain, method) / simulated).toBeLessThan(1.007)
  })

  it('JCGM 100:2008, equation 10: levelling grows with the root of the set-ups, 4 set-ups twice one', () => {
    const turns = Array.from({ length: 3 }, () => ({ backM: 1, foreM: 2 }))
    const book = levelBook([{ backM: 1 }, { interM: 1 }, ...turns, { foreM: 2 }])
    const level = { levelSdM: 0.003, levelSdPerM: 0, angleSdDeg: null, lengthSdM: 0 }
    expect(bookSdM(book, level)).toBeCloseTo(0.006, 12)
    expect(pointSdsM(book, level)[0]).toBe(0)
    expect(pointSdsM(book, level)[1]).toBeCloseTo(0.003, 12)
  })

  it('JCGM 100:2008, equation 13: steps and strings add squares of their own and plain sums of what they share', () => {
    const frame = { levelSdM: 0.01, levelSdPerM: 0.002, angleSdDeg: null, lengthSdM: 0 }
    const steps = Array.from({ length: 9 }, () => ({ dropM: 0.4 }))
    const walked: Book = { kind: 'steps', ...head, tool: 'a-frame', spanM: 2, steps }
    expect(bookSdM(walked, frame)).toBeCloseTo(Math.hypot(0.03, 0.036), 12)
    const string: Book = { kind: 'string', ...head, drops: [{ runM: 5, dropM: 1 }] }
    expect(bookSdM(string, frame)).toBeCloseTo(Math.hypot(0.01, 0.01), 12)
    expect(pointSdsM(walked, frame)).toHaveLength(10)
  })

  it('a chain needs a method that reads angles', () => {
    expect(() => bookSdM(chain, { ...clinometer, angleSdDeg: null })).toThrow(RangeError)
  })
})

it('every kind of book has its method in the table', () => {
  const steps: Book = { kind: 'steps', ...head, tool: 'line-level', spanM: 5, steps: [{ dropM: 1 }] }
  const string: Book = { kind: 'string', ...head, drops: [{ runM: 5, dropM: 1 }] }
  const found = [levelBook([]), chain, steps, string].map((book) => methodOfBook(book, tables).id)
  expect(found).toEqual(['level-and-staff', 'tape-clinometer', 'line-level', 'string-level'])
  expect(() => methodOfBook(string, { methods: [] })).toThrow(RangeError)
})
