import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Surface } from '#core/survey'
import { groundFacts, type GroundFacts } from '#core/terrain'
import { surfaceOf } from './grids'

/** Moves of a square plot onto itself: where the cell at (column, row) goes, and what becomes of a bearing. */
const moves = [
  {
    name: 'a quarter turn clockwise',
    to: (x: number, y: number, last: number) => [last - y, x],
    bearing: (deg: number) => deg + 90,
  },
  {
    name: 'half a turn',
    to: (x: number, y: number, last: number) => [last - x, last - y],
    bearing: (deg: number) => deg + 180,
  },
  {
    name: 'a quarter turn anticlockwise',
    to: (x: number, y: number, last: number) => [y, last - x],
    bearing: (deg: number) => deg - 90,
  },
  {
    name: 'a mirror from west to east',
    to: (x: number, y: number, last: number) => [last - x, y],
    bearing: (deg: number) => -deg,
  },
  {
    name: 'a mirror from north to south',
    to: (x: number, y: number, last: number) => [x, last - y],
    bearing: (deg: number) => 180 - deg,
  },
] as const

const SIDE = 13

/** Fields that a move carries from cell to cell, and how closely they must follow. */
const fields: readonly (readonly [string, (facts: GroundFacts) => ArrayLike<number>])[] = [
  ['slope', (facts) => facts.steepness().slopeDeg],
  ['filled level', (facts) => facts.filledM()],
  ['multiple flow', (facts) => facts.accumulation()],
  ['D8', (facts) => facts.accumulationD8()],
  ['D-infinity', (facts) => facts.accumulationDinf()],
  ['height above the foot', (facts) => facts.heightAboveFootM()],
  ['position', (facts) => facts.position()],
  ['relative position', (facts) => facts.relativePosition()],
  ['bend down', (facts) => facts.form().down],
  ['bend across', (facts) => facts.form().across],
  ['topographic position', (facts) => facts.standing(3)],
  ['class near', (facts) => facts.standings().small.classes],
  ['class far', (facts) => facts.standings().large.classes],
  ['wetness', (facts) => facts.wetnessIndex()],
  ['raw wetness', (facts) => facts.wetnessIndexRaw()],
]

/** Rough ground: waves of any direction and length with a fall, so that no two cells are alike. */
const rough = fc
  .tuple(
    fc.array(
      fc.record({
        heightM: fc.double({ min: 0.05, max: 1, noNaN: true }),
        east: fc.double({ min: -2, max: 2, noNaN: true }),
        north: fc.double({ min: -2, max: 2, noNaN: true }),
        phase: fc.double({ min: 0, max: 6, noNaN: true }),
      }),
      { minLength: 2, maxLength: 5 },
    ),
    fc.double({ min: 0.01, max: 0.5, noNaN: true }),
    fc.double({ min: 0.01, max: 0.5, noNaN: true }),
  )
  .map(([waves, eastFall, northFall]) => {
    const levelOf = (eastM: number, northM: number) =>
      waves.reduce(
        (sum, { heightM, east, north, phase }) =>
          sum + heightM * Math.sin(east * eastM + north * northM + phase),
        eastFall * eastM + northFall * northM + 0.013 * eastM * northM,
      )
    return surfaceOf({ columns: SIDE, rows: SIDE, cellM: 1 }, levelOf)
  })

function moved(
  surface: Surface,
  to: (typeof moves)[number]['to'],
): { surface: Surface; cellOf: (cell: number) => number } {
  const cellOf = (cell: number) => {
    const [column = 0, row = 0] = to(cell % SIDE, Math.floor(cell / SIDE), SIDE - 1)
    return row * SIDE + column
  }
  const levelM = new Float64Array(SIDE * SIDE)
  surface.levelM.forEach((level, cell) => {
    levelM[cellOf(cell)] = level
  })
  return { surface: { ...surface, levelM }, cellOf }
}

/** Two neighbours so nearly alike that rounding decides between them: no fact of such ground is stable. */
function nearlyTied({ levelM }: Surface): boolean {
  const sorted = [...levelM].sort((a, b) => a - b)
  return sorted.some((level, at) => at > 0 && level - (sorted[at - 1] ?? 0) < 1e-9)
}

describe.each(moves)('property: $name of the plot', ({ to, bearing }) => {
  it('moves every fact of the ground with it', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(rough, (before) => {
        fc.pre(!nearlyTied(before))
        const { surface: after, cellOf } = moved(before, to)
        const [was, is] = [groundFacts(before), groundFacts(after)]
        for (const [name, of] of fields) {
          const [old, now] = [of(was), of(is)]
          for (let cell = 0; cell < old.length; cell++)
            expect(
              Math.abs((now[cellOf(cell)] ?? NaN) - (old[cell] ?? NaN)),
              `${name} of cell ${cell}`,
            ).toBeLessThan(1e-6)
        }
        const [old, now] = [was.steepness().aspectDeg, is.steepness().aspectDeg]
        old.forEach((aspectDeg, cell) => {
          const gapDeg = (now[cellOf(cell)] ?? NaN) - bearing(aspectDeg)
          expect(Math.abs((((gapDeg % 360) + 540) % 360) - 180)).toBeLessThan(1e-6)
        })
      }),
      { numRuns: 25, seed: 3 },
    )
  })
})
