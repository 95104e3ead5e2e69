import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { z } from 'zod'
import { speedLevelsM } from './speed-grid'

const truth = z
  .object({
    heights: z.array(z.object({ row: z.number(), column: z.number(), levelM: z.number() })),
    sumM: z.number(),
    sha256: z.string(),
  })
  .parse(JSON.parse(readFileSync(new URL('../truth/terrain-speed-grid.json', import.meta.url), 'utf8')))

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
