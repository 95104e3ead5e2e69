import { z } from 'zod'
import { figure, twelve } from './figure'
import { placeSchema } from './findings-around.schema'

/** Hours of sun are kept to this many decimals, in accounts too. */
export const HOUR_DECIMALS = 2

const hours = { unit: 'h', decimals: HOUR_DECIMALS, least: 0, most: 24 }
const change = { unit: 'h', decimals: HOUR_DECIMALS, least: -24, most: 24 }
const shares = { unit: '0 to 1', decimals: 4, least: 0, most: 1 }
const metres = { unit: 'm', decimals: 3 }
const heat = { unit: 'MJ/cm² a year', decimals: 3, least: 0 }
const day = z.int().min(1).max(365).nullable()

/** When the sun leaves a place in winter. */
export const darkSchema = z.strictObject({
  kind: z
    .enum(['none', 'spell', 'always'])
    .describe('none: some sun on every clear day; spell: none for a time in winter; always: never any'),
  lastDay: day.describe('last day with sun before the spell, counted without a leap day [1 to 365]'),
  lastDate: z.string().nullable().describe('the same as MM-DD'),
  firstDay: day.describe('first day with sun after it [1 to 365]'),
  firstDate: z.string().nullable().describe('the same as MM-DD'),
  days: z.int().min(1).max(364).nullable().describe('days without direct sun between them [d]'),
})

const taker = z.strictObject({
  what: z
    .enum(['own-slope', 'ground', 'far', 'thing', 'several'])
    .describe(
      'the zone’s own slope, other ground of the plot, far hills, a thing, or several of them at once',
    ),
  thingId: z.string().nullable(),
  name: z.string(),
  hours: twelve(figure('direct sun that it takes, negative where it adds some', change)),
})

/** Sun of one zone on a clear mean day of each month, January first. */
export const zoneSunSchema = z.strictObject({
  lightClass: z
    .enum(['full-sun', 'part-shade', 'dappled', 'shade', 'deep-shade'])
    .describe('by its sun at midsummer, data/shade/light-classes.json'),
  className: z.string().describe('the same in words'),
  sunHours: twelve(figure('direct sun, each hour counted by the share of light that gets through', hours)),
  morningHours: twelve(figure('the part of it before the sun is highest', hours)),
  afternoonHours: twelve(figure('the part of it after the sun is highest', hours)),
  dappledHours: twelve(figure('hours on the clock in which sun comes through leaves or branches', hours)),
  usualWhPerM2: twelve(
    figure('radiation under the usual sky', { unit: 'Wh per m² of slope and day', decimals: 0, least: 0 }),
  ),
  skyView: figure('share of the sky seen, weighted by the cosine to its own plane', shares),
  heatLoad: figure(
    'heat load of its slope and aspect in the open, null beyond 60° of latitude',
    heat,
  ).nullable(),
  heatLoadShaded: figure('the same by the share of radiation that shade leaves', heat).nullable(),
  account: z.strictObject({
    openHours: twelve(figure('direct sun on open level ground', hours)),
    takers: z.array(taker).describe('who takes it: open hours less all of these are the sun hours'),
  }),
  litShares: twelve(
    z
      .array(figure('share of its ground in the sun, by what comes through', shares))
      .length(24)
      .describe('at the middle of each hour by the sun, 0 to 23'),
  ),
  middle: placeSchema.describe('the cell nearest to its middle, where its winter is read'),
  dark: darkSchema,
})

/** What stands in the light, as it is reckoned with. */
export const standingSchema = z.strictObject({
  id: z.string(),
  name: z.string(),
  screens: z
    .array(
      z.strictObject({
        from: placeSchema,
        to: placeSchema,
        topFromM: figure('level of its top at the first end', metres),
        topToM: figure('level of its top at the other end', metres),
      }),
    )
    .describe('upright faces that no light passes below their top'),
  crowns: z
    .array(
      z.strictObject({
        at: placeSchema,
        radiusM: figure('half its width', metres),
        baseM: figure('level of its lowest point', metres),
        topM: figure('level of its highest point', metres),
      }),
    )
    .describe('eggs that light passes below'),
  through: twelve(figure('share of direct light that comes through', shares)),
})

/** What a trial would bring. */
export const trialFindingsSchema = z.strictObject({
  trialId: z.string(),
  name: z.string(),
  changes: z.array(z.string()).describe('what is changed, in words'),
  zones: z
    .array(
      z.strictObject({
        zoneId: z.string(),
        letter: z.string(),
        gainHours: twelve(
          figure('direct sun that it would bring, negative where it would take some', change),
        ),
        sun: zoneSunSchema.describe('its sun with the trial carried out'),
      }),
    )
    .describe('in the order of the zones'),
})
