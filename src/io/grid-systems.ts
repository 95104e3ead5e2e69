import nationalGrids from '#data/survey/grids'
import { z } from 'zod'

const code = z.int().min(1024).max(32_767)

const gridSystemSchema = z.strictObject({
  name: z.string().min(1),
  /** EPSG codes by the unit that coordinates are in. */
  codes: z.strictObject({
    m: z.array(code).optional(),
    'us-ft': z.array(code).optional(),
    ft: z.array(code).optional(),
  }),
  /** For proj4, without a unit. */
  definition: z.string().startsWith('+proj='),
  /** Area of use: west, south, east, north [°]; west of the date line when west is above east. */
  box: z.tuple([z.number(), z.number(), z.number(), z.number()]),
  source: z.string(),
})

/** A national grid: one projection, known by several codes and in several units. */
export type GridSystem = z.infer<typeof gridSystemSchema>

let checked: readonly GridSystem[] | undefined

/**
 * National and state grids of data/survey/grids.json, checked once.
 *
 * @returns every grid with its codes and area of use
 */
export function loadGridSystems(): readonly GridSystem[] {
  checked ??= z.array(gridSystemSchema).parse(nationalGrids)
  return checked
}
