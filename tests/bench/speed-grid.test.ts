import { expect, it } from 'vitest'
import { z } from 'zod'
import { readFileSync } from 'node:fs'
import { speedLevelsM } from './speed-grid'

const truth = z
  .object({
    heights: z.array(z.object({ row: z.number(), column: z.number(), levelM: z.number() })),
    sumM: z.number(),
    lowestM: z.number(),
    highestM: z.number(),
  })
  .parse(JSON.parse(readFileSync(new URL('../truth/terrain-speed-grid.json', import.meta.url), 'utf8')))

it('numpy 2.4.6 (PCG64, ziggurat): our own grid has the heights that its grid has', () => {
  const levelsM = speedLevelsM(1000)
  for (const { row, column, levelM } of truth.heights) expect(levelsM[row * 1000 + column]).toBe(levelM)
  let [sumM, lowestM, highestM] = [0, Infinity, -Infinity]
  for (const levelM of levelsM) {
    sumM += levelM
    lowestM = Math.min(lowestM, levelM)
    highestM = Math.max(highestM, levelM)
  }
  expect(lowestM).toBe(truth.lowestM)
  expect(highestM).toBe(truth.highestM)
  expect(sumM).toBeCloseTo(truth.sumM, 3)
})
