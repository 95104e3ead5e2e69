import { z } from 'zod'
import { figure } from './figure'

const source = z.string().describe('key of sources')

/** A number with the entries it is made of. */
export const accountSchema = z.strictObject({
  subject: z.string().describe('what is counted'),
  unit: z.string().describe('unit of every amount and of the total'),
  lines: z
    .array(
      z.strictObject({
        id: z.string().describe('rule or formula behind the entry'),
        amount: figure('what the entry adds', { unit: 'unit of the account', decimals: 4 }),
        because: z.string().describe('why, in plain words'),
        source,
      }),
    )
    .describe('entries that add up to the total, to the rounding'),
  total: figure('sum of the entries', { unit: 'unit of the account', decimals: 4 }),
})

/** A reason for or against. */
export const reasonSchema = z.strictObject({
  id: z.string(),
  for: z.boolean().describe('true for, false against'),
  because: z.string(),
  source,
})
