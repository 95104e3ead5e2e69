/** A place as written: east, north and, where given, level. */
export type Place = readonly [number, number, number | undefined]

/** One point, line or ring of a GeoJSON file, with the properties of its feature. */
export interface Shape {
  readonly kind: 'point' | 'line' | 'ring' | 'hole'
  readonly places: readonly Place[]
  readonly properties: ReadonlyMap<string, unknown>
}

/** Deepest nesting of collections that is followed. */
const DEEPEST = 8
/** Most places of one file. */
const MOST_PLACES = 1_000_000

/**
 * Every point, line, outer ring and hole of a GeoJSON document (RFC 7946).
 *
 * @param parsed - the document
 * @returns the shapes, or what is wrong, a sentence
 */
export function shapesOf(parsed: unknown): Shape[] | string {
  const gathered: Gathering = { shapes: [], places: 0 }
  const wrong = gather(parsed, none, { into: gathered, depth: 0 })
  if (wrong !== undefined) return wrong
  return gathered.shapes.length === 0 ? 'The file holds no shape with coordinates.' : gathered.shapes
}

interface Gathering {
  readonly shapes: Shape[]
  places: number
}

interface Walk {
  readonly into: Gathering
  readonly depth: number
}

const none: ReadonlyMap<string, unknown> = new Map()

/** Names as they stand in the file, whatever they are: a Map has no inherited entries. */
function entriesOf(value: unknown): ReadonlyMap<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? new Map(Object.entries(value))
    : none
}

function gather(value: unknown, properties: ReadonlyMap<string, unknown>, walk: Walk): string | undefined {
  if (walk.depth > DEEPEST) return 'The file nests collections too deeply.'
  const entries = entriesOf(value)
  const below: Walk = { ...walk, depth: walk.depth + 1 }
  const list = entries.get('features') ?? entries.get('geometries')
  if (Array.isArray(list)) return gatherAll(list, properties, below)
  if (entries.get('type') === 'Feature') {
    const own = new Map([...entriesOf(entries.get('properties')), ['feature id', entries.get('id')]])
    return gather(entries.get('geometry'), own, below)
  }
  return entries.has('coordinates') ? gatherGeometry(entries, properties, walk.into) : undefined
}

function gatherAll(
  list: readonly unknown[],
  properties: ReadonlyMap<string, unknown>,
  walk: Walk,
): string | undefined {
  for (const one of list) {
    const wrong = gather(one, properties, walk)
    if (wrong !== undefined) return wrong
  }
  return undefined
}

/** How deep the lists of coordinates of each kind go, and what each innermost list is. */
const geometries: ReadonlyMap<unknown, { readonly kind: Shape['kind']; readonly lists: number }> = new Map<
  unknown,
  { readonly kind: Shape['kind']; readonly lists: number }
>([
  ['Point', { kind: 'point', lists: 0 }],
  ['MultiPoint', { kind: 'point', lists: 1 }],
  ['LineString', { kind: 'line', lists: 1 }],
  ['MultiLineString', { kind: 'line', lists: 2 }],
  ['Polygon', { kind: 'ring', lists: 2 }],
  ['MultiPolygon', { kind: 'ring', lists: 3 }],
])

function gatherGeometry(
  entries: ReadonlyMap<string, unknown>,
  properties: ReadonlyMap<string, unknown>,
  into: Gathering,
): string | undefined {
  const geometry = geometries.get(entries.get('type'))
  if (!geometry) return undefined
  const { kind, lists } = geometry
  const coordinates = entries.get('coordinates')
  const groups =
    kind === 'point'
      ? leaves(coordinates, lists).map((place) => [place])
      : leaves(coordinates, lists - 1).map((line) => (Array.isArray(line) ? (line as unknown[]) : []))
  // Only the outer ring of a polygon bounds it; the others are holes.
  const outer = kind === 'ring' ? new Set(outerRings(coordinates, lists)) : undefined
  for (const group of groups) {
    const places = group.map(placeOf)
    into.places += places.length
    if (into.places > MOST_PLACES) return `The file has more than ${MOST_PLACES} coordinates.`
    if (places.some((place) => place === undefined))
      return `A ${kind} has coordinates that are not numbers: ${JSON.stringify(group)?.slice(0, 60)}.`
    const own = outer && !outer.has(group) ? 'hole' : kind
    into.shapes.push({ kind: own, places: places.filter((place) => place !== undefined), properties })
  }
  return undefined
}

function outerRings(coordinates: unknown, lists: number): unknown[][] {
  const polygons = lists === 2 ? [coordinates] : leaves(coordinates, 1)
  return polygons.flatMap((polygon): unknown[][] => {
    const outer: unknown = Array.isArray(polygon) ? polygon[0] : undefined
    return Array.isArray(outer) ? [outer as unknown[]] : []
  })
}

/** Lists of lists taken apart to a depth. */
function leaves(value: unknown, depth: number): unknown[] {
  if (depth === 0) return [value]
  return Array.isArray(value) ? value.flatMap((one) => leaves(one, depth - 1)) : []
}

function placeOf(value: unknown): Place | undefined {
  if (!Array.isArray(value)) return undefined
  const [east, north, level] = value as unknown[]
  if (!isFinite(east) || !isFinite(north)) return undefined
  return [east, north, isFinite(level) ? level : undefined]
}

const isFinite = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value)
