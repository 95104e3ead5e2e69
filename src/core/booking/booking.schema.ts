import { z } from 'zod'

const metre = z.number().min(-100_000).max(100_000)
const staff = z
  .number()
  .min(-5, 'a staff is at most 5 m: is this reading in cm or feet?')
  .max(5, 'a staff is at most 5 m: is this reading in cm or feet?')
const mark = z.string().max(60).optional().describe('the point’s own name in the field book')
const remark = z.string().max(200).optional().describe('anything noted at this line')
const length = z.number().positive('a length must be more than 0 m').max(2000)
const startLevel = metre.describe('level of the first mark above any datum [m]')
const day = z
  .string()
  .regex(/^\d{4}-\d\d-\d\d$/, 'write the day as 2026-03-21')
  .optional()
  .describe('day of the measuring, ISO 8601')
const head = {
  id: z.string().min(1).describe('name of the book, used once'),
  name: z.string().min(1).max(120).describe('what the book is called'),
  on: day,
  unit: z
    .enum(['m', 'cm', 'ft', 'ft-in', 'us-ft'])
    .describe('unit the readings were written in; stored in metres. us-ft is the US survey foot'),
}
const place = {
  distanceM: metre.optional().describe('plan distance from the start of the line [m]'),
  eastM: metre.optional().describe('east of the plot’s origin [m]'),
  northM: metre.optional().describe('north of the plot’s origin [m]'),
}

/** A field book of a level and a staff, line by line as written. */
const levelBookSchema = z.strictObject({
  kind: z.literal('level-book').describe('staff readings with a level'),
  ...head,
  reduction: z.enum(['rise-and-fall', 'height-of-collimation']).describe('how the book is reduced'),
  startLevelM: startLevel,
  endLevelM: metre.optional().describe('known level of the last mark, which closes the book [m]'),
  lineKm: z.number().positive().max(100).optional().describe('length of the levelled line [km]'),
  allowable: z.string().optional().describe('key of data/survey/allowables.json'),
  adjust: z.boolean().describe('share the misclosure out over the set-ups'),
  rows: z
    .array(
      z.strictObject({
        mark,
        backM: staff
          .optional()
          .describe('back sight: on a point of known level [m]; an inverted staff is negative'),
        interM: staff.optional().describe('intermediate sight [m]'),
        foreM: staff.optional().describe('fore sight: the last before the level is moved [m]'),
        handLevelM: metre
          .optional()
          .describe('level as worked out by hand in the book [m]; only compared with ours'),
        ...place,
        remark,
      }),
    )
    .min(1, 'a level book needs lines')
    .max(5000),
})

/** Lengths along the ground and their angles, leg after leg. */
const chainBookSchema = z.strictObject({
  kind: z.literal('chain').describe('tape and clinometer, leg after leg'),
  ...head,
  startLevelM: startLevel,
  legs: z
    .array(
      z.strictObject({
        mark,
        lengthM: length.describe('length along the ground [m]'),
        angleDeg: z
          .number()
          .min(-80, 'steeper than 80° is a wall')
          .max(80, 'steeper than 80° is a wall')
          .describe('angle from horizontal, falling negative [°]'),
        remark,
      }),
    )
    .min(1, 'a chain needs a leg')
    .max(2000),
})

/** An A-frame or a line level walked down the slope: the same span each step, and how far the next foot stands lower. */
const stepBookSchema = z.strictObject({
  kind: z.literal('steps').describe('A-frame or line level, step after step'),
  ...head,
  tool: z.enum(['a-frame', 'line-level']).describe('what was walked down the slope'),
  spanM: length.max(30).describe('level distance between the two feet or ends [m]'),
  startLevelM: startLevel,
  steps: z
    .array(
      z.strictObject({
        mark,
        dropM: z.number().min(-10).max(10).describe('fall to the next foot; a rise is negative [m]'),
        remark,
      }),
    )
    .min(1, 'the book needs a step')
    .max(5000),
})

/** A level string and what hangs below it: level run and drop of each point. */
const stringBookSchema = z.strictObject({
  kind: z.literal('string').describe('string and spirit level'),
  ...head,
  startLevelM: startLevel,
  drops: z
    .array(
      z.strictObject({
        mark,
        runM: length.describe('level distance from the point before [m]'),
        dropM: z
          .number()
          .min(-10)
          .max(10)
          .describe('from the string down to the ground, less that at the point before [m]'),
        remark,
      }),
    )
    .min(1, 'the book needs a point')
    .max(2000),
})

/** A field book as it was written; nothing in it is worked out. */
export const bookSchema = z.discriminatedUnion('kind', [
  levelBookSchema,
  chainBookSchema,
  stepBookSchema,
  stringBookSchema,
])

export type Book = z.infer<typeof bookSchema>
export type LevelBook = z.infer<typeof levelBookSchema>
export type ChainBook = z.infer<typeof chainBookSchema>
export type StepBook = z.infer<typeof stepBookSchema>
export type StringBook = z.infer<typeof stringBookSchema>
