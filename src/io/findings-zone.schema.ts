import { z } from 'zod'
import { factNames, factTable, scoreNames } from '#core/scores'
import { accountSchema, reasonSchema } from './account.schema'
import { slopeErrorSchema } from './findings-accuracy.schema'
import { coverSchema } from './findings-cover.schema'
import { figure, twelve } from './figure'
import { ringSchema, stretchSchema } from './findings-ground.schema'
import { zoneSunSchema } from './findings-sun.schema'

const source = z.string().describe('key of sources')
const areas = { unit: 'm²', decimals: 2, least: 0 }
const shares = { unit: '0 to 1', decimals: 4, least: 0, most: 1 }
const degrees = { unit: '°', decimals: 2, least: 0, most: 90 }
const depth = { unit: 'mm of water over the plan area', decimals: 2 }
const hundred = z.int().min(0).max(100)

/** Figures are kept this many decimals finer than they are shown. */
const FINER = 2

/** The facts of a place that the rules look at, in the units of the rules. */
export const factsSchema = z.strictObject(
  Object.fromEntries(
    factNames.map((name) => {
      const { meaning, unit, decimals } = factTable[name]
      return [
        name,
        unit === '%' && name !== 'stonesPercent'
          ? figure(meaning.replace('100 %', '1'), { unit: 'ratio', decimals: decimals + 2 * FINER })
          : figure(meaning, { unit, decimals: decimals + FINER }),
      ]
    }),
  ),
)

export const scoreSchema = z.strictObject({
  value: hundred.describe('what stands: the person’s own score, or ours [points of 100]'),
  class: z.string().describe('named class of the value'),
  ours: hundred.describe('our score [points of 100]'),
  account: accountSchema,
  override: z
    .strictObject({ score: hundred.describe('the person’s own score [points of 100]'), reason: z.string() })
    .nullable(),
})

const scoresSchema = z.strictObject(Object.fromEntries(scoreNames.map((name) => [name, scoreSchema])))

/** The verdict on a plant. */
export const verdictSchema = z.strictObject({
  plantId: z.string(),
  name: z.string().describe('accepted botanical name'),
  common: z.string().describe('English name'),
  offered: z.boolean().describe('true when it may be planted here'),
  fit: figure('fit to the place, 0 when refused', {
    unit: 'points of 100',
    decimals: 0,
    least: 0,
    most: 100,
  }),
  bindingClass: figure('how well its roots hold ground', { unit: 'class 0 to 5', decimals: 2 }),
  reasons: z.array(reasonSchema),
  barred: z.boolean().describe('planting or selling is barred where the plot is'),
  takesOver: z.boolean().describe('it takes a zone over'),
  poisonous: z
    .strictObject({
      ingestion: z.enum(['none', 'low', 'moderate', 'severe']),
      skin: z.string(),
      parts: z.string(),
      animals: z.string(),
      source,
    })
    .nullable(),
  law: z.array(
    z.strictObject({
      region: z.string(),
      list: z.string(),
      effect: z.string(),
      binding: z.boolean(),
      source,
    }),
  ),
})

const months = z.strictObject({
  from: figure('soonest', { unit: 'months', decimals: 0, least: 0 }),
  to: figure('latest', { unit: 'months', decimals: 0, least: 0 }),
})

const mixLine = z.strictObject({
  plantId: z.string(),
  layer: z.enum(['ground', 'shrub', 'tree', 'meadow']),
  share: figure('share of the slope area, or of the seed by weight', shares),
  spacingM: figure('distance between plants along the slope', { unit: 'm', decimals: 2, least: 0 }),
  perM2: figure('plants per m² of slope', { unit: '1/m²', decimals: 2, least: 0 }),
  count: z.int().min(0).describe('plants to order [number]'),
  seedG: figure('seed to sow, null when planted', { unit: 'g', decimals: 1, least: 0 }).nullable(),
  monthsToCover: months.nullable(),
  because: z.string(),
})

const plantingSchema = z.strictObject({
  offered: z.array(verdictSchema).describe('best first'),
  refused: z.array(verdictSchema),
  mix: z.array(mixLine),
  monthsToCover: months.nullable().describe('months to 80 % cover'),
  coverByYear: z
    .array(figure('ground covered', shares))
    .describe('years 0 to 10; empty when nothing is planted'),
  costClass: figure('indicative cost per m² of slope', { unit: 'class 1 to 5', decimals: 1 }).nullable(),
  none: z.string().nullable().describe('why the mix is empty, when it is'),
})

