import { eggRise } from './covered-rise'
import type { Crown, Screen, ShadingGround } from './shade.types'
import { evenSum, walkBand } from './things-band'
import { crownNorthsM, screenNorthsM, seenCrown, seenScreen, type Look } from './things-parts'

/** Rise over distance that stands for straight up [m/m]. */
const STRAIGHT_UP = 1e6

/** From where and in which direction things are looked for. */
export interface Looking {
  readonly ground: ShadingGround
  /** Lowest ground of the plot [m]. */
  readonly lowestM: number
  readonly look: Look
}

/**
 * How high a screen rises in one direction, seen from every cell that has it there.
 *
 * @param screen - the screen
 * @param looking - from where and in which direction
 * @param tell - takes each cell from which its top is above the horizontal, and the rise over distance to it [m/m]
 */
export function screenRises(
  screen: Screen,
  looking: Looking,
  tell: (cell: number, high: number) => void,
): void {
  const { ground, lowestM, look } = looking
  const { levelM, frame } = ground
  const seen = seenScreen(frame, screen, look)
  if (seen === undefined) return
  const { part, awayM, topM } = seen
  const band = {
    above: [part, evenSum(1, [-1, part]), awayM, evenSum(-lowestM, [1, topM])],
    northsM: screenNorthsM(screen, look, Infinity),
  }
  walkBand(frame, band, (row, first, beyond) => {
    const start = row * frame.columns
    for (let column = first; column < beyond; column += 1) {
      const above = topM.from + topM.perRow * row + topM.perColumn * column - levelM[start + column]!
      const away = awayM.from + awayM.perRow * row + awayM.perColumn * column
      if (above > 0) tell(start + column, Math.min(STRAIGHT_UP, above / Math.max(0, away)))
    }
  })
}

/**
 * From where to where a crown covers one direction, seen from every cell that has it there.
 *
 * @param crown - the crown
 * @param looking - from where and in which direction
 * @param tell - takes each such cell, and the lowest and highest rise over distance [m/m]
 */
export function crownRises(
  crown: Crown,
  looking: Looking,
  tell: (cell: number, low: number, high: number) => void,
): void {
  const { ground, look } = looking
  const { levelM, frame } = ground
  const { awayM, asideM } = seenCrown(frame, crown, look)
  const { radiusM, baseM, topM } = crown
  const egg = { radiusM, halfHighM: (topM - baseM) / 2 }
  const middleM = (baseM + topM) / 2
  const span = { low: 0, high: 0 }
  const band = {
    above: [evenSum(radiusM, [1, asideM]), evenSum(radiusM, [-1, asideM]), evenSum(radiusM, [1, awayM])],
    northsM: crownNorthsM(crown, look, Infinity),
  }
  walkBand(frame, band, (row, first, beyond) => {
    const start = row * frame.columns
    for (let column = first; column < beyond; column += 1) {
      const sight = {
        awayM: awayM.from + awayM.perRow * row + awayM.perColumn * column,
        asideM: asideM.from + asideM.perRow * row + asideM.perColumn * column,
        aboveM: middleM - levelM[start + column]!,
      }
      if (eggRise(egg, sight, span)) tell(start + column, span.low, Math.min(STRAIGHT_UP, span.high))
    }
  })
}
