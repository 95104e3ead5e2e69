import { z } from 'zod'
import { figure } from './figure'

const metres = { unit: 'm', decimals: 2, least: 0 }
const caution = z.strictObject({ id: z.string(), text: z.string(), source: z.string() })

/** What one width of terrace would do to the ground of a zone: geometry, never a design. */
export const terraceSchema = z.strictObject({
  id: z.string(),
  treadM: figure('level ground from one step to the next', metres),
  because: z.string().describe('what the width has room for'),
  source: z.string().describe('key of sources'),
  stepM: figure('height of a step on the zone’s mean slope', metres),
  stepSteepM: figure('height of a step in its steep part', metres),
  cutM3PerM: figure('ground cut for each metre of terrace, as much filled', {
    unit: 'm³/m',
    decimals: 3,
    least: 0,
  }),
  cutM3: figure('ground cut over the whole zone, as much filled', { unit: 'm³', decimals: 1, least: 0 }),
  levelM2: figure('level ground for plants', { unit: 'm²', decimals: 1, least: 0 }),
  levelShare: figure('level ground over the slope area', { unit: '0 to 1', decimals: 3, least: 0, most: 1 }),
  cautions: z.array(caution),
})