const waterMonth = z.strictObject({
  rainMm: figure('rain', depth),
  runOnMm: figure('surface water from zones above', depth),
  lateralInMm: figure('water through the soil from zones above', depth),
  referenceEtMm: figure('reference evapotranspiration, level ground', depth),
  demandMm: figure('what the cover would use on this slope', depth),
  actualEtMm: figure('what it uses', depth),
  runoffMm: figure('leaves over the surface', depth),
  lateralOutMm: figure('leaves sideways through the soil', depth),
  drainageMm: figure('leaves downwards', depth),
  storedChangeMm: figure('change of the water stored', depth),
  availableMm: figure('left for plants at the month’s end', depth),
  fullness: figure('available water over what the soil can hold for plants', { unit: 'ratio', decimals: 4 }),
  dryDays: figure('days too dry for plants', { unit: 'd', decimals: 1, least: 0, most: 31 }),
  wetDays: figure('days above field capacity', { unit: 'd', decimals: 1, least: 0, most: 31 }),
  airlessDays: figure('days when roots are short of air', { unit: 'd', decimals: 1, least: 0, most: 31 }),
})

const soilLoss = z.strictObject({
  stage: z.enum(['bare', 'establishing', 'covered']).describe('how far plants have come'),
  coverPercent: figure('ground covered', { unit: '%', decimals: 0, least: 0, most: 100 }),
  tPerHaYear: figure('soil lost', { unit: 't/ha a year', decimals: 2, least: 0 }),
  mmPerYear: figure('the same as a depth', { unit: 'mm a year', decimals: 3, least: 0 }),
})

export const zoneFindingsSchema = z.strictObject({
  id: z.string().describe('name of the zone that other entries use'),
  letter: z.string().describe('letter on every drawing, A at the top'),
  name: z.string().describe('what it is called'),
  band: z.enum(['crest', 'upper', 'mid', 'lower', 'foot']).describe('where it lies on the slope'),
  ring: ringSchema.describe('outline in plan'),
  planAreaM2: figure('area seen from above', areas),
  slopeAreaM2: figure('area on the ground itself', areas),
  slopeDegMean: figure('mean steepness', degrees),
  slopeDegSteep: figure('nine tenths are no steeper', degrees),
  slopeError: slopeErrorSchema,
  aspectDeg: figure('direction faced, null when level', {
    unit: '° clockwise from true north',
    decimals: 2,
  }).nullable(),
  position: figure('place on the slope, 0 foot to 1 crest', shares),
  formDown: figure('curvature down the slope', { unit: '1/m', decimals: 5 }),
  formAcross: figure('curvature across the slope', { unit: '1/m', decimals: 5 }),
  upslopeAreaM2: figure(
    'plan area that drains into it from above, described ground beyond the boundary included',
    areas,
  ),
  levelM: z.strictObject({
    highest: figure('highest level', { unit: 'm', decimals: 3 }),
    lowest: figure('lowest level', { unit: 'm', decimals: 3 }),
  }),
  lengthM: figure('length down the slope', { unit: 'm plan', decimals: 2, least: 0 }),
  sunRatio: twelve(
    figure('radiation over open level ground, per m² of plan', { unit: 'ratio', decimals: 4 }),
  ),
  seasonSunRatio: figure('radiation over open level ground, growing season, per m² of slope', {
    unit: 'ratio',
    decimals: 4,
  }),
  sun: zoneSunSchema.describe('its direct sun, and what takes it'),
  spans: z.array(stretchSchema).describe('where the section crosses it'),
  handsOn: z
    .array(
      z.strictObject({
        to: z.string().describe('the zone that receives'),
        share: figure('share of its water', shares),
      }),
    )
    .describe('who receives its water; the rest leaves the plot'),
  soilSampleId: z.string().describe('the soil it stands on'),
  facts: factsSchema,
  scores: scoresSchema,
  cover: coverSchema,
  planting: plantingSchema,
  water: z.strictObject({ months: twelve(waterMonth), account: accountSchema }),
  soilLoss: z.array(soilLoss),
})
