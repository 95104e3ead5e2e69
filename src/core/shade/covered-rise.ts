import type { PlanPoint } from '#core/geometry'
import type { Crown, Screen } from './shade.types'

/** A place that is looked from: in plan [m], and its level [m]. */
interface Place extends PlanPoint {
  readonly levelM: number
}

/** From the lowest to the highest rise over plan distance that is covered [m/m]; infinite where there is no end to it. */
interface RiseSpan {
  low: number
  high: number
}

/**
 * How much of one direction a part of a thing covers, seen from a place. A screen covers everything below its top. A crown
 * covers what lies between the two lines that touch the egg above and below; overhead where the place is under it, and
 * everything where the place is in it.
 *
 * @param part - screen or crown
 * @param place - place looked from [m], anywhere
 * @param azimuthRad - direction looked towards, clockwise from true north [rad]
 * @param into - where to write the rises [m/m]; left as it is when the part does not stand in that direction
 * @returns whether the part stands in that direction
 */
export function coveredRise(part: Screen | Crown, place: Place, azimuthRad: number, into: RiseSpan): boolean {
  const look = { east: Math.sin(azimuthRad), north: Math.cos(azimuthRad) }
  return 'from' in part ? screenRise(part, place, look, into) : crownRise(part, place, look, into)
}

/** Direction in plan, length 1. */
interface Look {
  readonly east: number
  readonly north: number
}

function along(look: Look, from: PlanPoint, to: PlanPoint): number {
  return (to.eastM - from.eastM) * look.east + (to.northM - from.northM) * look.north
}

function aside(look: Look, from: PlanPoint, to: PlanPoint): number {
  return (to.eastM - from.eastM) * look.north - (to.northM - from.northM) * look.east
}

function screenRise(screen: Screen, place: Place, look: Look, into: RiseSpan): boolean {
  const asideFromM = aside(look, place, screen.from)
  const asideToM = aside(look, place, screen.to)
  if (asideFromM * asideToM > 0) return false
  const awayFromM = along(look, place, screen.from)
  const awayToM = along(look, place, screen.to)
  const high =
    asideFromM === asideToM
      ? edgeOnRise(screen, place.levelM, awayFromM, awayToM)
      : crossedRise(screen, place.levelM, asideFromM / (asideFromM - asideToM), [awayFromM, awayToM])
  if (high === undefined) return false
  into.low = -Infinity
  into.high = high
  return true
}

function crossedRise(
  { topFromM, topToM }: Screen,
  levelM: number,
  part: number,
  [awayFromM, awayToM]: readonly [number, number],
): number | undefined {
  const awayM = awayFromM + part * (awayToM - awayFromM)
  return awayM < 0 ? undefined : riseTo(topFromM + part * (topToM - topFromM) - levelM, awayM)
}

// Along its whole length the rise to a straight top only grows or only falls.
function edgeOnRise(screen: Screen, levelM: number, awayFromM: number, awayToM: number): number | undefined {
  if (awayFromM < 0 && awayToM < 0) return undefined
  if (awayFromM * awayToM < 0)
    return crossedRise(screen, levelM, awayFromM / (awayFromM - awayToM), [awayFromM, awayToM])
  return Math.max(riseTo(screen.topFromM - levelM, awayFromM), riseTo(screen.topToM - levelM, awayToM))
}

function riseTo(aboveM: number, awayM: number): number {
  if (awayM > 0) return aboveM / awayM
  return aboveM > 0 ? Infinity : -Infinity
}

function crownRise({ at, radiusM, baseM, topM }: Crown, place: Place, look: Look, into: RiseSpan): boolean {
  const asideM = aside(look, place, at)
  const cut = 1 - (asideM / radiusM) ** 2
  const halfWide2 = radiusM * radiusM * cut
  const awayM = along(look, place, at)
  const inPlan = awayM * awayM < halfWide2
  if (!(cut > 0) || (awayM < 0 && !inPlan)) return false
  const halfHigh2 = ((topM - baseM) / 2) ** 2 * cut
  const aboveM = (baseM + topM) / 2 - place.levelM
  touching({ awayM, aboveM, halfWide2, halfHigh2 }, inPlan, into)
  return true
}

/** The upright cut through a crown: middle and halves of its ellipse, seen from the place [m]. */
interface Cut {
  readonly awayM: number
  readonly aboveM: number
  readonly halfWide2: number
  readonly halfHigh2: number
}

// Lines of rise m through the place touch the ellipse where (above - m away)² = m² halfWide² + halfHigh².
function touching({ awayM, aboveM, halfWide2, halfHigh2 }: Cut, inPlan: boolean, into: RiseSpan): void {
  const square = awayM * awayM - halfWide2
  const both = awayM * aboveM
  const spread2 = halfWide2 * aboveM * aboveM + halfHigh2 * square
  if (inPlan && !(spread2 > 0)) {
    into.low = -Infinity
    into.high = Infinity
    return
  }
  const spread = Math.sqrt(spread2)
  const product = aboveM * aboveM - halfHigh2
  const low = both > 0 ? product / (both + spread) : (both - spread) / square
  const high = both > 0 ? (both + spread) / square : product / (both - spread)
  const overhead = square <= 0
  into.low = overhead && aboveM < 0 ? -Infinity : low
  into.high = overhead && aboveM >= 0 ? Infinity : high
}
