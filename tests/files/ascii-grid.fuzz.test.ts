import fc from 'fast-check'
import { expect, it } from 'vitest'
import { broken } from './fuzz-bytes'
import { FUZZ_RUNS, hostile, survives } from './fuzz-check'

const ascii = [
  'ncols 3\nnrows 2\nxllcorner 432100\nyllcorner 114200\ncellsize 0,5\nNODATA_value -9999\n1 2 3\n4 5,5 -9999\n',
  'NROWS 2\nNCOLS 3\nXLLCENTER 10\nYLLCENTER 55\ndx 0.0001\ndy 0.0002\n1 2 nan\n4 5 6\n',
]

it(
  'ASCII grids: 20,000 malformed files give a plain problem or a right result',
  { timeout: 60_000 },
  async () => {
    const name = fc.constantFrom(
      'ncols',
      'nrows',
      'xllcorner',
      'yllcenter',
      'cellsize',
      'dx',
      'dy',
      'nodata_value',
    )
    const figure = fc.oneof(
      fc.constantFrom(...hostile),
      fc.integer({ min: -3, max: 5 }).map(String),
      fc.double().map(String),
    )
    const typed = fc
      .tuple(fc.array(fc.tuple(name, figure), { maxLength: 8 }), fc.array(figure, { maxLength: 12 }))
      .map(([header, cells]) => [...header.map((line) => line.join(' ')), cells.join(' ')].join('\n'))
      .map((text) => new TextEncoder().encode(text))
    await fc.assert(fc.asyncProperty(fc.oneof(broken(ascii), typed), survives), {
      numRuns: FUZZ_RUNS,
      seed: 33,
    })
    expect.hasAssertions()
  },
)
