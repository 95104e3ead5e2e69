import { z } from 'zod'
import { factNames } from './facts'
import { scoreNames } from './score.types'

const id = z.string().regex(/^[a-z0-9-]+$/, 'an id is made of small letters, figures and hyphens')
const fact = z.enum(factNames)
const source = z.string().min(1)

/** A sentence with the zone's own figures: {slopeDeg} stands for the fact with its unit. */
const sentence = z
  .string()
  .min(5)
  .refine(
    (words) =>
      [...words.matchAll(/\{(\w*)\}/g)].every(([, name]) => factNames.some((known) => known === name)),
    'the sentence names a fact that does not exist',
  )

const condition = z
  .strictObject({
    above: z.number().optional().describe('the fact must be above this'),
    below: z.number().optional().describe('the fact must be below this'),
  })
  .refine(({ above, below }) => above !== undefined || below !== undefined, 'say above or below what')

const conditions = z.partialRecord(fact, condition)

/** Points by the size of one fact: straight between the rows, level beyond them. */
const pointTable = z.strictObject({
  fact,
  table: z
    .array(z.tuple([z.number(), z.number().min(-100).max(100)]))
    .min(2, 'a table needs two rows')
    .refine(
      (rows) => rows.every(([at], index) => index === 0 || at > (rows[index - 1]?.[0] ?? at)),
      'the rows must rise',
    ),
})

/** One rule: when it counts, what it adds or takes away, and why. */
const scoreRuleSchema = z.strictObject({
  id,
  score: z.enum(scoreNames),
  when: conditions.optional().describe('all must hold; always when left out'),
  points: z.union([z.int(), pointTable]),
  because: sentence.describe('why, when the rule adds points'),
  becauseLess: sentence.optional().describe('why, when it takes points away'),
  source,
})

const baseSchema = z.strictObject({
  id,
  score: z.enum(scoreNames),
  points: z.int().min(0).max(100),
  because: sentence,
  source,
})

const classSchema = z.strictObject({
  score: z.enum(scoreNames),
  from: z.int().min(0).max(100).describe('lowest score of the class'),
  name: z.string().min(2),
  source,
})

const moistureRowSchema = z.strictObject({
  fromScore: z.int().min(0).max(100),
  class: z.int().min(1).max(12),
  meaning: z.string(),
  source,
})

const lightRowSchema = z.strictObject({
  upToHours: z.number().positive().max(24),
  class: z.int().min(1).max(9),
  meaning: z.string(),
  source,
})

/** Something that could be done, and what it would do to the facts. */
const changeSchema = z.strictObject({
  id,
  what: z.string().min(5),
  scores: z.array(z.enum(scoreNames)).min(1).describe('scores it bears on'),
  when: conditions.optional(),
  set: z.partialRecord(
    fact,
    z.strictObject({
      times: z.number().min(0).optional(),
      plus: z.number().optional(),
      atMost: z.number().optional().describe('it raises the fact no further than this'),
    }),
  ),
  because: z.string().min(5),
  source,
})

const rows = <Row extends z.ZodType>(row: Row) => z.array(row).min(1)

/** The tables of data/rules, one entry to a file. */
export const scoreRulesSchema = z
  .strictObject({
    bases: rows(baseSchema),
    wetness: rows(scoreRuleSchema),
    sun: rows(scoreRuleSchema),
    erosion: rows(scoreRuleSchema),
    frost: rows(scoreRuleSchema),
    working: rows(scoreRuleSchema),
    classes: rows(classSchema),
    moistureScale: rows(moistureRowSchema),
    lightScale: rows(lightRowSchema),
    changes: rows(changeSchema),
  })
  .refine(
    (tables) => scoreNames.every((name) => tables[name].every(({ score }) => score === name)),
    'a rule stands in the table of another score',
  )
  .refine(
    (tables) => scoreNames.every((name) => tables.bases.filter(({ score }) => score === name).length === 1),
    'every score needs exactly one base',
  )
  .refine(
    (tables) =>
      scoreNames.every((name) => tables.classes.some(({ score, from }) => score === name && from === 0)),
    'every score needs a class that starts at 0',
  )
  .refine(
    (tables) => tables.moistureScale.some(({ fromScore }) => fromScore === 0),
    'the moisture scale must start at 0',
  )
  .refine(
    (tables) => tables.lightScale.some(({ upToHours }) => upToHours === 24),
    'the light scale must reach 24 h',
  )
  .refine(
    (tables) =>
      scoreNames.every(
        (name) => new Set(tables[name].map(({ id: one }) => one)).size === tables[name].length,
      ),
    'two rules of a score share an id',
  )

export type ScoreRule = z.infer<typeof scoreRuleSchema>
export type ScoreRules = z.infer<typeof scoreRulesSchema>
export type Conditions = z.infer<typeof conditions>
export type ScoreChange = z.infer<typeof changeSchema>
