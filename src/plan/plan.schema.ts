import { z } from 'zod'
import { climateSchema } from '#core/climate'
import { coverKinds } from '#core/cover'
import { plantRegions } from '#core/plants'
import { soilSampleSchema } from '#core/soil'
import { groundSurveySchema } from '#core/survey'
import { zoneSchema } from '#core/zones'

const point = z.strictObject({
  eastM: z.number().describe('east of the plot’s origin [m]'),
  northM: z.number().describe('north of the plot’s origin [m]'),
})

export const obstacleSchema = z.strictObject({
  id: z.string().min(1),
  kind: z.enum([
    'house',
    'wall',
    'fence',
    'hedge',
    'tree',
    'path',
    'drain',
    'downpipe',
    'spring',
    'paving',
    'services',
  ]),
  name: z.string().min(1),
  ring: z.array(point).min(1).describe('outline, line or single point in plan [m]'),
  heightM: z.number().min(0).max(60).optional().describe('height above the ground [m]'),
  note: z.string().max(400).optional(),
})

export const machineSchema = z.strictObject({
  id: z.string().describe('key of data/care/machines.json'),
  limitDeg: z
    .number()
    .min(0)
    .max(45)
    .optional()
    .describe('steepest slope on the maker’s plate [°]; the table’s cautious figure when left out'),
})

export const briefSchema = z.strictObject({
  machines: z.array(machineSchema).describe('what mows here'),
  hoursPerYear: z.number().min(0).max(100_000).optional().describe('hours of care available [h a year]'),
  ratePerHourMinor: z.int().min(0).optional().describe('cost of an hour, in minor units of the currency'),
  currency: z.string().length(3).describe('ISO 4217 code'),
  whoWorks: z.enum(['household', 'gardener', 'crew']),
  children: z.boolean(),
  pets: z.boolean(),
  nativeShare: z.number().min(0).max(1).describe('least share of plants native to the region'),
  heightLimitM: z.number().positive().max(40).optional().describe('tallest plant wanted, for views [m]'),
  fallsTowardsHouse: z.boolean().optional().describe('the ground falls towards a house'),
})

export const choiceSchema = z.strictObject({
  zoneId: z.string(),
  cover: z.enum(coverKinds).optional().describe('what the person decided the zone shall be'),
  plants: z.array(z.string()).optional().describe('ids of plants the person insists on'),
  without: z.array(z.string()).optional().describe('ids of plants the person does not want'),
})

export const overrideSchema = z.strictObject({
  zoneId: z.string(),
  score: z.enum(['wetness', 'sun', 'erosion', 'frost', 'working']),
  value: z.int().min(0).max(100),
  reason: z.string().min(3, 'say why you know better: both figures stay on show').max(400),
})

/** A plan, version 1: what the person measured and decided. Nothing derived is ever stored in it. */
export const planSchema = z.strictObject({
  format: z.literal('lynchet-plan'),
  version: z.literal(1),
  name: z.string().min(1, 'give the plan a name').max(120),
  note: z.string().max(4000).optional(),
  site: z.strictObject({
    latitudeDeg: z.number().min(-90).max(90).describe('latitude of the plot’s origin, north positive [°]'),
    longitudeDeg: z.number().min(-180).max(180).describe('longitude, east positive [°]'),
    elevationM: z.number().min(-430).max(6000).describe('height above the sea [m]'),
    plantRegion: z.enum(plantRegions),
    legalRegion: z
      .string()
      .optional()
      .describe('place whose plant laws count, a region of data/plants/legal.json'),
  }),
  climate: climateSchema,
  survey: z.strictObject({
    ground: groundSurveySchema,
    boundary: z
      .array(point)
      .min(3)
      .optional()
      .describe('outline of the plot; the survey’s own extent when left out'),
    cellM: z
      .number()
      .positive()
      .max(100)
      .optional()
      .describe('side of a grid cell; chosen from the data when left out [m]'),
    obstacles: z.array(obstacleSchema),
    aboveM: z
      .number()
      .min(0)
      .max(5000)
      .describe('length of ground that sheds water onto the plot from above [m plan]'),
    sectionLine: z.strictObject({ from: point, to: point }).optional().describe('where the section is cut'),
  }),
  soil: z.array(soilSampleSchema).min(1, 'one handful of soil is needed'),
  zones: z.array(zoneSchema).describe('zones drawn by the person; suggested when empty'),
  brief: briefSchema,
  choices: z.array(choiceSchema),
  overrides: z.array(overrideSchema),
})

export type Plan = z.infer<typeof planSchema>
export type Obstacle = z.infer<typeof obstacleSchema>
export type Brief = z.infer<typeof briefSchema>
export type Choice = z.infer<typeof choiceSchema>
