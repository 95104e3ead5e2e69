import { z } from 'zod'
import { coverKinds } from './cover.types'

/** What a limit or a rule may look at. */
const measures = [
  'steepDeg',
  'wetness',
  'wetDays',
  'sunHours',
  'bareErosionTPerHa',
  'areaM2',
  'soilDepthM',
  'nearHouse',
  'servicesNear',
  'fallsTowardsHouse',
] as const

const range = z
  .strictObject({ min: z.number().optional(), max: z.number().optional() })
  .refine((given) => given.min !== undefined || given.max !== undefined, { message: 'give min, max or both' })

const when = z.partialRecord(z.enum(measures), range)

/** A row of data/care/machines.json. */
const machineSchema = z.strictObject({
  id: z.string().regex(/^[a-z-]+$/),
  name: z.string().min(3),
  guide: z.enum(['ridden', 'walked', 'robot', 'remote', 'hand']).describe('where the person is'),
  travel: z.enum(['across', 'up-and-down', 'any']).describe('which way it may go on a slope'),
  sward: z
    .array(z.enum(['short', 'tall']))
    .min(1)
    .describe('keeps a lawn short, cuts a tall meadow, or both'),
  limitDeg: z.number().min(1).max(45).describe('cautious limit where the maker’s plate is not known [°]'),
  limitBecause: z.string().min(10),
  source: z.string(),
  outputM2PerH: z
    .number()
    .positive()
    .describe('ground cut in an hour of a person’s time, on the flat [m²/h]'),
  outputBecause: z.string().min(10),
  outputSource: z.string(),
  clearsM2PerH: z
    .number()
    .positive()
    .optional()
    .describe('hay gathered and carried off in an hour; left out where the machine cannot [m²/h]'),
  clearsBecause: z.string().optional(),
  clearsSource: z.string().optional(),
})

/** data/care/machines.json. */
export const machinesSchema = z.array(machineSchema).min(1)

/** data/cover/limits.json: limits of work, where a cover is refused, and what terraces are measured by. */
export const coverLimitsSchema = z.strictObject({
  work: z.array(
    z.strictObject({
      id: z.enum(['on-foot', 'cut-on-foot', 'advice', 'steep-work', 'good-from']),
      value: z.number().positive(),
      unit: z.string(),
      because: z.string().min(10),
      source: z.string(),
    }),
  ),
  covers: z.array(
    z.strictObject({
      id: z.string(),
      cover: z.enum(coverKinds),
      measure: z.enum(measures),
      side: z.enum(['above', 'below']),
      limit: z.number(),
      because: z.string().min(10),
      source: z.string(),
    }),
  ),
  terraces: z.strictObject({
    treads: z
      .array(
        z.strictObject({
          id: z.string(),
          treadM: z.number().positive().max(10).describe('level ground from one step to the next [m]'),
          because: z.string().min(10),
          source: z.string(),
        }),
      )
      .min(1),
    steps: z.array(
      z.strictObject({
        id: z.string(),
        aboveM: z.number().min(0).describe('said where the highest step is above this [m]'),
        text: z.string().min(10),
        source: z.string(),
      }),
    ),
  }),
})

/** data/cover/rules.json: points for and against a cover. */
export const coverRulesSchema = z.array(
  z.strictObject({
    id: z.string(),
    covers: z.array(z.enum(coverKinds)).min(1),
    when: when.describe('every range must hold: from min, up to max, both included; none holds always'),
    points: z.int().min(-60).max(60),
    because: z.string().min(10),
    source: z.string(),
  }),
)

/** data/cover/cautions.json: the usual caution and whom to ask. */
export const coverCautionsSchema = z.array(
  z.strictObject({
    id: z.string(),
    covers: z.array(z.enum(coverKinds)).min(1),
    when,
    text: z.string().min(10),
    source: z.string(),
  }),
)

export type Machine = z.infer<typeof machineSchema>
export type CoverLimits = z.infer<typeof coverLimitsSchema>
type CoverRule = z.infer<typeof coverRulesSchema>[number]
type CautionRow = z.infer<typeof coverCautionsSchema>[number]
export type When = z.infer<typeof when>

/** Everything the cover stage reads from data/. */
export interface CoverTables {
  readonly machines: readonly Machine[]
  readonly limits: CoverLimits
  readonly rules: readonly CoverRule[]
  readonly cautions: readonly CautionRow[]
}

/** What rules, limits and cautions may look at; yes is 1, no is 0. */
export type Measured = Readonly<Record<(typeof measures)[number], number>>
