import type { Month } from '#core/units'
import type { Direction } from '#core/sun'
import type { ShadingGround, Standing } from './shade.types'
import { castCrown, castScreen, towardsSun } from './things-cast'

/** Cells on which light was left that came through a thing. */
interface Dappled {
  /** Indices of cells; the first `dappledCount` count. */
  readonly dappled: Int32Array
  readonly dappledCount: number
}

/** Takes from `direct`, the share of direct light at each cell [1], what the things keep off it. */
export type CastThings = (sun: Direction, month: Month, direct: Float32Array) => Dappled

/**
 * Makes things ready to throw their shadows. Of each screen and crown only the cells that its shadow can reach are looked
 * at, each by the exact ray from its centre to the sun. What several parts of one thing cover counts once.
 *
 * @param standing - the things
 * @param ground - the grid of levels
 * @returns casts their shadows for any sun and month
 */
export function thingsShadow(standing: readonly Standing[], ground: ShadingGround): CastThings {
  const levels = groundLevels(ground)
  const taker = lightTaker(ground.levelM.length)
  return (sun, month, direct) => {
    taker.begin(direct)
    const sunward = towardsSun(sun)
    for (const { through, screens, crowns } of standing) {
      const take = taker.ofThing(through[month])
      if (take === undefined) continue
      const falling = { ground, ...levels, ...sunward, take }
      for (const screen of screens) castScreen(screen, falling)
      for (const crown of crowns) castCrown(crown, falling)
    }
    return taker.dappled()
  }
}

/**
 * Lowest and highest ground of the plot.
 *
 * @param ground - the grid of levels
 * @returns both levels [m]; infinite, the lowest above the highest, with no plot
 */
export function groundLevels(ground: ShadingGround): {
  readonly lowestM: number
  readonly highestM: number
} {
  const { levelM, share } = ground
  let [lowestM, highestM] = [Infinity, -Infinity]
  for (let cell = 0; cell < levelM.length; cell += 1) {
    if (!(share[cell]! > 0)) continue
    if (levelM[cell]! < lowestM) lowestM = levelM[cell]!
    if (levelM[cell]! > highestM) highestM = levelM[cell]!
  }
  return { lowestM, highestM }
}

// Counts each thing once a cell: a cell's stamp is the number of the last thing that took light from it.
function lightTaker(cells: number) {
  const stamps = new Int32Array(cells)
  const dappled = new Int32Array(cells)
  let [thing, before, count] = [0, 0, 0]
  let direct: Float32Array = new Float32Array(0)
  return {
    dappled: () => ({ dappled, dappledCount: count }),
    begin(onto: Float32Array) {
      direct = onto
      before = thing
      count = 0
    },
    ofThing(through: number): ((cell: number) => void) | undefined {
      if (through >= 1) return undefined
      if (through === 0) return (cell) => void (direct[cell] = 0)
      thing += 1
      return (cell) => {
        const stamp = stamps[cell]!
        if (stamp === thing) return
        if (stamp <= before) dappled[count++] = cell
        stamps[cell] = thing
        direct[cell]! *= through
      }
    },
  }
}
