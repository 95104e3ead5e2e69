import { z } from 'zod'

/** A place in plan. */
export const placeSchema = z.strictObject({
  eastM: z.number().describe('east of the plot’s origin [m]'),
  northM: z.number().describe('north of the plot’s origin [m]'),
})

/** Something that stands or lies on or near the plot. */
export const obstacleSchema = z.strictObject({
  id: z.string().min(1).describe('name of the obstacle, used once'),
  kind: z
    .enum([
      'house',
      'building',
      'wall',
      'fence',
      'hedge',
      'tree',
      'path',
      'drain',
      'downpipe',
      'spring',
      'paving',
      'services',
    ])
    .describe(
      'what it is; a building is any but a house that the slope falls to or is seen from; services are pipes and cables',
    ),
  name: z.string().min(1).describe('what it is called on drawings'),
  ring: z.array(placeSchema).min(1).describe('outline, line or single point in plan [m]'),
  heightM: z
    .number()
    .min(0)
    .max(60)
    .optional()
    .describe('height above the ground; of a building with a ridge, to the eaves [m]'),
  ridgeM: z
    .number()
    .min(0)
    .max(60)
    .optional()
    .describe('height of a building’s ridge above the ground [m]; a flat roof when left out'),
  groundM: z
    .number()
    .min(-500)
    .max(9000)
    .optional()
    .describe(
      'level of the ground at its foot, on the survey’s own zero [m]; that of the nearest ground when left out',
    ),
  crownBaseM: z
    .number()
    .min(0)
    .max(60)
    .optional()
    .describe('height of a tree’s lowest branches above the ground [m]; a usual share when left out'),
  crownWidthM: z
    .number()
    .positive()
    .max(60)
    .optional()
    .describe('width of a tree’s crown [m]; a usual share of its height when left out'),
  leaf: z
    .enum(['deciduous', 'evergreen'])
    .optional()
    .describe('whether a tree or hedge drops its leaves; the usual of its kind when left out'),
  leafMonths: z
    .strictObject({
      from: z.int().min(1).max(12).describe('first month in full leaf [1 to 12]'),
      to: z.int().min(1).max(12).describe('last month in full leaf [1 to 12]'),
    })
    .optional()
    .describe('when it is in leaf; by the climate’s side of the equator when left out'),
  leafyLight: z
    .number()
    .min(0)
    .max(1)
    .optional()
    .describe('share of direct light that comes through in leaf, or through a fence [0 to 1]'),
  bareLight: z.number().min(0).max(1).optional().describe('the same through bare branches [0 to 1]'),
  note: z.string().max(400).optional().describe('anything worth knowing'),
})
