import { z } from 'zod'
import { climateSchema } from '#core/climate'
import { coverKinds } from '#core/cover'
import { plantRegions } from '#core/plants'
import { soilSampleSchema } from '#core/soil'
import { zoneSchema } from '#core/zones'
import { planSurveySchema } from './plan-survey.schema'

const machineSchema = z.strictObject({
  id: z.string().describe('key of data/care/machines.json'),
  limitDeg: z
    .number()
    .min(0)
    .max(45)
    .optional()
    .describe('steepest slope on the maker’s plate [°]; the table’s cautious figure when left out'),
})

const briefSchema = z.strictObject({
  machines: z.array(machineSchema).describe('what mows here'),
  hoursPerYear: z.number().min(0).max(100_000).optional().describe('hours of care available [h a year]'),
  ratePerHourMinor: z.int().min(0).optional().describe('cost of an hour [minor units of the currency]'),
  currency: z.string().length(3).describe('ISO 4217 code'),
  whoWorks: z.enum(['household', 'gardener', 'crew']).describe('who does the work'),
  children: z.boolean().describe('children come here'),
  pets: z.boolean().describe('pets come here'),
  nativeShare: z.number().min(0).max(1).describe('least share of plants native to the region [0 to 1]'),
  heightLimitM: z.number().positive().max(40).optional().describe('tallest plant wanted, for views [m]'),
  fallsTowardsHouse: z.boolean().optional().describe('the ground falls towards a house'),
})

const choiceSchema = z.strictObject({
  zoneId: z.string().describe('the zone'),
  cover: z.enum(coverKinds).optional().describe('what the person decided the zone shall be'),
  plants: z.array(z.string()).optional().describe('ids of plants the person insists on'),
  without: z.array(z.string()).optional().describe('ids of plants the person does not want'),
})

const trialSchema = z.strictObject({
  id: z.string().min(1).describe('name of the trial, used once'),
  name: z.string().min(1).max(80).describe('what it is called, such as cherry thinned'),
  changes: z
    .array(
      z.strictObject({
        thingId: z.string().describe('the thing that is changed'),
        gone: z.boolean().optional().describe('it is taken away'),
        heightM: z.number().min(0).max(60).optional().describe('new height [m]'),
        ridgeM: z.number().min(0).max(60).optional().describe('new height of the ridge [m]'),
        crownBaseM: z.number().min(0).max(60).optional().describe('new height of the lowest branches [m]'),
        crownWidthM: z.number().positive().max(60).optional().describe('new width of the crown [m]'),
        leafyLight: z.number().min(0).max(1).optional().describe('new share of light in leaf [0 to 1]'),
        bareLight: z
          .number()
          .min(0)
          .max(1)
          .optional()
          .describe('new share of light through bare branches [0 to 1]'),
      }),
    )
    .min(1)
    .max(20)
    .describe('what is changed, thing by thing'),
})

const overrideSchema = z.strictObject({
  zoneId: z.string().describe('the zone'),
  score: z.enum(['wetness', 'sun', 'erosion', 'frost', 'working']).describe('which score'),
  value: z.int().min(0).max(100).describe('the person’s own score [points of 100]'),
  reason: z
    .string()
    .min(3, 'say why you know better: both figures stay on show')
    .max(400)
    .describe('why it is better than ours'),
})

/** A plan, version 3: what the person measured and decided. Nothing derived is ever stored in it. */
export const planSchema = z.strictObject({
  format: z.literal('lynchet-plan').describe('says what the file is'),
  version: z.literal(3).describe('of this format; older plans are brought up to it on opening'),
  name: z.string().min(1, 'give the plan a name').max(120).describe('what the plan is called'),
  note: z.string().max(4000).optional().describe('anything worth knowing'),
  site: z.strictObject({
    latitudeDeg: z.number().min(-90).max(90).describe('latitude of the plot’s origin, north positive [°]'),
    longitudeDeg: z.number().min(-180).max(180).describe('longitude, east positive [°]'),
    elevationM: z.number().min(-430).max(6000).describe('height above the sea [m]'),
    plantRegion: z.enum(plantRegions).describe('where plants are bought and count as native'),
    timeZone: z
      .string()
      .max(64)
      .optional()
      .describe(
        'time zone of the place by its IANA name, such as Europe/London; times are told by the sun when left out',
      ),
    legalRegion: z
      .string()
      .optional()
      .describe('place whose plant laws count, a region of data/plants/legal.json'),
  }),
  climate: climateSchema,
  survey: planSurveySchema,
  soil: z.array(soilSampleSchema).min(1, 'one handful of soil is needed').describe('handfuls or pits'),
  zones: z.array(zoneSchema).describe('zones drawn by the person; suggested when empty'),
  brief: briefSchema,
  choices: z.array(choiceSchema).describe('what the person decided, zone by zone'),
  overrides: z.array(overrideSchema).describe('scores the person knows better'),
  trials: z
    .array(trialSchema)
    .max(6)
    .optional()
    .describe('changes to what stands in the light, tried on paper: they change no finding but their own'),
})

export type Plan = z.infer<typeof planSchema>
export type Trial = z.infer<typeof trialSchema>
export type Brief = z.infer<typeof briefSchema>
export type Choice = z.infer<typeof choiceSchema>
