import { z } from 'zod'

/** How a figure of an export is written: the unit it is in and the decimals it is rounded to. */
export interface Writing {
  readonly unit: string
  readonly decimals: number
  readonly least?: number
  readonly most?: number
}

/**
 * A number of an export with its meaning, unit and decimals: the schema, the rounding and the format page all read it.
 *
 * @param meaning - what it is, without the unit
 * @param writing - unit, decimals, and the range it lies in
 * @returns the schema of the number
 */
export function figure(meaning: string, { unit, decimals, least, most }: Writing): z.ZodNumber {
  const above = least === undefined ? z.number() : z.number().min(least)
  const within = most === undefined ? above : above.max(most)
  return within.meta({ description: `${meaning} [${unit}]`, decimals })
}

/** Twelve values, January first. */
export const twelve = <T extends z.ZodType>(one: T) => z.array(one).length(12)

/** The decimals a schema's number is rounded to; undefined when it is kept as it is. */
export function decimalsOf(schema: z.core.$ZodType): number | undefined {
  const decimals = z.globalRegistry.get(schema)?.decimals
  return typeof decimals === 'number' ? decimals : undefined
}
