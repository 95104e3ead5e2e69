import { z } from 'zod'
import { coverKinds, type CoverTables } from '#core/cover'

/** A stretch of one month, written "08" for all of it or "07:25-31" for some days; northern months. */
const windowSchema = z
  .string()
  .regex(/^(0[1-9]|1[0-2])(:\d{1,2}-\d{1,2})?$/, 'write a month as "08" or "07:25-31"')

const timingSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('growing').describe('in every month warm enough for grass'),
    timesPerMonth: z.int().min(1).max(5),
  }),
  z.strictObject({
    kind: z.literal('visits'),
    visits: z
      .array(z.array(windowSchema).min(1))
      .min(1)
      .describe('for each visit the months it may fall in, best first'),
  }),
  z.strictObject({
    kind: z.literal('dry-weeks').describe('each week of these months that rain leaves short'),
    months: z.array(windowSchema).min(1),
    litresPerM2Week: z.number().positive(),
  }),
])

/** A row of data/care/operations.json. */
const operationSchema = z
  .strictObject({
    id: z.string().regex(/^[a-z-]+$/),
    covers: z.array(z.enum(coverKinds)).min(1),
    mark: z.enum(['mow', 'cut', 'weed', 'plant', 'rake', 'look']),
    what: z.string().min(3),
    how: z.string().min(10),
    howSource: z.string().optional().describe('where the way of working comes from, when not from `source`'),
    because: z.string().min(10),
    source: z.string(),
    firstYearOnly: z.boolean(),
    untilSteepDeg: z.number().positive().max(45).optional().describe('not on ground steeper than this [°]'),
    timing: timingSchema,
    work: z
      .enum(['mow', 'cut', 'clear', 'walk', 'level', 'hand'])
      .describe(
        'by a machine for short grass, for tall grass, for hay if there is one, walking the slope, walking round it, or by hand',
      ),
    basis: z.enum(['area', 'edge', 'plants']).describe('what is counted: m² of slope, m of edge, plants'),
    layers: z
      .array(z.enum(['ground', 'shrub', 'tree']))
      .min(1)
      .optional()
      .describe('layers of the mix whose plants are counted, when plants are'),
    share: z.number().positive().max(1).describe('part of it worked at each visit'),
    minimumH: z.number().positive().describe('least time of a visit, fetching tools counted in [h]'),
    avoid: z.array(z.enum(['wet', 'birds', 'frost'])),
    perHour: z.number().positive().optional().describe('output on the flat; the machine’s own when left out'),
    perHourUnit: z.enum(['m²/h', 'm/h', 'plants/h', 'L/h']).optional(),
    perHourBecause: z.string().optional(),
    outputSource: z.string().optional(),
  })
  .refine((row) => (row.perHour === undefined) === (row.work === 'mow' || row.work === 'cut'), {
    message: 'work with a machine takes the machine’s output; all other work states its own',
  })
  .refine((row) => (row.layers === undefined) === (row.basis !== 'plants'), {
    message: 'say which layers are counted when plants are counted, and only then',
  })

/** data/care/operations.json. */
export const operationsSchema = z.array(operationSchema).min(1)

/** data/care/windows.json: when to keep off, and how the slope slows work. */
export const careWindowsSchema = z.strictObject({
  limits: z.array(
    z.strictObject({
      id: z.enum(['growing', 'wet-days', 'frost']),
      value: z.number(),
      unit: z.string(),
      because: z.string().min(10),
      source: z.string(),
    }),
  ),
  nesting: z.array(
    z.strictObject({
      id: z.string(),
      regions: z.array(z.string()).min(1).describe('names of places whose law it is; * is everywhere else'),
      fromMonth: z.int().min(1).max(12).describe('northern month'),
      toMonth: z.int().min(1).max(12),
      binding: z.boolean(),
      text: z.string().min(10),
      source: z.string(),
    }),
  ),
  effort: z.array(
    z.strictObject({
      id: z.enum(['walked', 'level', 'hand', 'ridden', 'remote', 'robot']),
      share: z.number().min(0).max(1).describe('part of the walking penalty that this work feels'),
      because: z.string().min(10),
      source: z.string(),
    }),
  ),
})

export type Operation = z.infer<typeof operationSchema>
export type CareWindows = z.infer<typeof careWindowsSchema>

/** Everything the care stage reads from data/. */
export interface CareTables {
  readonly cover: CoverTables
  readonly operations: readonly Operation[]
  readonly windows: CareWindows
}
