import { z } from 'zod'

/** Kinds of things that stand in the light; all others lie flat. */
const standingKinds = ['house', 'building', 'wall', 'fence', 'hedge', 'tree'] as const

const leaf = z.enum(['deciduous', 'evergreen'])
const share = z.number().min(0).max(1)
const source = z.string().min(1)
const note = z.string().optional()

/** Rows of `kinds` in data/shade/things.json: how a thing of each kind stands. */
const kindRow = z.strictObject({
  kind: z.enum(standingKinds),
  shape: z
    .enum(['building', 'line', 'crown'])
    .describe('walls and roof, a line whose top follows the ground, or a crown'),
  leaf: leaf.optional().describe('whether it usually drops its leaves; only of kinds that have leaves'),
  source,
  note,
})

/** Rows of `light`: direct light that comes through leaves and bare branches. */
const lightRow = z.strictObject({
  kind: z.enum(['hedge', 'tree']),
  leaf,
  leafyLight: share.describe('in leaf [0 to 1]'),
  bareLight: share.describe('through bare branches [0 to 1]'),
  source,
  note,
})

/** Crown of a tree of which only the height is known. */
const crownRow = z.strictObject({
  baseShare: share.describe('height of the lowest branches over that of the tree [0 to 1]'),
  widthShare: z.number().positive().max(3).describe('width of the crown over the height of the tree [ratio]'),
  source,
  note,
})

/** Months in full leaf in the north. */
const leafMonthsRow = z.strictObject({
  from: z.int().min(1).max(12),
  to: z.int().min(1).max(12),
  source,
  note,
})

/** Rows of data/shade/light-classes.json, in order: the first that fits a place counts. */
const lightClassRow = z.strictObject({
  id: z.enum(['full-sun', 'part-shade', 'dappled', 'shade', 'deep-shade']),
  name: z.string().min(3),
  aboveHours: z.number().min(0).max(24).optional().describe('direct sun at midsummer above this [h]'),
  mostHours: z.number().min(0).max(24).optional().describe('direct sun at midsummer up to this [h]'),
  leastLeafyHours: z.number().min(0).max(24).optional().describe('at least this long through leaves [h]'),
  aboveLeafyShare: share
    .optional()
    .describe('share of the time with sun that it comes through leaves, above this [0 to 1]'),
  because: z.string().min(10),
  source,
})

/** How things stand in the light, and what the light of a place is called. */
export const shadeTablesSchema = z.strictObject({
  things: z.strictObject({
    kinds: z.array(kindRow).length(standingKinds.length),
    light: z.array(lightRow).length(4),
    crown: crownRow,
    leafMonths: leafMonthsRow,
  }),
  lightClasses: z.array(lightClassRow).length(5),
})

export type ShadeTables = z.infer<typeof shadeTablesSchema>
