import { z } from 'zod'

/** The twelve texture classes of the USDA triangle. */
export const textureClasses = [
  'sand',
  'loamy sand',
  'sandy loam',
  'loam',
  'silt loam',
  'silt',
  'sandy clay loam',
  'clay loam',
  'silty clay loam',
  'sandy clay',
  'silty clay',
  'clay',
] as const

const percent = z.number().min(0).max(100)

/** What was done to learn the texture. */
const textureSchema = z.discriminatedUnion('by', [
  z.strictObject({
    by: z.literal('class').describe('the class is known'),
    class: z.enum(textureClasses).describe('class of the USDA triangle'),
  }),
  z.strictObject({
    by: z.literal('feel').describe('three questions to a moist handful'),
    ball: z.boolean().describe('a moist handful holds together when squeezed'),
    ribbonCm: z.number().min(0).max(15).describe('length of the ribbon before it breaks [cm]'),
    feel: z.enum(['gritty', 'smooth', 'neither']).describe('an over-wetted pinch rubbed in the palm'),
  }),
  z.strictObject({
    by: z.literal('jar').describe('shaken in a jar of water and left to settle'),
    sandMm: z.number().min(0).max(1000).describe('layer settled after 1 minute [mm]'),
    siltMm: z.number().min(0).max(1000).describe('layer settled from then to 2 hours [mm]'),
    clayMm: z.number().min(0).max(1000).describe('layer settled after 48 hours [mm]'),
  }),
  z
    .strictObject({
      by: z.literal('percent').describe('from a laboratory'),
      sandPercent: percent.describe('sand by weight [%]'),
      siltPercent: percent.describe('silt by weight [%]'),
      clayPercent: percent.describe('clay by weight [%]'),
    })
    .refine((soil) => Math.abs(soil.sandPercent + soil.siltPercent + soil.clayPercent - 100) <= 1, {
      path: ['clayPercent'],
      message: 'sand, silt and clay must add up to 100 %',
    }),
])

/** A soil pit or handful, and where it was taken. */
export const soilSampleSchema = z.strictObject({
  id: z.string().min(1).describe('name of the sample that other entries use'),
  name: z.string().min(1).describe('what the person calls this pit'),
  assumed: z.boolean().optional().describe('put in by the program to start with: still to be tested'),
  at: z
    .strictObject({
      eastM: z.number().describe('east of the plot’s origin [m]'),
      northM: z.number().describe('north of the plot’s origin [m]'),
    })
    .optional()
    .describe('where it was taken; the whole plot when left out'),
  texture: textureSchema,
  depthM: z.number().positive().max(5).describe('depth that roots can use, down to rock or pan [m]'),
  stonesPercent: z.number().min(0).max(90).describe('stones over 2 mm, by volume [%]'),
  organicPercent: z
    .number()
    .min(0)
    .max(8)
    .describe('organic matter by weight [%]; the method holds below 8 %'),
  ph: z.number().min(3).max(10).optional().describe('acidity, when tested [pH]'),
  compaction: z.enum(['loose', 'normal', 'compacted']).describe('how hard it is to push a rod in'),
})

export type TextureClass = (typeof textureClasses)[number]
export type Texture = z.infer<typeof textureSchema>
export type SoilSample = z.infer<typeof soilSampleSchema>
