import { z } from 'zod'
import { coverKinds } from '#core/cover'
import { accountSchema } from './account.schema'
import { figure, twelve } from './figure'

const source = z.string().describe('key of sources')
const hours = { unit: 'h', decimals: 3, least: 0 }
const month = z.int().min(0).max(11).describe('month, 0 January to 11 December [number]')
const cost = z
  .int()
  .min(0)
  .nullable()
  .describe('cost, null without a rate [minor units of the currency a year]')
const day = z.int().min(1).max(31)

const job = z.strictObject({
  id: z.string(),
  zoneId: z.string(),
  operation: z.string(),
  mark: z.enum(['mow', 'cut', 'weed', 'plant', 'rake', 'look']),
  what: z.string(),
  how: z.string(),
  month,
  fromDay: day.describe('first good day of the month [1 to 31]'),
  toDay: day.describe('last good day of the month [1 to 31]'),
  times: z.int().min(1).describe('times in the month [number]'),
  hours: figure('hours, slope counted in', hours),
  slopeHours: figure('part of them that the slope adds', hours),
  firstYearOnly: z.boolean(),
  because: z.string(),
  source,
})

const zoneCare = z.strictObject({
  zoneId: z.string(),
  cover: z.enum(coverKinds),
  jobs: z.array(job),
  keepOff: z.array(
    z.strictObject({
      zoneId: z.string(),
      months: z.array(month),
      reason: z.enum(['wet', 'birds', 'frost']),
      text: z.string(),
      source,
    }),
  ),
  account: accountSchema,
  firstYearHours: figure('extra hours of the first year', hours),
  compared: z.array(
    z.strictObject({
      cover: z.enum(coverKinds),
      hours: figure('hours of an established year, null when refused', {
        ...hours,
        unit: 'h a year',
      }).nullable(),
      refusal: z.string().nullable(),
      costMinor: cost,
    }),
  ),
})

export const careSchema = z.strictObject({
  currency: z.string().describe('ISO 4217 code'),
  hoursTotal: figure('an established year', { ...hours, unit: 'h a year' }),
  costMinor: cost,
  hoursByMonth: twelve(figure('hours of the month', hours)),
  steepHoursByMonth: twelve(figure('hours of the month on steep ground', hours)),
  zones: z.array(zoneCare),
})
