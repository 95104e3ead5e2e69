import { z } from 'zod'

/** Steepest bank that can be described by four numbers [°]; beyond it ground is a wall or a cliff. */
const STEEPEST_BANK_DEG = 80

const metre = z.number().min(-100_000).max(100_000)
const facing = z
  .number()
  .min(0)
  .max(360, 'a direction runs from 0 (north) clockwise to 360')
  .describe('direction the ground faces, clockwise from true north [°]')
const width = z
  .number()
  .positive('the width must be more than 0 m')
  .max(5000)
  .describe('width along the contour [m]')

/** A bank in four numbers. */
export const bankSurveySchema = z
  .strictObject({
    kind: z.literal('bank').describe('a bank in four numbers'),
    lengthM: z
      .number()
      .positive('the length must be more than 0 m')
      .max(2000)
      .describe('length down the slope, tape on the ground [m]'),
    riseM: z
      .number()
      .min(0, 'the rise is counted upwards from the foot')
      .max(1000)
      .describe('level difference, foot to top [m]'),
    facesDeg: facing,
    widthM: width,
  })
  .refine((bank) => bank.riseM <= bank.lengthM * Math.sin((STEEPEST_BANK_DEG * Math.PI) / 180), {
    path: ['riseM'],
    message:
      'the rise is nearly as long as the slope itself: measure the length along the ground, not on plan',
  })

/** Distance and level pairs down the slope. */
export const profileSurveySchema = z.strictObject({
  kind: z.literal('profile').describe('distances and levels down the slope'),
  distancesAre: z
    .enum(['plan', 'slope'])
    .describe('whether distances were measured level (plan) or with the tape on the ground (slope)'),
  stations: z
    .array(
      z.strictObject({
        distanceM: metre.describe('distance from the top edge [m]'),
        levelM: metre.describe('level above any fixed mark [m]'),
      }),
    )
    .min(2, 'a profile needs at least two stations')
    .max(2000),
  facesDeg: facing,
  widthM: width,
})

const spotLevelSchema = z.strictObject({
  mark: z.string().max(60).optional().describe('the point’s own name in the field book'),
  code: z.string().max(60).optional().describe('what the surveyor coded the point as'),
  eastM: metre.describe('east of the plot’s origin [m]'),
  northM: metre.describe('north of the plot’s origin [m]'),
  levelM: metre.describe('level above the datum [m]'),
})

/** A line along which the ground bends: a top, a toe, a ridge, a channel. */
const edgeLineSchema = z.strictObject({
  id: z.string().min(1).describe('name of the line, used once'),
  kind: z.enum(['top', 'toe', 'ridge', 'channel', 'edge']).describe('what bends here'),
  name: z.string().max(60).optional().describe('what it is called'),
  vertices: z
    .array(
      z.strictObject({
        eastM: metre.describe('east of the plot’s origin [m]'),
        northM: metre.describe('north of the plot’s origin [m]'),
        levelM: metre.optional().describe('level; read from the levels around when left out [m]'),
      }),
    )
    .min(2, 'a line needs two points')
    .max(20_000),
})

/** The line of a wall: the ground stands at another level on each side. */
const wallLineSchema = z.strictObject({
  id: z.string().min(1).describe('name of the line, used once'),
  kind: z.literal('wall').describe('a wall or upright step'),
  name: z.string().max(60).optional().describe('what it is called'),
  vertices: z
    .array(
      z.strictObject({
        eastM: metre.describe('east of the plot’s origin [m]'),
        northM: metre.describe('north of the plot’s origin [m]'),
        leftM: metre.describe('level of the ground on the left, walking from the first vertex on [m]'),
        rightM: metre.describe('level of the ground on the right [m]'),
      }),
    )
    .min(2, 'a line needs two points')
    .max(2000),
})

const breaklineSchema = z.discriminatedUnion('kind', [edgeLineSchema, wallLineSchema])

/** Spot levels in plan. */
const levelsSurveySchema = z.strictObject({
  kind: z.literal('levels').describe('spot levels in plan'),
  points: z.array(spotLevelSchema).min(3, 'a surface needs at least three levels').max(100_000),
  breaklines: z
    .array(breaklineSchema)
    .max(5000)
    .optional()
    .describe('lines that no triangle crosses: tops and toes of banks, walls'),
  faces: z
    .array(z.tuple([z.int().min(0), z.int().min(0), z.int().min(0)]))
    .max(250_000)
    .optional()
    .describe(
      'triangles that came with the survey, as rows of the points from 0; joined by us when left out',
    ),
})

/** A regular grid of levels, row 0 northernmost. */
const gridSurveySchema = z
  .strictObject({
    kind: z.literal('grid').describe('a regular grid of levels'),
    columns: z.int().min(2).max(10_000).describe('cells from west to east [number]'),
    rows: z.int().min(2).max(10_000).describe('cells from north to south [number]'),
    cellM: z.number().positive().max(1000).describe('side of a cell [m]'),
    westM: metre.describe('east of the west edge [m]'),
    southM: metre.describe('north of the south edge [m]'),
    levelsM: z
      .array(metre.nullable().describe('level; null where there is no ground [m]'))
      .describe('level of each cell centre, row by row from the north-west [m]'),
  })
  .refine((grid) => grid.levelsM.length === grid.columns * grid.rows, {
    path: ['levelsM'],
    message: 'the grid must hold columns × rows levels',
  })

/** What was measured: one of four ways to describe ground. */
export const groundSurveySchema = z.discriminatedUnion('kind', [
  bankSurveySchema,
  profileSurveySchema,
  levelsSurveySchema,
  gridSurveySchema,
])

export type BankSurvey = z.infer<typeof bankSurveySchema>
export type ProfileSurvey = z.infer<typeof profileSurveySchema>
export type Breakline = z.infer<typeof breaklineSchema>
export type LevelsSurvey = z.infer<typeof levelsSurveySchema>
export type GridSurvey = z.infer<typeof gridSurveySchema>
export type GroundSurvey = z.infer<typeof groundSurveySchema>
