import type { Obstacle } from '#plan'

/** What can be measured of a thing besides where it stands. */
export type ThingField = (typeof order)[number]

const order = [
  'heightM',
  'ridgeM',
  'crownBaseM',
  'crownWidthM',
  'leaf',
  'leafMonths',
  'leafyLight',
  'bareLight',
  'groundM',
] as const satisfies readonly (keyof Obstacle)[]

const roofed = ['heightM', 'ridgeM', 'groundM'] as const
const leafy = ['leaf', 'leafMonths', 'leafyLight', 'bareLight'] as const

/** What each kind of thing has; what takes no light has nothing to measure. */
const fieldsOfKind: Readonly<Partial<Record<Obstacle['kind'], readonly ThingField[]>>> = {
  house: roofed,
  building: roofed,
  wall: ['heightM', 'groundM'],
  fence: ['heightM', 'leafyLight', 'groundM'],
  hedge: ['heightM', ...leafy, 'groundM'],
  tree: ['heightM', 'crownBaseM', 'crownWidthM', ...leafy, 'groundM'],
}

/** What of a thing can be measured: an evergreen has no time without leaves. */
export function fieldsOf({ kind, leaf }: Pick<Obstacle, 'kind' | 'leaf'>): readonly ThingField[] {
  const fields = fieldsOfKind[kind] ?? []
  return leaf === 'evergreen' ? fields.filter((key) => key !== 'leafMonths' && key !== 'bareLight') : fields
}

/** It takes light, so its height matters. */
export const takesLight = ({ kind }: Pick<Obstacle, 'kind'>): boolean => fieldsOfKind[kind] !== undefined

/** The thing without what does not fit what it is. */
export function fitted(thing: Obstacle): Obstacle {
  const keep: ReadonlySet<string> = new Set(fieldsOf(thing))
  const gone: ReadonlySet<string> = new Set(order.filter((key) => !keep.has(key)))
  return Object.fromEntries(Object.entries(thing).filter(([key]) => !gone.has(key))) as Obstacle
}
