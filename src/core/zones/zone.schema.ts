import { z } from 'zod'

/** A drawn zone: its outline in plan and what it is called. */
export const zoneSchema = z.strictObject({
  id: z.string().min(1).describe('name of the zone that other entries use'),
  name: z.string().min(1, 'give the zone a name, such as "Upper bank"').max(60).describe('what it is called'),
  ring: z
    .array(
      z.strictObject({
        eastM: z.number().describe('east of the plot’s origin [m]'),
        northM: z.number().describe('north of the plot’s origin [m]'),
      }),
    )
    .min(3, 'an outline needs at least three corners')
    .describe('outline in plan [m]; first corner not repeated'),
  locked: z.boolean().optional().describe('kept as it is when zones are suggested anew'),
})

export type Zone = z.infer<typeof zoneSchema>
