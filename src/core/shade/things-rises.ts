import { eggRise } from './covered-rise'
import type { Crown, Screen, ShadingGround } from './shade.types'
import { evenTimes, walkBand } from './things-band'
import { crownNorths, screenNorths, seenCrown, seenScreen, type Look } from './things-parts'

/** From where and in which direction things are looked for. */
export interface Looking {
  readonly ground: ShadingGround
  /** Lowest ground of the plot [m]. */
  readonly lowestM: number
  readonly look: Look
}

/** What is met in one direction, seen from each cell. */
export interface Met {
  /** Lowest and highest rise over distance that is covered [m/m]; the highest is 0 where nothing is. */
  readonly low: Float32Array
  readonly high: Float32Array
  /** 1 for each cell that has met anything. */
  readonly any: Uint8Array
}

/** Rise over distance that stands for straight up [m/m]. */
const STRAIGHT_UP = 1e6

/**
 * Raises what is covered to the top of a screen, seen from every cell that has it in one direction above the horizontal.
 *
 * @param screen - the screen
 * @param looking - from where and in which direction
 * @param met - what is covered already; its lowest rise stays
 */
export function meetScreen(screen: Screen, looking: Looking, met: Met): void {
  const { ground, lowestM, look } = looking
  const { high, any } = met
  const { levelM, frame } = ground
  const seen = seenScreen(frame, screen, look)
  if (seen === undefined) return
  const { part, awayM, topM } = seen
  const band = {
    above: [part, evenTimes(1, -1, part), awayM, evenTimes(-lowestM, 1, topM)],
    ...screenNorths(screen, look, Infinity),
  }
  walkBand(frame, band, (row, first, beyond) => {
    const start = row * frame.columns
    for (let column = first; column < beyond; column += 1) {
      const cell = start + column
      const above = topM.from + topM.perRow * row + topM.perColumn * column - levelM[cell]!
      const away = awayM.from + awayM.perRow * row + awayM.perColumn * column
      if (!(above > high[cell]! * away && above > 0)) continue
      high[cell] = Math.min(STRAIGHT_UP, above / Math.max(0, away))
      any[cell] = 1
    }
  })
}

/**
 * Notes what a crown covers, seen from every cell that has it in one direction.
 *
 * @param crown - the crown
 * @param looking - from where and in which direction
 * @param met - where it is noted
 */
export function meetCrown(crown: Crown, looking: Looking, met: Met): void {
  const { ground, look } = looking
  const { levelM, frame } = ground
  const { awayM, asideM } = seenCrown(frame, crown, look)
  const { radiusM, baseM, topM } = crown
  const egg = { radiusM, halfHighM: (topM - baseM) / 2 }
  const middleM = (baseM + topM) / 2
  const span = { low: 0, high: 0 }
  const band = {
    above: [evenTimes(radiusM, 1, asideM), evenTimes(radiusM, -1, asideM), evenTimes(radiusM, 1, awayM)],
    ...crownNorths(crown, look, Infinity),
  }
  walkBand(frame, band, (row, first, beyond) => {
    const start = row * frame.columns
    for (let column = first; column < beyond; column += 1) {
      const cell = start + column
      const sight = {
        awayM: awayM.from + awayM.perRow * row + awayM.perColumn * column,
        asideM: asideM.from + asideM.perRow * row + asideM.perColumn * column,
        aboveM: middleM - levelM[cell]!,
      }
      if (!eggRise(egg, sight, span) || !(span.high > 0)) continue
      met.low[cell] = Math.max(0, span.low)
      met.high[cell] = Math.min(STRAIGHT_UP, span.high)
      met.any[cell] = 1
    }
  })
}
