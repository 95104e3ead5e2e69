import { z } from 'zod'

/** Ground covers as the water tables know them. */
const waterCovers = ['bare', 'mown', 'meadow', 'ground-cover', 'shrubs', 'trees', 'terrace', 'left'] as const

const cover = z.enum(waterCovers)
const source = z.string().min(1)
const note = z.string().optional()
const curveNumber = z.number().min(30).max(98)

/** Rows of data/water/curve-numbers.json: curve number of a cover on each soil group, usual wetness. */
const curveNumberRow = z.strictObject({
  cover,
  row: z.string().min(3).describe('the table row that stands for the cover'),
  A: curveNumber,
  B: curveNumber,
  C: curveNumber,
  D: curveNumber,
  source,
  note,
})

/** What may lie uphill of the boundary and shed onto the plot. */
const groundsBeyond = ['neighbour', 'field', 'wood', 'road', 'roof', 'own-garden'] as const

/** Rows of data/water/beyond.json: curve number of ground beyond the boundary on each soil group, usual wetness. */
const beyondRow = z.strictObject({
  what: z.enum(groundsBeyond),
  row: z.string().min(3).describe('the table row that stands for it'),
  A: curveNumber,
  B: curveNumber,
  C: curveNumber,
  D: curveNumber,
  cover: cover.describe('what grows on it, of the covers of the plot'),
  sealed: z.boolean().describe('true when nothing soaks in'),
  source,
  note,
})

/** Rows of data/water/cover-use.json: how much a cover uses, and from how deep. */
const coverUseRow = z.strictObject({
  cover,
  coefficient: z.number().min(0.1).max(1.3).describe('use over reference evapotranspiration [ratio]'),
  rootM: z.number().min(0.1).max(3).describe('depth its roots draw on [m]'),
  easyShare: z.number().min(0.1).max(0.8).describe('share taken up before plants slow down [0 to 1]'),
  source,
  note,
})

/** Rows of data/water/ground-cover.json, barest first: soil lost over that of bare ground. */
const groundCoverRow = z.strictObject({
  coverPercent: z.number().min(0).max(100),
  factor: z.number().min(0).max(1),
  source,
  note,
})

/** Rows of data/water/erosion-stages.json. */
const stageRow = z.strictObject({
  stage: z.enum(['bare', 'establishing', 'covered']),
  coverPercent: z.number().min(0).max(100),
  source,
  note,
})

/** The four water tables, each complete. */
export const waterTablesSchema = z.strictObject({
  curveNumbers: z.array(curveNumberRow).length(waterCovers.length),
  coverUse: z.array(coverUseRow).length(waterCovers.length),
  groundCover: z.array(groundCoverRow).min(2),
  stages: z.array(stageRow).length(3),
  beyond: z.array(beyondRow).length(groundsBeyond.length),
})

export type WaterTables = z.infer<typeof waterTablesSchema>
export type GroundBeyond = (typeof groundsBeyond)[number]
export type WaterCover = z.infer<typeof cover>
