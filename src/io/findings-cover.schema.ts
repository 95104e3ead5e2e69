import { z } from 'zod'
import { coverKinds } from '#core/cover'
import { accountSchema } from './account.schema'
import { figure } from './figure'
import { closeCallSchema } from './findings-accuracy.schema'
import { terraceSchema } from './findings-terrace.schema'

const source = z.string().describe('key of sources')
const degrees = { unit: '°', decimals: 2, least: 0, most: 90 }

const caution = z.strictObject({ id: z.string(), text: z.string(), source })

/** Cautions that go with a cover. */
export const cautionsSchema = z.array(caution)

/** What a zone may be. */
export const coverSchema = z.strictObject({
  mowing: z.enum(['mow', 'mow-on-foot', 'cut-once', 'leave', 'never']).describe('how it may be mown'),
  machines: z.array(
    z.strictObject({
      machineId: z.string(),
      name: z.string(),
      limitDeg: figure('steepest ground it may work on', degrees),
      allowed: z.boolean().describe('may work here'),
      because: z.string(),
      source,
      closeCall: closeCallSchema,
    }),
  ),
  options: z.array(
    z.strictObject({
      kind: z.enum(coverKinds),
      verdict: z.enum(['good', 'possible', 'refused']).describe('whether the zone can be this'),
      fitness: accountSchema,
      cautions: cautionsSchema,
      closeCall: closeCallSchema,
    }),
  ),
  suggested: z.enum(coverKinds).describe('best cover that is not refused'),
  chosen: z.enum(coverKinds).describe('what stands: the choice, or the suggestion'),
  chosenByPerson: z.boolean().describe('true when it is the person’s choice'),
  terraces: z
    .array(terraceSchema)
    .describe('what terraces would do to the ground; none where they are refused'),
})
