import { groundAbove, groundBeyond } from './ground-above'
import type { UnitEdge, WaterUnit } from './water.types'

/** One receiver of a unit's water, by place in the course. */
interface Receiver {
  readonly at: number
  /** Depth that arrives there over depth that leaves here [mm/mm]. */
  readonly depthRatio: number
}

/** A unit in its place on the way of the water, highest first. */
export interface CourseUnit {
  readonly unit: WaterUnit
  /** On the plot; in the last strip above it, which sheds onto the plot; or further above. */
  readonly place: 'plot' | 'edge' | 'above'
  readonly receivers: readonly Receiver[]
  /** Share of what leaves the unit that also leaves the plot [0 to 1]. */
  readonly leavesShare: number
}

/** Shares may add up to this much more than 1, from rounding [-]. */
const SHARE_TOLERANCE = 1e-6

/**
 * Units in the order in which water passes them, with ground beyond the boundary put on top: as it was described, and on
 * the rest of the edge of those units that no other unit drains to as `aboveM` says.
 *
 * A link to a unit that is not lower is dropped, and its share goes to the other receivers in proportion;
 * with none left it leaves the plot. So water never runs in a circle.
 *
 * @param units - the units, in any order
 * @param aboveM - length of ground that sheds onto the plot [m plan], 0 or more
 * @param edges - edges over which ground beyond sheds onto units, as far as they are known
 * @returns the course, highest first
 * @throws RangeError when a unit or a link makes no sense
 */
export function waterCourse(
  units: readonly WaterUnit[],
  aboveM: number,
  edges: readonly UnitEdge[] = [],
): readonly CourseUnit[] {
  refuseNonsense(units, aboveM)
  const downhill = [...units].sort((one, other) => other.levelM - one.levelM).map(dropUphill(units))
  const fed = new Set(downhill.flatMap((unit) => unit.handsOn.map((link) => link.to)))
  const tops = aboveM > 0 ? downhill.filter((unit) => !fed.has(unit.id)) : []
  const ground = [
    ...tops.flatMap((top) => groundAbove(top, aboveM, edges)),
    ...edges.flatMap((edge) => groundBeyond(edge, downhill)),
  ]
  const plotIds = new Set(units.map((unit) => unit.id))
  const order = [...ground, ...downhill]
  const placeOf = new Map(order.map((unit, at) => [unit.id, at]))
  return order.map((unit, at) => ({
    unit,
    place:
      at >= ground.length ? 'plot' : unit.handsOn.some((link) => plotIds.has(link.to)) ? 'edge' : 'above',
    receivers: unit.handsOn.map(({ to, share }) => {
      const place = placeOf.get(to) ?? -1
      return { at: place, depthRatio: (share * unit.planAreaM2) / (order[place]?.planAreaM2 ?? 1) }
    }),
    leavesShare: Math.max(0, 1 - unit.handsOn.reduce((sum, link) => sum + link.share, 0)),
  }))
}

function dropUphill(units: readonly WaterUnit[]): (unit: WaterUnit) => WaterUnit {
  const levelOf = new Map(units.map((unit) => [unit.id, unit.levelM]))
  return (unit) => {
    const sum = (links: WaterUnit['handsOn']) => links.reduce((total, link) => total + link.share, 0)
    const kept = unit.handsOn.filter((link) => (levelOf.get(link.to) ?? Infinity) < unit.levelM)
    const scale = sum(kept) > 0 ? sum(unit.handsOn) / sum(kept) : 0
    return { ...unit, handsOn: kept.map(({ to, share }) => ({ to, share: share * scale })) }
  }
}

function refuseNonsense(units: readonly WaterUnit[], aboveM: number): void {
  if (!(aboveM >= 0 && Number.isFinite(aboveM)))
    throw new RangeError(`waterCourse: aboveM must be 0 or more, got ${aboveM}`)
  const ids = new Set(units.map((unit) => unit.id))
  if (ids.size !== units.length) throw new RangeError('waterCourse: two units have the same id')
  for (const unit of units) {
    if (!(unit.planAreaM2 > 0 && unit.lengthM > 0 && Number.isFinite(unit.levelM)))
      throw new RangeError(`waterCourse: unit ${unit.id} needs an area, a length and a level`)
    refuseLinks(unit, ids)
  }
}

function refuseLinks({ id, handsOn }: WaterUnit, ids: ReadonlySet<string>): void {
  for (const { to, share } of handsOn)
    if (!ids.has(to) || to === id || !(share >= 0))
      throw new RangeError(`waterCourse: unit ${id} hands a share of ${share} on to ${to}`)
  const sum = handsOn.reduce((total, link) => total + link.share, 0)
  if (sum > 1 + SHARE_TOLERANCE)
    throw new RangeError(`waterCourse: unit ${id} hands on a share of ${sum}, more than all`)
}
