import { z } from 'zod'

/** data/survey/assumed.json: how ground was measured when the person does not say. */
export const assumedMethodsSchema = z
  .array(
    z.strictObject({
      id: z.string().min(1),
      ground: z
        .enum(['bank', 'profile', 'taped-profile', 'levels', 'grid'])
        .describe('kind of ground; a taped profile has its distances along the ground'),
      methodId: z.string().min(1).describe('key of data/survey/methods.json'),
      because: z.string().min(10),
      source: z.string(),
    }),
  )
  .min(1)

export type AssumedMethods = z.infer<typeof assumedMethodsSchema>
