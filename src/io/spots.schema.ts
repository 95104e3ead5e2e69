import { z } from 'zod'
import { scoreNames } from '#core/scores'
import { figure } from './figure'
import { citationSchema } from './findings.schema'
import { soilFindingsSchema } from './findings-ground.schema'
import { factsSchema, scoreSchema, verdictSchema } from './findings-zone.schema'

const spot = z.strictObject({
  id: z.string().describe('as in the file'),
  soil: soilFindingsSchema,
  facts: factsSchema,
  scores: z.strictObject(Object.fromEntries(scoreNames.map((name) => [name, scoreSchema]))),
  heatLoad: figure('McCune and Keon’s heat load, null beyond 60° of latitude', {
    unit: 'MJ/cm² a year',
    decimals: 3,
  }).nullable(),
  plants: z.array(verdictSchema).describe('the best plants, when asked for with --plants'),
  plant: verdictSchema.nullable().describe('the plant asked for with --plant'),
})

/** What `lynchet spot --json` writes. Version 1. */
export const spotsSchema = z.strictObject({
  format: z.literal('lynchet-spots').describe('says what the file is'),
  version: z.literal(1).describe('of this format'),
  spots: z.array(spot).describe('one to each row, in their order'),
  sources: z.record(z.string(), citationSchema).describe('every source named above'),
})
