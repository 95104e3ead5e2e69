import { z } from 'zod'

/** Parts of the world in which the table says what is hardy, obtainable and native. */
export const plantRegions = ['british-isles', 'europe', 'north-america', 'australia-nz'] as const

const lifeForms = [
  'tree',
  'shrub',
  'subshrub',
  'climber',
  'perennial',
  'grass',
  'sedge-rush',
  'fern',
  'bulb',
  'biennial',
  'annual',
] as const

/** How roots hold ground; the single best guess at binding. */
export const rootHabits = [
  'fibrous',
  'rhizome-short',
  'rhizome-running',
  'stolon',
  'node-rooting',
  'layering',
  'suckering',
  'tap',
  'tap-branched',
  'heart',
  'plate',
  'tuber-bulb',
  'tussock',
] as const

const zeroToFive = z.number().min(0).max(5)
const zeroToFour = z.int().min(0).max(4)

// Best value and tolerated range on a scale.
const tolerance = (most: number) =>
  z
    .strictObject({
      from: z.number().min(1).max(most),
      best: z.number().min(1).max(most),
      to: z.number().min(1).max(most),
    })
    .refine(
      (range) => range.from <= range.best && range.best <= range.to,
      'the best value lies outside the range',
    )

/** One taxon of the plant table. */
export const plantSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  name: z.string().min(3).describe('accepted botanical name'),
  synonyms: z.array(z.string()).describe('other names still in use'),
  common: z.string().min(2).describe('English name'),
  family: z.string().min(4),
  lifeForm: z.enum(lifeForms),
  persistence: z.enum(['evergreen', 'semi', 'winter-green', 'summer-green', 'ephemeral']),
  winterCover: z.number().min(0).max(1).describe('share of ground shaded in the dormant season at closure'),
  heightM: z.number().positive().max(40).describe('height at maturity [m]'),
  spreadM: z.number().positive().max(30).describe('width at maturity [m]'),
  yearsToMature: z.number().min(1).max(40).describe('years to 90 % of its spread [a]'),
  spreadMPerYear: z
    .number()
    .min(0)
    .max(3)
    .describe('radial advance of one planted unit on ordinary soil [m/a]'),
  rootHabit: z.array(z.enum(rootHabits)).min(1),
  rootDepthM: z
    .strictObject({ bulk: z.number().positive().max(5), max: z.number().positive().max(10) })
    .refine((depth) => depth.bulk <= depth.max, 'the bulk of roots lies deeper than the deepest root'),
  binding: z
    .strictObject({ mat: zeroToFive, depth: zeroToFive, regrowth: zeroToFive, yearRound: zeroToFive })
    .describe(
      'the four parts of soil binding, each 0 to 5: top mat, depth, regrowth from nodes or suckers, cover all year',
    ),
  dominance: z.int().min(0).max(5).describe('how far it takes over a mix; 5 takes the zone'),
  runMPerYear: z.number().min(0).max(5).describe('furthest new shoot in a year [m/a]'),
  selfSeed: zeroToFour,
  moisture: tolerance(12).describe('soil moisture, 1 arid, 3 dry, 5 fresh, 7 moist, 9 wet, 10 to 12 water'),
  light: tolerance(9).describe('light, 1 to 3 deep shade, 4 to 5 half shade, 6 to 7 bright, 8 to 9 full sun'),
  ph: z.strictObject({ from: z.number().min(3).max(9), to: z.number().min(3).max(10) }),
  textures: z.strictObject({ sand: z.boolean(), loam: z.boolean(), clay: z.boolean() }),
  drought: zeroToFour.describe('4 = no water after the first year in 600 mm of rain on sand'),
  waterlogging: zeroToFour.describe('0 dies in a week, 2 winter wet, 4 permanent'),
  wetWinterDrySummer: z.boolean().describe('bears a wet winter and a dry summer'),
  tMinC: z.number().min(-50).max(10).describe('lowest temperature survived, established and drained [°C]'),
  heat: z.enum(['cool', 'mild', 'warm', 'hot']).describe('summer heat it bears'),
  exposure: zeroToFour.describe('wind'),
  salt: z.int().min(0).max(3),
  nitrogenFixing: z.boolean(),
  native: z.array(z.enum(plantRegions)),
  sold: z.array(z.enum(plantRegions)).describe('regions where nurseries commonly have it'),
  unit: z.enum([
    'seed',
    'plug',
    '9 cm pot',
    '1 l pot',
    '2 l pot',
    '3 l pot',
    'bare root',
    'live stake',
    'bulb',
  ]),
  spacingM: z.number().positive().max(12).describe('advised distance between plants, staggered rows [m]'),
  unitRadiusM: z.number().min(0).max(0.5).describe('radius of the planted unit [m]'),
  establishes: z.enum(['easy', 'usual', 'slow']),
  lifeYears: z.number().min(1).max(300).describe('years before gaps open [a]'),
  thorns: z.int().min(0).max(3),
  flammable: z.int().min(0).max(2),
  wildlife: z.int().min(0).max(3).describe('nectar, larval food, fruit and seed taken together'),
  cost: z.int().min(1).max(5).describe('indicative cost class per planted unit'),
  meadowOnly: z.boolean().describe('grown in sown or plugged swards, not offered as ground cover'),
  uses: z
    .array(z.enum(['ground', 'shrub', 'tree', 'meadow', 'filler']))
    .min(1)
    .describe('layers of a mix it may stand in'),
  confidence: z.int().min(1).max(3).describe('3 well known, 1 best guess'),
  source: z.string().describe('key of data/sources.json'),
  note: z.string().optional(),
})

/** A restriction on planting or selling a taxon somewhere. */
export const legalRowSchema = z.strictObject({
  name: z.string(),
  listedAs: z.string(),
  except: z.array(z.string()).optional().describe('species that an entry for a whole genus leaves out'),
  region: z.string(),
  list: z.string(),
  effect: z.string(),
  acts: z.array(z.enum(['plant-in-wild', 'sell', 'grow', 'label', 'noxious', 'advice'])),
  binding: z.boolean(),
  year: z.number().nullable(),
  provenance: z.string(),
  confidence: z.string(),
  source: z.string(),
})

/** What is known to be poisonous about a taxon or genus. */
export const toxicityRowSchema = z.strictObject({
  name: z.string(),
  ingestion: z.enum(['none', 'low', 'moderate', 'severe']),
  skin: z.string(),
  parts: z.string(),
  animals: z.string(),
  provenance: z.string(),
  source: z.string(),
  note: z.string(),
})

export type Plant = z.infer<typeof plantSchema>
export type PlantRegion = (typeof plantRegions)[number]
export type LegalRow = z.infer<typeof legalRowSchema>
export type ToxicityRow = z.infer<typeof toxicityRowSchema>
