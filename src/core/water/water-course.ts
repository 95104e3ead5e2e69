import type { WaterUnit } from './water.types'

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

/** Most strips that ground above is cut into; a longer way makes the farthest strip longer: own judgement. */
const MOST_STRIPS = 24

/** Shares may add up to this much more than 1, from rounding [-]. */
const SHARE_TOLERANCE = 1e-6

/**
 * Units in the order in which water passes them, with ground above the plot put on top of those that no
 * other unit drains to.
 *
 * A link to a unit that is not lower is dropped, and its share goes to the other receivers in proportion;
 * with none left it leaves the plot. So water never runs in a circle.
 *
 * @param units - the units, in any order
 * @param aboveM - length of ground that sheds onto the plot [m plan], 0 or more
 * @returns the course, highest first
 * @throws RangeError when a unit or a link makes no sense
 */
export function waterCourse(units: readonly WaterUnit[], aboveM: number): readonly CourseUnit[] {
  refuseNonsense(units, aboveM)
  const downhill = [...units].sort((one, other) => other.levelM - one.levelM).map(dropUphill(units))
  const fed = new Set(downhill.flatMap((unit) => unit.handsOn.map((link) => link.to)))
  const tops = aboveM > 0 ? downhill.filter((unit) => !fed.has(unit.id)) : []
  const ground = tops.flatMap((top) => groundAbove(top, aboveM))
  const topIds = new Set(tops.map((top) => top.id))
  const order = [...ground, ...downhill]
  const placeOf = new Map(order.map((unit, at) => [unit.id, at]))
  return order.map((unit, at) => ({
    unit,
    place: at >= ground.length ? 'plot' : unit.handsOn.some((link) => topIds.has(link.to)) ? 'edge' : 'above',
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

// Ground above is taken to be as the unit it sheds onto: same soil, cover, slope and sun. It is cut into
// strips as long as that unit, farthest first, so that water soaks in on its way as it does on the plot.
function groundAbove(top: WaterUnit, aboveM: number): readonly WaterUnit[] {
  const widthM = top.planAreaM2 / top.lengthM
  const strips = Math.min(MOST_STRIPS, Math.ceil(aboveM / top.lengthM))
  const idOf = (strip: number) => (strip === 0 ? top.id : `above ${top.id} ${strip}`)
  return Array.from({ length: strips }, (_, from) => {
    const strip = strips - from
    const lengthM = strip === strips ? aboveM - (strips - 1) * top.lengthM : top.lengthM
    return {
      ...top,
      id: idOf(strip),
      planAreaM2: widthM * lengthM,
      lengthM,
      handsOn: [{ to: idOf(strip - 1), share: 1 }],
    }
  })
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
