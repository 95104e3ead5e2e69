import { describe, expect, it } from 'vitest'
import { groundFacts } from '#core/terrain'
import { steepened } from '../../../src/core/terrain/steepened'
import { steepestFall, type Fall } from '../../../src/core/terrain/infinite-directions'
import { readGrid } from '../../truth/read-grid'
import { cellsOf, innerCells, surfaceOf, windowSurface } from './grids'
import { spearman } from './rank-correlation'
import { tolerances } from './tolerances'
import { truth, volcanoFigures } from './truth'
import { volcanoSurface } from './volcano'

const MIDDLE = 4
const EAST = 2
const NORTH_EAST = 1

describe('the power of a drop', () => {
  it('Freeman 1991 exponent 1.1: the quick power is the exact one to 13 digits, for drops of any size', () => {
    for (let at = -300; at < 300; at++)
      for (const digits of [1, 1.0004883, 1.4142136, 1.7, 1.9999999]) {
        const drop = digits * 2 ** at
        expect(Math.abs(steepened(drop) / drop ** 1.1 - 1)).toBeLessThan(tolerances.power)
      }
    expect(steepened(Number.MIN_VALUE)).toBe(Number.MIN_VALUE ** 1.1)
  })
})

describe('one steepest way', () => {
  it("O'Callaghan and Mark 1984: the worked window drains due east", () => {
    const facts = groundFacts(windowSurface(truth.tilted))
    expect(facts.steepestWays()[MIDDLE]).toBe(EAST)
    expect(facts.accumulationD8()[MIDDLE + 1]).toBeGreaterThan(1)
  })

  it('exact solution: a plane falling south drains straight down, the kth row k cells', () => {
    const [columns, rows] = [15, 40]
    const facts = groundFacts(surfaceOf({ columns, rows, cellM: 2 }, (_e, n) => 0.3 * n))
    for (let k = 1; k <= rows; k++)
      for (const accumulation of [facts.accumulationD8(), facts.accumulationDinf()])
        expect(accumulation[(k - 1) * columns + 7]).toBeCloseTo(k, 9)
  })

  it('exact solution: a plane falling to the south-east drains from corner to corner', () => {
    const size = { columns: 30, rows: 30, cellM: 1 }
    const facts = groundFacts(surfaceOf(size, (e, n) => 0.2 * (n - e)))
    for (let step = 1; step < 29; step++)
      for (const accumulation of [facts.accumulationD8(), facts.accumulationDinf()])
        expect(accumulation[step * 30 + step]).toBeCloseTo(step + 1, 9)
  })
})

describe('endlessly many directions', () => {
  it('Tarboton 1997: the worked window falls by 0.707107 towards 81.8699°, 0.81933 of it east', () => {
    const fall: Fall = { straight: 0, slanting: 0, share: 0, dropM: 0 }
    const { levelsM, dInfinity, cellM } = truth.tilted
    steepestFall(fall, Float64Array.from(levelsM), [-3, -2, 1, 4, 3, 2, -1, -4], MIDDLE)
    expect([fall.straight, fall.slanting]).toEqual([EAST, NORTH_EAST])
    expect(Math.abs(fall.dropM / cellM - dInfinity.slope)).toBeLessThan(tolerances.share)
    expect(Math.abs(fall.share - dInfinity.northEast)).toBeLessThan(tolerances.share)
    expect(Math.abs(90 - 45 * fall.share - dInfinity.bearingDeg)).toBeLessThan(1e-4)
  })

  it.each([0, 10, 26.565, 45, 70, 90, 123, 200, 317])(
    'exact solution: on a plane falling towards %i° each cell’s water goes towards it',
    (towardsDeg) => {
      const towards = (towardsDeg * Math.PI) / 180
      const surface = surfaceOf(
        { columns: 3, rows: 3, cellM: 1 },
        (e, n) => -(e * Math.sin(towards) + n * Math.cos(towards)),
      )
      const fall: Fall = { straight: 0, slanting: 0, share: 0, dropM: 0 }
      steepestFall(fall, surface.levelM, [-3, -2, 1, 4, 3, 2, -1, -4], MIDDLE)
      const turn = ((fall.slanting - fall.straight + 12) % 8) - 4
      const bearingDeg = (45 * (fall.straight + turn * fall.share) + 360) % 360
      expect(Math.abs(((bearingDeg - towardsDeg + 540) % 360) - 180)).toBeLessThan(1e-9)
      expect(fall.dropM).toBeCloseTo(1, 12)
    },
  )
})

