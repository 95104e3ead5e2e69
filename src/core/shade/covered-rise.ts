import type { PlanPoint } from '#core/geometry'
import type { Crown, Screen } from './shade.types'
import { hasWidth, type Look } from './things-parts'

/** A place that is looked from: in plan [m], and its level [m]. */
interface Place extends PlanPoint {
  readonly levelM: number
}

/** From the lowest to the highest rise over plan distance that is covered [m/m]; infinite where there is no end to it. */
export interface RiseSpan {
  low: number
  high: number
}

/**
 * How much of one direction a part of a thing covers, seen from a place. A screen covers everything below its top. A crown
 * covers what lies between the two lines that touch the egg above and below; overhead where the place is under it, and
 * everything where the place is in it. A screen seen edge-on covers nothing.
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

function along(look: Look, from: PlanPoint, to: PlanPoint): number {
  return (to.eastM - from.eastM) * look.east + (to.northM - from.northM) * look.north
}

function aside(look: Look, from: PlanPoint, to: PlanPoint): number {
  return (to.eastM - from.eastM) * look.north - (to.northM - from.northM) * look.east
}

function screenRise(screen: Screen, place: Place, look: Look, into: RiseSpan): boolean {
  const asideFromM = aside(look, place, screen.from)
  const acrossM = asideFromM - aside(look, place, screen.to)
  const lengthM = Math.hypot(screen.to.eastM - screen.from.eastM, screen.to.northM - screen.from.northM)
  const part = asideFromM / acrossM
  if (!(hasWidth(acrossM, lengthM) && part >= 0 && part <= 1)) return false
  const awayFromM = along(look, place, screen.from)
  const awayM = awayFromM + part * (along(look, place, screen.to) - awayFromM)
  if (awayM < 0) return false
  const topM = screen.topFromM + part * (screen.topToM - screen.topFromM)
  return covers(into, -Infinity, riseTo(topM - place.levelM, awayM))
}

function riseTo(aboveM: number, awayM: number): number {
  if (awayM > 0) return aboveM / awayM
  return aboveM > 0 ? Infinity : -Infinity
}

function crownRise(crown: Crown, place: Place, look: Look, into: RiseSpan): boolean {
  const { at, radiusM, baseM, topM } = crown
  const sight = {
    awayM: along(look, place, at),
    asideM: aside(look, place, at),
    aboveM: (baseM + topM) / 2 - place.levelM,
  }
  return eggRise({ radiusM, halfHighM: (topM - baseM) / 2 }, sight, into)
}

/** Size of an egg standing upright. */
export interface Egg {
  readonly radiusM: number
  readonly halfHighM: number
}

/** Where its middle is, seen from a place along a line of sight in plan. */
export interface Sight {
  /** Plan distance on to it, negative behind [m]. */
  readonly awayM: number
  /** Plan distance to the side [m]. */
  readonly asideM: number
  readonly aboveM: number
}

/**
 * What an egg covers along one line of sight.
 *
 * @param egg - its size [m]
 * @param sight - where its middle is [m]
 * @param into - where to write the rises [m/m]; left as it is when the egg is not met
 * @returns whether it is met
 */
export function eggRise(egg: Egg, sight: Sight, into: RiseSpan): boolean {
  const { awayM, asideM, aboveM } = sight
  const radius2 = egg.radiusM * egg.radiusM
  const halfWide2 = radius2 - asideM * asideM
  if (!(halfWide2 > 0)) return false
  const square = awayM * awayM - halfWide2
  if (awayM < 0 && square >= 0) return false
  const halfHigh2 = (egg.halfHighM * egg.halfHighM * halfWide2) / radius2
  // Lines of rise m touch the egg's cut where (above - m away)² = m² halfWide² + halfHigh².
  const spread2 = halfWide2 * aboveM * aboveM + halfHigh2 * square
  if (square < 0 && !(spread2 > 0)) return covers(into, -Infinity, Infinity)
  const both = awayM * aboveM
  const spread = Math.sqrt(spread2)
  const product = aboveM * aboveM - halfHigh2
  const low = both > 0 ? product / (both + spread) : (both - spread) / square
  const high = both > 0 ? (both + spread) / square : product / (both - spread)
  if (square > 0) return covers(into, low, high)
  return aboveM >= 0 ? covers(into, low, Infinity) : covers(into, -Infinity, high)
}

function covers(into: RiseSpan, low: number, high: number): true {
  into.low = low
  into.high = high
  return true
}
