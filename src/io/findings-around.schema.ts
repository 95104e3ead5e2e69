import { z } from 'zod'
import { figure } from './figure'
import { ringSchema } from './findings-ground.schema'

const metres = { unit: 'm', decimals: 3 }
const depth = { unit: 'm', decimals: 3, least: 0 }
const area = { unit: 'm² on plan', decimals: 2, least: 0 }
const share = { unit: '0 to 1', decimals: 4, least: 0, most: 1 }
const gradient = { unit: 'm/m', decimals: 4 }

/** A place in plan. */
export const placeSchema = z.strictObject({
  eastM: figure('east of the plot’s origin', metres),
  northM: figure('north of the plot’s origin', metres),
})

const hollow = z.strictObject({
  at: placeSchema.describe('its deepest place'),
  ring: ringSchema.describe('outline of its water when full'),
  lipM: figure('level to which it fills before it runs over', metres),
  depthM: figure('greatest depth', depth),
  areaM2: figure('area of its water when full', area),
  volumeM3: figure('water it holds', { unit: 'm³', decimals: 3, least: 0 }),
})

const leaving = z.strictObject({
  at: placeSchema.describe('where most of it leaves'),
  line: ringSchema.describe('the stretch of the boundary'),
  areaM2: figure('area whose water leaves here', area),
  share: figure('its share of the plot', share),
  beyondId: z.string().nullable().describe('id of the stretch it runs to, null where nothing was said'),
})

const wall = z.strictObject({
  from: placeSchema,
  to: placeSchema,
  gradient: figure('fall towards the wall where it is worst, negative away from it', gradient),
  aboveM: figure('by how much the ground there stands above the wall’s foot', depth),
  at: placeSchema.describe('the place on the wall'),
})

const house = z.strictObject({
  obstacleId: z.string(),
  name: z.string(),
  towardsGradient: figure('steepest fall towards a wall, 0 when none', { ...gradient, least: 0 }),
  towardsM: figure('by how much the ground stands above that wall’s foot', depth),
  awayGradient: figure('steepest fall away from a wall', { ...gradient, least: 0 }),
  at: placeSchema.nullable().describe('where it falls most towards the house, null when nowhere'),
  reachM: figure('how far from the walls was looked', depth),
  walls: z.array(wall).describe('walls with ground of the plot beside them'),
})

const view = z.strictObject({
  viewpointId: z.string(),
  name: z.string(),
  seenShare: figure('seen share of the plot', share),
  eyeLevelM: figure('level of the eye', metres),
  withoutHeight: z
    .array(z.string())
    .describe('what may hide ground but has no height, so that it hides nothing'),
})

/** What follows from the ground for a house, a neighbour and the eye. */
export const aroundSchema = z.strictObject({
  hollows: z.array(hollow).describe('places from which water cannot run off, the deepest first'),
  leastHollowM: figure('hollows shallower than this are left out', depth),
  leaving: z.array(leaving).describe('stretches of the boundary over which water leaves, the largest first'),
  houses: z.array(house).describe('how the ground falls beside each house'),
  views: z.array(view).describe('what is seen from each viewpoint'),
})