describe.each(['accumulation', 'accumulationD8', 'accumulationDinf'] as const)('%s', (method) => {
  it('exact solution: what leaves the plot is the whole plot, to 1e-9 of it', () => {
    for (const surface of [
      volcanoSurface(),
      surfaceOf({ columns: 20, rows: 12, cellM: 2 }, () => 5),
      surfaceOf({ columns: 31, rows: 27, cellM: 1 }, (e, n) => Math.sin(e) + Math.cos(n * 1.3)),
    ]) {
      const facts = groundFacts(surface)
      const passing = facts[method]()
      const { flow } = { flow: facts.flow() }
      const ways = facts.steepestWays()
      const stops = (cell: number) =>
        method === 'accumulation' ? flow.starts[cell] === flow.starts[cell + 1] : ways[cell] === -1
      const cells = cellsOf(surface)
      const left = cells.filter(stops).reduce((sum, cell) => sum + (passing[cell] ?? 0), 0)
      expect(Math.abs(left / cells.length - 1)).toBeLessThan(1e-9)
    }
  })
})

/** Rank correlation of a layer of ours with one of theirs over the volcano's interior. */
function rankOn(values: ArrayLike<number>, file: string): number {
  const theirs = readGrid(file).values
  const cells = innerCells(volcanoSurface()).filter((cell) => !Number.isNaN(theirs[cell]))
  expect(cells.length).toBeGreaterThan(4500)
  return spearman(
    cells.map((cell) => values[cell] ?? 0),
    cells.map((cell) => Math.abs(theirs[cell] ?? NaN)),
  )
}

describe('accumulation on the volcano ranks as the two reference programs rank one another, or better', () => {
  const facts = groundFacts(volcanoSurface())
  const { spearmanMfdGrassAgainstSaga, spearmanD8GrassAgainstSaga } = volcanoFigures
  it.each([
    ['SAGA multiple flow', () => facts.accumulation(), 'saga_acc_mfd_cells', spearmanMfdGrassAgainstSaga],
    ['GRASS multiple flow', () => facts.accumulation(), 'grass_acc_mfd_cells', spearmanMfdGrassAgainstSaga],
    ['SAGA D8', () => facts.accumulationD8(), 'saga_acc_d8_cells', spearmanD8GrassAgainstSaga],
    ['GRASS D8', () => facts.accumulationD8(), 'grass_acc_d8_cells', spearmanD8GrassAgainstSaga],
  ])('%s', (_name, ours, file, least) => {
    expect(rankOn(ours(), `volcano/${file}.asc`)).toBeGreaterThan(least)
  })
})

describe('wetness', () => {
  it('Beven and Kirkby 1979: ln(k w / gradient) in the kth row of a plane', () => {
    const { cellM, gradient, rows } = truth.planeWetness
    const plane = surfaceOf({ columns: 181, rows: 60, cellM }, (_e, n) => gradient * n)
    const facts = groundFacts(plane)
    for (const { k, index } of rows) {
      const cell = (k - 1) * 181 + 90
      expect(facts.catchmentM()[cell]).toBeCloseTo(k * cellM, 9)
      expect(facts.wetnessIndexRaw()[cell]).toBeCloseTo(index, 6)
    }
  })

  it('Larson, Lidberg, Ågren and Laudon 2022: generalising leaves the index of an even slope as it is', () => {
    const facts = groundFacts(surfaceOf({ columns: 61, rows: 60, cellM: 1 }, (e, n) => 0.2 * n + 0.05 * e))
    const raw = facts.wetnessIndexRaw()
    facts.wetnessIndex().forEach((index, cell) => expect(index).toBeCloseTo(raw[cell] ?? NaN, 6))
  })

  it.each([
    ['GRASS r.topidx', 'grass_topidx'],
    ['SAGA ta_hydrology 20', 'saga_twi_mfd'],
  ])('%s: the raw index ranks as the two programs rank one another, or better', (_name, file) => {
    const raw = groundFacts(volcanoSurface()).wetnessIndexRaw()
    expect(rankOn(raw, `volcano/${file}.asc`)).toBeGreaterThan(
      volcanoFigures.spearmanTopidxGrassAgainstTwiSaga,
    )
  })
})

describe('relative position', () => {
  it('exact solution: on a plane it is the distance from the foot over the length', () => {
    const [columns, rows] = [21, 40]
    const plane = surfaceOf({ columns, rows, cellM: 1 }, (_e, n) => 0.25 * n)
    const position = groundFacts(plane).relativePosition()
    for (let row = 0; row < rows; row++)
      expect(position[row * columns + 10]).toBeCloseTo(1 - (row + 0.5) / rows, 9)
  })

  it('SAGA normalized height (another definition): ranks alike on the volcano', () => {
    const facts = groundFacts(volcanoSurface())
    expect(rankOn(facts.relativePosition(), 'volcano/saga_normalized_height.asc')).toBeGreaterThan(
      tolerances.rank,
    )
  })

  it('exact solution: a level plot has neither foot nor crest', () => {
    const facts = groundFacts(surfaceOf({ columns: 6, rows: 6, cellM: 1 }, () => 3))
    expect(new Set(facts.relativePosition())).toEqual(new Set([0.5]))
  })
})
