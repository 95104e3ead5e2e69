import { z } from 'zod'
import { figure } from './figure'
import { placeSchema } from './findings-around.schema'
import { darkSchema, HOUR_DECIMALS, trialFindingsSchema, zoneSunSchema } from './findings-sun.schema'

const hours = { unit: 'h', decimals: HOUR_DECIMALS, least: 0, most: 24 }
const time = { unit: 'h by the sun, 12 when it is highest', decimals: 3, least: 0, most: 24 }
const share = { unit: '0 to 1', decimals: 3, least: 0, most: 1 }
const degrees = { unit: '°', decimals: 2 }
const clock = z.string().nullable()

const placeDay = z.strictObject({
  name: z
    .string()
    .describe('midsummer, March equinox, September equinox, midwinter, or asked for the day of --date'),
  dayOfYear: z.int().min(1).max(365).describe('counted without a leap day [1 to 365]'),
  date: z.string().describe('the same as MM-DD'),
  sunHours: figure('direct sun of a clear day, counted by the share of light that gets through', hours),
  spells: z
    .array(
      z.strictObject({
        fromH: figure('sun from', time),
        toH: figure('sun to', time),
        through: figure('share of direct light that gets through', share),
        fromClock: clock.describe('the same by the clock, null where the plan has no time zone'),
        toClock: clock,
      }),
    )
    .describe('times with direct sun, in order'),
})

const direction = z.strictObject({
  azimuthDeg: z.int().min(0).max(345).describe('direction looked towards [° clockwise from true north]'),
  groundDeg: figure('height of the plot’s own ground, 0 where all is lower', degrees),
  farDeg: figure('height of the far skyline', degrees),
  things: z
    .array(
      z.strictObject({
        thingId: z.string(),
        name: z.string(),
        fromDeg: figure('lowest that it covers', degrees),
        toDeg: figure('highest that it covers', degrees),
      }),
    )
    .describe('what stands there'),
})

/** The sky from one place. */
const placeSunSchema = z.strictObject({
  at: placeSchema,
  levelM: figure('level of the ground looked from', { unit: 'm', decimals: 3 }),
  slopeDeg: figure('steepness of the cell it stands on', degrees),
  facesDeg: figure('direction that the cell faces, null when level', {
    unit: '° clockwise from true north',
    decimals: 1,
  }).nullable(),
  zoneId: z.string().nullable().describe('the zone that the place lies in'),
  letter: z.string().nullable().describe('its letter'),
  className: z.string().nullable().describe('its light class in words'),
  days: z.array(placeDay).describe('clear days'),
  dark: darkSchema,
  skyline: z.array(direction).describe('every 15°, from north clockwise'),
})

const zone = z.strictObject({
  zoneId: z.string(),
  letter: z.string(),
  name: z.string(),
  seasonSunRatio: figure('radiation over open level ground, mean of the growing months, per m² of slope', {
    unit: 'ratio',
    decimals: 4,
    least: 0,
  }),
  sun: zoneSunSchema,
})

/** Sun and shade of a plan, as JSON. Version 1. */
export const sunSchema = z.strictObject({
  format: z.literal('lynchet-sun'),
  version: z.literal(1),
  plan: z.string().describe('name of the plan'),
  timeZone: z.string().nullable().describe('time zone of the clocks, null where times are by the sun alone'),
  zones: z.array(zone).describe('from the top down'),
  trials: z.array(trialFindingsSchema).describe('what each trial of the plan would bring'),
  place: placeSunSchema.nullable().describe('sun and sky from the place --at, null without it'),
})
