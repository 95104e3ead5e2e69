import { z } from 'zod'

/** One way to measure a slope, and how good it is. */
const surveyMethodSchema = z.strictObject({
  id: z.string().min(1),
  name: z.string().min(1),
  /** Standard error of a level taken with it, near the instrument [m]. */
  levelSdM: z.number().positive(),
  /** Growth of that error with the distance levelled over [m for each m]. */
  levelSdPerM: z.number().min(0),
  /** Standard error of an angle read with it [°]; null where it reads none. */
  angleSdDeg: z.number().positive().nullable(),
  /** Standard error of a point's place in plan [m]. */
  planSdM: z.number().positive(),
  /** Kinds of ground it suits: bank, profile, levels, grid. */
  suits: z.array(z.enum(['bank', 'profile', 'levels', 'grid'])).min(1),
  /** What to expect of it, in a sentence. */
  expect: z.string().min(1),
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

export const surveyTablesSchema = z.strictObject({
  methods: z.array(surveyMethodSchema).min(1),
  allowables: z.array(allowableSchema).min(1),
})

export type SurveyMethod = z.infer<typeof surveyMethodSchema>
export type Allowable = z.infer<typeof allowableSchema>
export type SurveyTables = z.infer<typeof surveyTablesSchema>
