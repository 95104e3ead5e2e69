import { readFileSync } from 'node:fs'
import { z } from 'zod'

const window = z.object({ cellM: z.number(), levelsM: z.array(z.number()).length(9) })

const fourShares = z.object({
  north: z.number(),
  northEast: z.number(),
  east: z.number(),
  southEast: z.number(),
})

const read = (path: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../truth/${path}`, import.meta.url), 'utf8'))

/** Published and hand-worked windows, gradients and area factors. */
export const truth = z
  .object({
    esriSlope: window.extend({ slopeDeg: z.number(), exactSlopeDeg: z.number(), aspectDeg: z.number() }),
    esriAspect: window.extend({ aspectDeg: z.number() }),
    tilted: window.extend({
      slopeDeg: z.number(),
      aspectDeg: z.number(),
      freemanShares: fourShares,
      d8: z.object({ way: z.literal('east'), dropPerCell: z.number() }),
      dInfinity: z.object({
        slope: z.number(),
        bearingDeg: z.number(),
        east: z.number(),
        northEast: z.number(),
      }),
      tpiEightM: z.number(),
    }),
    planeWetness: z.object({
      cellM: z.number(),
      gradient: z.number(),
      rows: z.array(z.object({ k: z.number(), index: z.number() })),
    }),
    gradients: z.array(z.object({ runPerRise: z.number(), percent: z.number(), slopeDeg: z.number() })),
    areaFactors: z.array(z.object({ slopeDeg: z.number(), factor: z.number() })),
  })
  .parse(read('terrain-windows.json'))

/** Figures of the volcano grid as other programs give them. */
export const volcanoFigures = z
  .object({
    figures: z.object({
      interiorTrueAreaM2: z.number(),
      interiorPlanAreaM2: z.number(),
      filledCells: z.number(),
      deepestFillM: z.number(),
      filledVolumeM3: z.number(),
      spearmanMfdGrassAgainstSaga: z.number(),
      spearmanD8GrassAgainstSaga: z.number(),
      spearmanMfdAgainstDinfSaga: z.number(),
      spearmanTopidxGrassAgainstTwiSaga: z.number(),
    }),
  })
  .parse(read('volcano/provenance.json')).figures
