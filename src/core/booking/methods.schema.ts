import { z } from 'zod'

const sentence = z.string().min(1)

/** A column of a method's field sheet. */
const sheetColumnSchema = z.strictObject({
  head: z.string().min(1),
  unit: z.string().min(1).nullable(),
  /** What is written in it. */
  holds: z.enum(['word', 'figure', 'remark']),
})

/** One way to measure a slope, how good it is, and how it is done. */
const surveyMethodSchema = z.strictObject({
  id: z.string().min(1),
  name: z.string().min(1),
  /** Standard error of a level taken with it, near the instrument, or of one set-up or step [m]. */
  levelSdM: z.number().positive(),
  /** Growth of that error with the distance levelled, shared by all of it [m for each m]. */
  levelSdPerM: z.number().min(0),
  /** Standard error of an angle read with it [°]; null where it reads none. */
  angleSdDeg: z.number().positive().nullable(),
  /** Standard error of one taped length [m]; 0 where none is taped. */
  lengthSdM: z.number().min(0),
  /** Standard error of a point's place in plan [m]. */
  planSdM: z.number().positive(),
  /** Kinds of ground it suits: bank, profile, levels, grid. */
  suits: z.array(z.enum(['bank', 'profile', 'levels', 'grid'])).min(1),
  /** Kind of field book it fills; null where it is none of ours. */
  book: z.enum(['level-book', 'chain', 'steps', 'string']).nullable(),
  /** What to expect of it, in a sentence. */
  expect: sentence,
  /** What to bring. */
  needs: z.array(sentence).min(1),
  /** How many it takes. */
  people: z.union([z.literal(1), z.literal(2)]),
  /** How it is done, in order. */
  steps: z.array(sentence).min(4).max(8),
  /** What can hurt, and what not to trust. */
  cautions: z.array(sentence).min(1),
  /** Columns of its field sheet. */
  columns: z.array(sheetColumnSchema).min(2).max(10),
  source: z.string().min(1),
})

/** A rule for how far a closed level line may miss. */
const allowableSchema = z.strictObject({
  id: z.string().min(1),
  name: z.string().min(1),
  /** Per root of what: kilometres of line or set-ups of the level. */
  per: z.enum(['root-km', 'root-set-ups']),
  /** Allowed misclosure [mm for one root]. */
  limitMm: z.number().positive(),
  source: z.string().min(1),
})

/** When ground is better surveyed by a professional. */
const adviceRuleSchema = z.strictObject({
  id: z.string().min(1),
  when: z.strictObject({
    /** Least slope it holds for [°]. */
    minSlopeDeg: z.number().min(0).max(90),
    /** Least plan area it holds for [m²]. */
    minAreaM2: z.number().min(0),
  }),
  /** The reason; {slopeDeg} and {areaM2} stand for the figures of the ground. */
  because: sentence,
  source: z.string().min(1),
})

export const surveyTablesSchema = z.strictObject({
  methods: z.array(surveyMethodSchema).min(1),
  allowables: z.array(allowableSchema).min(1),
  advice: z.array(adviceRuleSchema).min(1),
})

export type SurveyMethod = z.infer<typeof surveyMethodSchema>
export type Allowable = z.infer<typeof allowableSchema>
export type AdviceRule = z.infer<typeof adviceRuleSchema>
export type SurveyTables = z.infer<typeof surveyTablesSchema>
