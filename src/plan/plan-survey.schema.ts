import { z } from 'zod'
import { bookSchema } from '#core/booking'
import { groundSurveySchema } from '#core/survey'
import { obstacleSchema, placeSchema as point } from './plan-obstacle.schema'

const beyondSchema = z.strictObject({
  id: z.string().min(1).describe('name of the stretch, used once'),
  name: z.string().min(1).max(80).describe('what it is called'),
  from: point.describe('where the stretch of the boundary begins; the nearest place on it counts'),
  to: point.describe('where it ends, going on along the boundary in the order of its corners'),
  what: z
    .enum(['neighbour', 'field', 'wood', 'road', 'roof', 'own-garden', 'watercourse'])
    .describe('what lies beyond'),
  uphillM: z
    .number()
    .min(0)
    .max(5000)
    .optional()
    .describe('how far the ground beyond rises and sheds water onto the plot [m plan]; none when left out'),
})

const farPointSchema = z.strictObject({
  azimuthDeg: z.number().min(0).lt(360).describe('direction, clockwise from true north [°]'),
  angleDeg: z.number().min(0).max(85).describe('height of the skyline above the horizontal [°]'),
})

const viewpointSchema = z.strictObject({
  id: z.string().min(1).describe('name of the viewpoint, used once'),
  name: z.string().min(1).max(80).describe('what it is called'),
  kind: z.enum(['window', 'door', 'seat']).describe('what one looks from'),
  at: point.describe('where it is [m]'),
  eyeM: z.number().min(0).max(30).describe('height of the eye above the ground there [m]'),
})

const cutSchema = z.strictObject({
  id: z.string().min(1).describe('name of the section, used once'),
  name: z.string().min(1).max(40).describe('what it is called, such as B'),
  from: point,
  to: point,
})

/** Longest picture kept with a plan [characters of its data URL]: some 6 MB of image. */
const LONGEST_PICTURE = 8_000_000

const pixel = z.strictObject({
  xPx: z.number().min(0).describe('right of the picture’s left edge [px]'),
  yPx: z.number().min(0).describe('below the picture’s top edge [px]'),
})

const backdropSchema = z.strictObject({
  name: z.string().max(200).describe('name of the picture'),
  dataUrl: z
    .string()
    .regex(/^data:image\/(png|jpeg|webp);base64,/, 'the picture must be PNG, JPEG or WebP')
    .max(LONGEST_PICTURE)
    .describe('the picture itself, as a data URL'),
  widthPx: z.int().min(1).max(20_000).describe('width of the picture [px]'),
  heightPx: z.int().min(1).max(20_000).describe('height of the picture [px]'),
  one: pixel.describe('first of two points marked on it'),
  other: pixel.describe('second of the two'),
  apartM: z.number().positive().max(10_000).describe('plan distance between the two points [m]'),
  bearingDeg: z
    .number()
    .min(0)
    .max(360)
    .describe('direction from the first to the second, clockwise from true north [°]'),
  at: point.describe('where the first point lies on the plot [m]'),
  shade: z.number().min(0.1).max(1).describe('how strongly it is drawn [0 to 1]'),
})

const accuracySchema = z.strictObject({
  methodId: z.string().optional().describe('key of data/survey/methods.json; how it was measured'),
  levelSdM: z
    .number()
    .positive()
    .max(10)
    .optional()
    .describe('standard error of a level [m]; the method’s figure when left out'),
  planSdM: z
    .number()
    .positive()
    .max(100)
    .optional()
    .describe('standard error of a place in plan [m]; the method’s figure when left out'),
})

const compassSchema = z.strictObject({
  magneticDeg: z.number().min(0).max(360).describe('bearing as the compass showed it [°]'),
  on: z
    .string()
    .regex(/^\d{4}-\d\d-\d\d$/, 'write the day as 2026-03-21')
    .describe('day it was taken, ISO 8601'),
  declinationDeg: z
    .number()
    .min(-180)
    .max(180)
    .describe('declination that was added to it, east positive [°]'),
  model: z.string().max(40).describe('model the declination came from'),
})

/** What was measured, and what stands and lies around it. */
export const planSurveySchema = z.strictObject({
  ground: groundSurveySchema,
  boundary: z
    .array(point)
    .min(3)
    .optional()
    .describe('outline of the plot; the survey’s own extent when left out'),
  holes: z
    .array(z.array(point).min(3))
    .max(200)
    .optional()
    .describe('parts of the plot that are no ground, such as ponds and buildings'),
  books: z
    .array(bookSchema)
    .max(50)
    .optional()
    .describe('field books as written, which the levels were reduced from'),
  accuracy: accuracySchema.optional().describe('how well it was measured'),
  compass: compassSchema.optional().describe('the compass bearing that the direction came from'),
  beyond: z.array(beyondSchema).max(100).optional().describe('what lies beyond stretches of the boundary'),
  viewpoints: z.array(viewpointSchema).max(50).optional().describe('where one looks at the plot from'),
  sections: z.array(cutSchema).max(26).optional().describe('further sections besides the one drawn large'),
  backdrop: backdropSchema.optional().describe('a scanned plan or photo to draw on'),
  skyline: z
    .array(farPointSchema)
    .max(720)
    .optional()
    .describe('skyline of far hills, straight from each place to the next; an open horizon when left out'),
  cellM: z
    .number()
    .positive()
    .max(100)
    .optional()
    .describe('side of a grid cell; chosen from the data when left out [m]'),
  obstacles: z.array(obstacleSchema).describe('what stands or lies on and near the plot'),
  aboveM: z
    .number()
    .min(0)
    .max(5000)
    .describe('length of ground that sheds water onto the plot from above [m plan]'),
  sectionLine: z.strictObject({ from: point, to: point }).optional().describe('where the section is cut'),
})

export type Obstacle = z.infer<typeof obstacleSchema>
export type Beyond = z.infer<typeof beyondSchema>
export type Viewpoint = z.infer<typeof viewpointSchema>
export type Backdrop = z.infer<typeof backdropSchema>
