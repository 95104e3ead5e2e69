import { z } from 'zod'
import { decimalsOf } from './figure'

/**
 * A value cut to a schema: keys in the schema's order and no others, numbers rounded to the schema's decimals, null
 * where the schema allows it and nothing is known. The same value gives the same text.
 *
 * @param schema - an export's schema of objects, lists, records and plain values
 * @param value - holds at least what the schema asks for
 * @returns plain data, ready for JSON
 * @throws RangeError when a number is not finite
 */
export function shaped(schema: z.core.$ZodType, value: unknown): unknown {
  if (schema instanceof z.ZodNullable)
    return value === undefined || value === null ? null : shaped(schema.unwrap(), value)
  if (schema instanceof z.ZodObject) return shapedObject(schema.shape, value)
  if (schema instanceof z.ZodArray) return listOf(value).map((one) => shaped(schema.element, one))
  if (schema instanceof z.ZodRecord)
    return Object.fromEntries(
      Object.entries(entriesOf(value))
        .sort(([one], [other]) => (one < other ? -1 : 1))
        .map(([key, one]) => [key, shaped(schema.valueType, one)]),
    )
  return typeof value === 'number' ? rounded(value, decimalsOf(schema)) : value
}

function shapedObject(
  shape: Readonly<Record<string, z.core.$ZodType>>,
  value: unknown,
): Record<string, unknown> {
  const entries = entriesOf(value)
  return Object.fromEntries(Object.entries(shape).map(([key, schema]) => [key, shaped(schema, entries[key])]))
}

function entriesOf(value: unknown): Readonly<Record<string, unknown>> {
  if (typeof value !== 'object' || value === null)
    throw new RangeError(`shaped: a group of entries is needed, got ${typeof value}`)
  return { ...value }
}

function listOf(value: unknown): readonly unknown[] {
  if (Array.isArray(value)) return value as readonly unknown[]
  throw new RangeError(`shaped: a list is needed, got ${typeof value}`)
}

function rounded(value: number, decimals: number | undefined): number {
  if (!Number.isFinite(value)) throw new RangeError(`shaped: a number must be finite, got ${value}`)
  // Adding 0 turns -0 into 0.
  return decimals === undefined ? value : Number(value.toFixed(decimals)) + 0
}
