import { sides, type Ring } from '#core/geometry'
import type { Obstacle } from '#plan'
import type { ThingMeasures } from '../../drawing/thing-elevation'
import { takesLight } from '../../edits/thing-fields'
import type { UsualFigures } from '../../edits/usual-figures'

/** A line is drawn this thick as it stands [m]: a hedge, and a wall or fence. */
const HEDGE_M = 0.8
const THIN_M = 0.2
/** A building of which only a line was drawn [m]. */
const BUILDING_M = 6

/** What a thing is drawn with as it stands; undefined while its height is not known or it takes no light. */
export function thingMeasures(thing: Obstacle, usual: UsualFigures): ThingMeasures | undefined {
  const { heightM } = thing
  if (!takesLight(thing) || !heightM) return undefined
  const shape = shapeOf(thing.kind)
  return {
    shape,
    heightM,
    ridgeM: shape === 'building' ? thing.ridgeM : undefined,
    widthM: widthOf(thing, usual),
    crownBaseM: thing.crownBaseM ?? usual.crownBaseM ?? 0,
  }
}

function shapeOf(kind: Obstacle['kind']): ThingMeasures['shape'] {
  if (kind === 'house' || kind === 'building') return 'building'
  return kind === 'tree' ? 'crown' : 'line'
}

function widthOf(thing: Obstacle, usual: UsualFigures): number {
  if (thing.kind === 'tree') return crownWidthM(thing, usual)
  if (shapeOf(thing.kind) === 'building') return outlineWidthM(thing.ring) ?? BUILDING_M
  return thing.kind === 'hedge' ? HEDGE_M : THIN_M
}

const crownWidthM = (thing: Obstacle, usual: UsualFigures): number =>
  thing.crownWidthM ?? usual.crownWidthM ?? 1

/** The shorter of the first two sides of an outline. */
function outlineWidthM(ring: Ring): number | undefined {
  if (ring.length < 3) return undefined
  const lengths = sides(ring)
    .slice(0, 2)
    .map(([from, to]) => Math.hypot(to.eastM - from.eastM, to.northM - from.northM))
  return Math.round(Math.min(...lengths) * 10) / 10
}
