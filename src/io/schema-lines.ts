import type { z } from 'zod'

/** A piece of a JSON Schema. */
export type SchemaNode = z.core.JSONSchema.BaseSchema

interface Place {
  readonly path: string
  readonly optional: boolean
}

/**
 * One line for each field of a JSON Schema: its path, what it holds, and what it means with its unit.
 *
 * @param schema - the whole schema
 * @returns lines of a Markdown list
 */
export function fieldLines(schema: SchemaNode): readonly string[] {
  return linesOf(schema, { path: '', optional: false })
}

function linesOf(node: SchemaNode, place: Place): string[] {
  const { inner, mayBeNull } = withoutNull(node)
  const own = place.path === '' ? [] : [lineOf(inner, place, { mayBeNull, meaning: meaningOf(node, inner) })]
  return [...own, ...below(inner, place.path)]
}

function below(node: SchemaNode, path: string): string[] {
  const choices = node.anyOf ?? node.oneOf
  if (choices) return choices.flatMap((choice) => choiceLines(asNode(choice), path))
  if (node.items && !Array.isArray(node.items)) {
    const items = asNode(node.items)
    return isGroup(withoutNull(items).inner)
      ? below(withoutNull(items).inner, `${path}[]`)
      : linesOf(items, { path: `${path}[]`, optional: false })
  }
  if (isNode(node.additionalProperties) && node.propertyNames)
    return below(node.additionalProperties, `${path}.KEY`)
  const needed = new Set(node.required)
  return Object.entries(node.properties ?? {}).flatMap(([key, one]) =>
    linesOf(asNode(one), { path: path ? `${path}.${key}` : key, optional: !needed.has(key) }),
  )
}

/** A kind of entry is named by the constant it holds, such as its kind. */
function choiceLines(choice: SchemaNode, path: string): string[] {
  const kind = Object.values(choice.properties ?? {})
    .map((one) => asNode(one).const)
    .find((constant) => typeof constant === 'string')
  return typeof kind === 'string' ? below(choice, `${path}(${kind})`) : below(choice, path)
}

const isGroup = (node: SchemaNode): boolean =>
  node.properties !== undefined || node.anyOf !== undefined || node.oneOf !== undefined

function isNode(value: unknown): value is SchemaNode {
  return typeof value === 'object' && value !== null && Object.keys(value).length > 0
}

/** true and false are schemas too: they say nothing. */
function asNode(value: unknown): SchemaNode {
  return isNode(value) ? value : {}
}

function withoutNull(node: SchemaNode): { inner: SchemaNode; mayBeNull: boolean } {
  const [type, second] = Array.isArray(node.type) ? node.type : []
  if (type !== undefined && second === 'null') return { inner: { ...node, type }, mayBeNull: true }
  const others = node.anyOf?.filter((one) => asNode(one).type !== 'null')
  const [only] = others ?? []
  return node.anyOf && others?.length === 1 && node.anyOf.length === 2
    ? { inner: asNode(only), mayBeNull: true }
    : { inner: node, mayBeNull: false }
}

function meaningOf(node: SchemaNode, inner: SchemaNode): string {
  const decimals = inner.decimals
  const to = typeof decimals === 'number' ? `, ${decimals} ${decimals === 1 ? 'decimal' : 'decimals'}` : ''
  const meaning = node.description ?? inner.description ?? ''
  return `${meaning}${to}`
}

function lineOf(
  node: SchemaNode,
  { path, optional }: Place,
  { mayBeNull, meaning }: { readonly mayBeNull: boolean; readonly meaning: string },
): string {
  const notes = [kindOf(node), mayBeNull ? 'or null' : '', optional ? 'may be left out' : ''].filter(Boolean)
  return `- \`${path}\`: ${notes.join(', ')}${meaning ? `. ${meaning.charAt(0).toUpperCase()}${meaning.slice(1)}` : ''}.`
}

/** What a field holds, in words. */
function kindOf(node: SchemaNode): string {
  if (node.const !== undefined) return `always ${JSON.stringify(node.const)}`
  if (node.enum) return `one of ${node.enum.map((word) => JSON.stringify(word)).join(', ')}`
  if (node.anyOf ?? node.oneOf) return 'one of several kinds of group'
  const kinds: Readonly<Record<string, string>> = {
    number: `number${rangeOf(node)}`,
    integer: `whole number${rangeOf(node)}`,
    string: 'text',
    boolean: 'true or false',
    array: `list${countOf(node)}`,
    object: 'group',
  }
  return kinds[typeof node.type === 'string' ? node.type : ''] ?? 'value'
}

function rangeOf(node: SchemaNode): string {
  const over = node.exclusiveMinimum === undefined ? '' : 'above '
  const from = bounded(node.minimum ?? node.exclusiveMinimum)
  const most = bounded(node.maximum)
  if (from !== undefined && most !== undefined) return ` ${over}${from} to ${most}`
  if (from !== undefined) return over ? ` above ${from}` : ` ${from} or more`
  return most === undefined ? '' : ` up to ${most}`
}

/** A whole number's schema is bounded by what a computer can hold; that is no bound to speak of. */
function bounded(limit: unknown): number | undefined {
  return typeof limit === 'number' && Math.abs(limit) < Number.MAX_SAFE_INTEGER ? limit : undefined
}

function countOf({ minItems, maxItems }: SchemaNode): string {
  if (minItems !== undefined && minItems === maxItems) return ` of ${minItems}`
  return minItems ? ` of at least ${minItems}` : ''
}
