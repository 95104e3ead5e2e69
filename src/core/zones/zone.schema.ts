import { z } from 'zod'

/** A drawn zone: its outline in plan and what it is called. */
export const zoneSchema = z.strictObject({
  id: z.string().min(1),
  name: z.string().min(1, 'give the zone a name, such as "Upper bank"').max(60),
  ring: z
    .array(z.strictObject({ eastM: z.number(), northM: z.number() }))
    .min(3, 'an outline needs at least three corners')
    .describe('outline in plan [m]; first corner not repeated'),
  locked: z.boolean().optional().describe('kept as it is when zones are suggested anew'),
})

export type Zone = z.infer<typeof zoneSchema>
