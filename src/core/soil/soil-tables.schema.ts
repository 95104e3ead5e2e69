import { z } from 'zod'
import { textureClasses } from './soil.schema'

const percent = z.number().min(0).max(100)
const source = z.string().min(1)
const note = z.string().optional()
const usErodibility = z.number().min(0).max(1)

/** Rows of data/soil/classes.json: what stands for a texture class. */
const classRow = z.strictObject({
  class: z.enum(textureClasses),
  sandPercent: percent,
  clayPercent: percent,
  coarse: z.enum(['sand', 'loam', 'clay']).describe('broad kind, as plant lists name it'),
  handling: z.string().min(3).describe('how it works under the spade'),
  source,
  note,
})

/** Rows of data/soil/compaction.json: density over the density usual for the texture. */
const compactionRow = z.strictObject({
  compaction: z.enum(['loose', 'normal', 'compacted']),
  densityFactor: z.number().min(0.9).max(1.3).describe('density over the usual density [ratio]'),
  source,
  note,
})

/** Rows of data/soil/drainage.json, fastest first: how drainage is put in words. */
const drainageRow = z.strictObject({
  minMmPerH: z.number().min(0).describe('least conductivity the words stand for [mm/h]'),
  words: z.string().min(3),
  source,
  note,
})

/** Rows of data/soil/erodibility.json: K in US units at three shares of organic matter. */
const erodibilityRow = z.strictObject({
  class: z.enum(textureClasses),
  organicHalfPercent: usErodibility.describe('K below 0.5 % of organic matter [US units]'),
  organicTwoPercent: usErodibility.describe('K at 2 % [US units]'),
  organicFourPercent: usErodibility.describe('K at 4 % [US units]'),
  source,
  note,
})

/** The four soil tables, each complete. */
export const soilTablesSchema = z.strictObject({
  classes: z.array(classRow).length(textureClasses.length),
  compaction: z.array(compactionRow).length(3),
  drainage: z.array(drainageRow).min(1),
  erodibility: z.array(erodibilityRow).length(textureClasses.length),
})

export type SoilTables = z.infer<typeof soilTablesSchema>
