import type { Month } from '#core/units'
import type { Direction } from '#core/sun'
import type { ShadingGround, Standing } from './shade.types'
import { castCrown, castScreen } from './things-cast'

/** Least plan part of the sun's direction [1]: nearer to the zenith than 0.2″ it is taken to stand just beside it. */
const LEAST_LEVEL = 1e-6

/** Things made ready to throw shadows on the cells of one ground. */
export interface ThingsShadow {
  /** Takes from `direct`, the share of direct light at each cell [1], what the things keep off it. */
  cast(sun: Direction, month: Month, direct: Float32Array): void
  /** Cells on which the last cast left light that came through a thing; the first `dappledCount` count. */
  readonly dappled: Int32Array
  readonly dappledCount: number
}

/**
 * Makes things ready to throw their shadows. Of each screen and crown only the cells that its shadow can reach are looked
 * at, each by the exact ray from its centre to the sun. What several parts of one thing cover counts once.
 *
 * @param standing - the things
 * @param ground - the grid of levels
 * @returns casts their shadows for any sun and month
 */
export function thingsShadow(standing: readonly Standing[], ground: ShadingGround): ThingsShadow {
  const levels = levelsOf(ground)
  const taker = lightTaker(ground.levelM.length)
  return {
    dappled: taker.dappled,
    get dappledCount() {
      return taker.dappledCount()
    },
    cast(sun, month, direct) {
      taker.begin(direct)
      const level = Math.hypot(sun.east, sun.north)
      const look = level > 0 ? { east: sun.east / level, north: sun.north / level } : { east: 0, north: 1 }
      const rise = sun.up / Math.max(level, LEAST_LEVEL)
      for (const { through, screens, crowns } of standing) {
        const take = taker.ofThing(through[month])
        if (take === undefined) continue
        const falling = { ground, ...levels, look, rise, take }
        for (const screen of screens) castScreen(screen, falling)
        for (const crown of crowns) castCrown(crown, falling)
      }
    },
  }
}

// Lowest and highest ground of the plot [m].
function levelsOf({ levelM, share }: ShadingGround) {
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
    dappled,
    dappledCount: () => count,
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
