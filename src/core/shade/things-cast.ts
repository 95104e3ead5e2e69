import type { Direction } from '#core/sun'
import type { Crown, Screen, ShadingGround } from './shade.types'
import { evenSum, evenTimes, walkBand } from './things-band'
import { crownNorths, screenNorths, seenCrown, seenScreen, type Look } from './things-parts'

/** A shadow must stand this high above the ground to count [m], as the ground's own shadow must. */
const SLACK_M = 1e-9

/** Where shadows fall, and by which light. */
export interface Falling {
  readonly ground: ShadingGround
  /** Lowest and highest ground of the plot [m]. */
  readonly lowestM: number
  readonly highestM: number
  /** Direction in plan towards the sun, and its rise over plan distance [m/m]. */
  readonly look: Look
  readonly rise: number
  /** Told of every cell in the shadow; cells outside the plot may be among them. */
  readonly take: (cell: number) => void
}

/** Least plan part of the sun's direction [1]: nearer to the zenith than 0.2″ it is taken to stand just beside it. */
const LEAST_LEVEL = 1e-6

/**
 * The sun as shadows are thrown by it.
 *
 * @param sun - its direction
 * @returns direction in plan towards it, and its rise over plan distance [m/m]
 */
export function towardsSun(sun: Direction): Pick<Falling, 'look' | 'rise'> {
  const level = Math.hypot(sun.east, sun.north)
  return {
    look: level > 0 ? { east: sun.east / level, north: sun.north / level } : { east: 0, north: 1 },
    rise: sun.up / Math.max(level, LEAST_LEVEL),
  }
}

/**
 * Throws the shadow of a screen: on a cell whose ray to the sun meets the screen below its top.
 *
 * @param screen - the screen
 * @param falling - where the shadow falls, and by which light
 */
export function castScreen(screen: Screen, falling: Falling): void {
  const { ground, lowestM, look, rise, take } = falling
  const seen = seenScreen(ground.frame, screen, look)
  if (seen === undefined) return
  const { part, awayM, topM } = seen
  const { levelM, frame } = ground
  // Level of the shadow's upper edge, a plane through the top of the screen and the sun.
  const edge = evenSum(topM, evenTimes(-SLACK_M, -rise, awayM))
  const lengthM = Math.max(0, Math.max(screen.topFromM, screen.topToM) - lowestM) / rise
  const band = {
    above: [part, evenTimes(1, -1, part), awayM, evenTimes(-lowestM, 1, edge)],
    ...screenNorths(screen, look, lengthM),
  }
  walkBand(frame, band, (row, first, beyond) => {
    const start = row * frame.columns
    const edgeM = edge.from + edge.perRow * row
    for (let column = first; column < beyond; column += 1)
      if (levelM[start + column]! < edgeM + edge.perColumn * column) take(start + column)
  })
}

/**
 * Throws the shadow of a crown: on a cell whose ray to the sun meets the egg.
 *
 * @param crown - the crown
 * @param falling - where the shadow falls, and by which light
 */
export function castCrown(crown: Crown, falling: Falling): void {
  const { ground, lowestM, highestM, look, rise, take } = falling
  const { radiusM, baseM, topM } = crown
  const { levelM, frame } = ground
  const { awayM, asideM } = seenCrown(frame, crown, look)
  const middleM = (baseM + topM) / 2
  const halfHigh2 = ((topM - baseM) / 2) ** 2
  const flatness = halfHigh2 / (radiusM * radiusM)
  const breadth2 = rise * rise * radiusM * radiusM + halfHigh2
  const breadth = Math.sqrt(breadth2)
  const band = {
    above: [
      evenTimes(radiusM, 1, asideM),
      evenTimes(radiusM, -1, asideM),
      evenTimes(radiusM, 1, awayM),
      evenTimes(middleM - lowestM + breadth, -rise, awayM),
      evenTimes(highestM - middleM + breadth, rise, awayM),
    ],
    ...crownNorths(crown, look, Math.max(0, middleM - lowestM + breadth) / rise),
  }
  walkBand(frame, band, (row, first, beyond) => {
    const start = row * frame.columns
    for (let column = first; column < beyond; column += 1) {
      const away = awayM.from + awayM.perRow * row + awayM.perColumn * column
      const aside = asideM.from + asideM.perRow * row + asideM.perColumn * column
      const above = middleM - levelM[start + column]!
      const missed = above - rise * away
      const cut = 1 - (aside * aside) / (radiusM * radiusM)
      if (!(missed * missed < breadth2 * cut)) continue
      const ahead = away * flatness + rise * above > 0
      if (ahead || (away * away + aside * aside) * flatness + above * above < halfHigh2) take(start + column)
    }
  })
}
