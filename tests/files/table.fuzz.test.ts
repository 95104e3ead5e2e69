import fc from 'fast-check'
import { expect, it } from 'vitest'
import { FUZZ_RUNS, hostile, survives } from './fuzz-check'
import { broken } from './fuzz-bytes'

const seeds = [
  'P,N,E,Z,D\n1,114200.25,432100.125,101.375,TOP\n2,114203.1,432105.5,102.25,TOE\n3,114201.5,432110.9,98.6,TOE\n',
  '1;2,5;3,25\n4;5,5;6\n7;9,25;8\n',
  '0 0 1\n10 0 2\n0 10 3\n5 5 2.5\n',
  'lon\tlat\televation (ft)\n-1.5\t50.9\t100\n-1.4999\t50.9\t101\n-1.5\t50.9001\t99\n',
]

it('tables: 20,000 malformed files give a plain problem or a right result', { timeout: 60_000 }, async () => {
  const cell = fc.oneof(
    fc.double({ noNaN: false }).map(String),
    fc.constantFrom(...hostile),
    fc.string({ maxLength: 8 }),
  )
  const typed = fc
    .array(fc.array(cell, { maxLength: 6 }), { maxLength: 8 })
    .chain((rows) =>
      fc.constantFrom(',', ';', '\t', ' ', '|').map((mark) => rows.map((row) => row.join(mark)).join('\n')),
    )
    .map((text) => new TextEncoder().encode(text))
  await fc.assert(fc.asyncProperty(fc.oneof(broken(seeds), typed), survives), {
    numRuns: FUZZ_RUNS,
    seed: 31,
  })
  expect.hasAssertions()
})
