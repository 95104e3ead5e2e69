import { z } from 'zod'

/** One month of normals. */
const monthNormalsSchema = z
  .strictObject({
    tMinC: z.number().min(-70).max(45).describe('mean daily minimum temperature [°C]'),
    tMaxC: z.number().min(-60).max(60).describe('mean daily maximum temperature [°C]'),
    rainMm: z.number().min(0).max(3000).describe('mean rain of the month [mm]'),
    solarMjPerM2: z
      .number()
      .min(0)
      .max(45)
      .optional()
      .describe('mean radiation on level ground [MJ/m² a day]; goes before sunshine and temperature'),
    sunshineHours: z
      .number()
      .min(0)
      .max(24)
      .optional()
      .describe('mean bright sunshine [h a day]; goes before temperature'),
  })
  .refine((month) => month.tMinC <= month.tMaxC, {
    path: ['tMinC'],
    message: 'the minimum is above the maximum: are they swapped?',
  })

/** Twelve months of normals, January first, and what goes with them. */
export const climateSchema = z.strictObject({
  from: z.enum(['typed', 'place']).describe('typed in, or taken from the list of typical places'),
  place: z.string().optional().describe('name of the typical place, when taken from the list'),
  elevationM: z.number().min(-430).max(6000).describe('height of the weather station or of the plot [m]'),
  coast: z.boolean().describe('within some 20 km of a sea or great lake'),
  windMPerS: z.number().min(0).max(20).optional().describe('mean wind at 2 m [m/s]; 2 m/s where not known'),
  months: z.array(monthNormalsSchema).length(12, 'twelve months are needed, January first'),
})

/** A row of data/climate/places.json. */
export const placeSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  name: z.string().min(2),
  country: z.string().min(2),
  latitudeDeg: z.number().min(-90).max(90),
  longitudeDeg: z.number().min(-180).max(180),
  elevationM: z.number().min(-430).max(6000),
  coast: z.boolean(),
  months: z.array(monthNormalsSchema).length(12),
  publisher: z.string().min(2).describe('the service that publishes the normals'),
  provenance: z.enum(['looked-up', 'from-memory']),
  source: z.string(),
})

export type MonthNormals = z.infer<typeof monthNormalsSchema>
export type Climate = z.infer<typeof climateSchema>
export type Place = z.infer<typeof placeSchema>
