import type { GridFrame } from '#core/geometry'
import type { Crown, Screen, Standing } from './shade.types'
import { evenOver, type Even } from './things-band'

/** Direction in plan, length 1. */
export interface Look {
  readonly east: number
  readonly north: number
}

/** A screen as it is met from each cell on looking in one direction. */
export interface SeenScreen {
  /** Where along the screen it is met: 0 at its one end, 1 at the other. */
  readonly part: Even
  /** Plan distance to it [m], negative behind. */
  readonly awayM: Even
  /** Level of its top there [m]. */
  readonly topM: Even
}

/**
 * Whether no light comes through a thing at any time of the year.
 *
 * @param thing - the thing
 * @returns whether it is so
 */
export function isHard(thing: Standing): boolean {
  return thing.through.every((share) => share === 0)
}

/** A screen that looks narrower than this hides nothing: of its own length [1], and at least [m]. */
const EDGE_ON = 1e-9

/**
 * Whether a screen has any width, looked at from afar.
 *
 * @param acrossM - how wide it looks [m], of either sign
 * @param lengthM - how long it is [m]
 * @returns whether it hides anything
 */
export function hasWidth(acrossM: number, lengthM: number): boolean {
  return Math.abs(acrossM) > EDGE_ON * Math.max(1, lengthM)
}

/**
 * A screen as it is met from each cell.
 *
 * @param frame - where the grid lies
 * @param screen - the screen
 * @param look - direction looked in
 * @returns what is met; undefined when it is seen edge-on
 */
export function seenScreen(frame: GridFrame, screen: Screen, look: Look): SeenScreen | undefined {
  const { from, to, topFromM, topToM } = screen
  const eastM = to.eastM - from.eastM
  const northM = to.northM - from.northM
  const across = look.east * northM - look.north * eastM
  if (!hasWidth(across, Math.hypot(eastM, northM))) return undefined
  const perM = 1 / across
  const part = {
    east: -look.north * perM,
    north: look.east * perM,
    origin: (look.north * from.eastM - look.east * from.northM) * perM,
  }
  const rise = topToM - topFromM
  return {
    part: evenOver(frame, part.east, part.north, part.origin),
    awayM: evenOver(frame, -northM * perM, eastM * perM, (northM * from.eastM - eastM * from.northM) * perM),
    topM: evenOver(frame, part.east * rise, part.north * rise, topFromM + part.origin * rise),
  }
}

/** Farther than any ground lies from a thing [m]. */
const ENDLESS_M = 1e6

/** Between which northings something lies [m]. */
export interface Norths {
  readonly southM: number
  readonly northM: number
}

/**
 * Northings between which a screen's shadow lies.
 *
 * @param screen - the screen
 * @param look - direction towards the sun, or looked in
 * @param lengthM - length of the shadow [m], 0 or more
 * @returns the northings [m]
 */
export function screenNorths(screen: Screen, look: Look, lengthM: number): Norths {
  const backM = look.north * Math.min(lengthM, ENDLESS_M)
  const southM = Math.min(screen.from.northM, screen.to.northM)
  const northM = Math.max(screen.from.northM, screen.to.northM)
  return { southM: Math.min(southM, southM - backM), northM: Math.max(northM, northM - backM) }
}

/**
 * Northings between which a crown's shadow lies.
 *
 * @param crown - the crown
 * @param look - direction towards the sun, or looked in
 * @param lengthM - plan distance of the shadow's far end from the middle of the crown [m], 0 or more
 * @returns the northings [m]
 */
export function crownNorths(crown: Crown, look: Look, lengthM: number): Norths {
  const backM = look.north * Math.min(lengthM, ENDLESS_M)
  const { northM } = crown.at
  return {
    southM: Math.min(northM, northM - backM) - crown.radiusM,
    northM: Math.max(northM, northM - backM) + crown.radiusM,
  }
}

/** The middle of a crown as it is met from each cell on looking in one direction. */
export interface SeenCrown {
  /** Plan distance on to its middle [m], negative behind. */
  readonly awayM: Even
  /** Plan distance of its middle to the right of the line of sight [m]. */
  readonly asideM: Even
}

/**
 * A crown as it is met from each cell.
 *
 * @param frame - where the grid lies
 * @param crown - the crown
 * @param look - direction looked in
 * @returns where its middle is
 */
export function seenCrown(frame: GridFrame, crown: Crown, look: Look): SeenCrown {
  const { at } = crown
  const { east, north } = look
  return {
    awayM: evenOver(frame, -east, -north, at.eastM * east + at.northM * north),
    asideM: evenOver(frame, -north, east, at.eastM * north - at.northM * east),
  }
}
