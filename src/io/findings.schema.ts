import { z } from 'zod'
import { accountSchema } from './account.schema'
import { aroundSchema, placeSchema } from './findings-around.schema'
import { accuracySchema } from './findings-accuracy.schema'
import { figure } from './figure'
import { careSchema } from './findings-care.schema'
import {
  climateFindingsSchema,
  frameSchema,
  openLevelSchema,
  sectionSchema,
  sightSchema,
  soilFindingsSchema,
  surfaceSchema,
} from './findings-ground.schema'
import { cautionsSchema } from './findings-cover.schema'
import { standingSchema, trialFindingsSchema } from './findings-sun.schema'
import { zoneFindingsSchema } from './findings-zone.schema'

const settlement = z.strictObject({
  id: z.string(),
  kind: z.enum(['danger', 'clash', 'gap']),
  what: z.string(),
  mend: z.string(),
  zoneId: z.string().nullable(),
  atM: figure('where on the section, null when nowhere in particular', {
    unit: 'm plan from the top edge',
    decimals: 2,
  }).nullable(),
  at: placeSchema.nullable().describe('where in plan, null when a zone, the section or nothing says it'),
  source: z.string().describe('key of sources'),
})

/** A grid; each layer is rounded to the decimals it states. */
const layer = z.strictObject({
  name: z.string(),
  unit: z.string(),
  decimals: z.int().min(0).describe('decimals kept [number]'),
  method: z.string(),
  source: z.string().describe('key of sources'),
  ...frameSchema.shape,
  values: z
    .array(z.number().nullable().describe('null outside the plot [the layer’s own unit]'))
    .describe('row by row from the north-west'),
})

/** Where a figure or rule comes from. */
export const citationSchema = z.strictObject({
  kind: z.string(),
  cite: z.string(),
  note: z.string().nullable(),
})

/** Everything derived from a plan, as JSON. Version 2. */
export const findingsSchema = z.strictObject({
  format: z.literal('lynchet-findings'),
  version: z.literal(2),
  plan: z.string().describe('name of the plan'),
  surface: surfaceSchema,
  accuracy: accuracySchema.describe('what the errors of level and slope were reckoned from'),
  section: sectionSchema,
  around: aroundSchema,
  sights: z.array(sightSchema).describe('what each house at the top sees of the slope'),
  climate: climateFindingsSchema,
  openLevel: openLevelSchema,
  standing: z.array(standingSchema).describe('what stands in the light'),
  trials: z.array(trialFindingsSchema).describe('what each trial of the plan would bring'),
  soils: z.array(soilFindingsSchema).describe('one to each soil sample, in their order'),
  zonesSuggested: z.boolean().describe('true when the zones were suggested, false when drawn'),
  zones: z.array(zoneFindingsSchema).describe('from the top down'),
  water: accountSchema.describe('the whole plot’s water of a usual year [m³ a year]'),
  care: careSchema,
  cautions: cautionsSchema.describe('every caution that stands on the plot'),
  toSettle: z.array(settlement).describe('dangers, clashes and gaps still open'),
  layers: z.array(layer).describe('the grids; empty with --without-layers'),
  sources: z.record(z.string(), citationSchema).describe('every source named above'),
})
