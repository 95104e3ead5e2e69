import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { z } from 'zod'
import { groundFacts } from '#core/terrain'
import { speedLevelsM } from './speed-grid'
import { squareSurface } from './square-surface'

const truth = z
  .object({
    heights: z.array(z.object({ row: z.number(), column: z.number(), levelM: z.number() })),
    sumM: z.number(),
    sha256: z.string(),
  })
  .parse(JSON.parse(readFileSync(new URL('../truth/terrain-speed-grid.json', import.meta.url), 'utf8')))

const slopes = z
  .object({ slopes: z.object({ cells: z.number(), meanDeg: z.number(), mostDeg: z.number() }) })
  .parse(JSON.parse(readFileSync(new URL('../truth/terrain-speed.json', import.meta.url), 'utf8'))).slopes

const SIDE = 1000
const header = 'ncols 1000\nnrows 1000\nxllcorner -500\nyllcorner -500\ncellsize 1\nNODATA_value -9999\n'

it('numpy 2.4.6 (PCG64, ziggurat): the grid for timing is the same to the last digit in all its million cells', () => {
  const levelsM = speedLevelsM(SIDE)
  for (const { row, column, levelM } of truth.heights) expect(levelsM[row * SIDE + column]).toBe(levelM)
  expect(levelsM.reduce((sum, levelM) => sum + levelM, 0)).toBeCloseTo(truth.sumM, 3)
  const hash = createHash('sha256').update(header)
  for (let row = 0; row < SIDE; row++) {
    const cells = Array.from(levelsM.subarray(row * SIDE, (row + 1) * SIDE), (levelM) => levelM.toFixed(3))
    hash.update(`${cells.join(' ')}\n`)
  }
  expect(hash.digest('hex')).toBe(truth.sha256)
})

it('GRASS r.slope.aspect: mean and largest slope of the million cells, the outermost left out', () => {
  const { slopeDeg } = groundFacts(squareSurface(SIDE)).steepness()
  let [cells, sumDeg, mostDeg] = [0, 0, 0]
  for (let row = 1; row < SIDE - 1; row++)
    for (const deg of slopeDeg.subarray(row * SIDE + 1, (row + 1) * SIDE - 1)) {
      cells += 1
      sumDeg += deg
      mostDeg = Math.max(mostDeg, deg)
    }
  expect(cells).toBe(slopes.cells)
  expect(Math.abs(sumDeg / cells - slopes.meanDeg)).toBeLessThan(1e-4)
  expect(Math.abs(mostDeg - slopes.mostDeg)).toBeLessThan(1e-4)
})
