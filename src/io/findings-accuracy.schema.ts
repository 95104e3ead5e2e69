import { z } from 'zod'
import { figure } from './figure'

const degrees = { unit: '°', decimals: 2, least: 0 }
const metres = { unit: 'm', decimals: 4, least: 0 }

/** What the errors of the surface were reckoned from. */
export const accuracySchema = z.strictObject({
  levelSdM: figure('standard error of one measured level', metres),
  planSdM: figure('standard error of a measured place, east and north alike', metres),
  roughnessM: figure(
    'standard deviation of the ground over one metre, null where the survey cannot tell',
    metres,
  ).nullable(),
  methodId: z.string().nullable().describe('how it was measured, null when the errors were typed in'),
  assumed: z.boolean().describe('true when nobody said how it was measured'),
})

/** How well the slope of a zone is known. */
export const slopeErrorSchema = z.strictObject({
  meanDeg: figure('standard error of the mean steepness', degrees),
  steepDeg: figure('standard error of the steepness that nine tenths do not exceed', degrees),
})

/** Said when a limit lies within reach of a slope's error. */
export const closeCallSchema = z
  .string()
  .nullable()
  .describe('said when the error of the slope could put it on the other side of the limit, else null')
