import type { PlanPoint } from '#core/geometry'
import type { Surface } from '#core/survey'
import { plotCellAt } from './place-on-ground'
import type { Terrain } from './terrain.types'

/** The ground whose water passes a place. */
export interface Catchment {
  /** For each cell, how much of its water passes through the cell of the place, 0 to 1. */
  readonly share: Float64Array
  /** Plan area of the plot that drains through it, its own cell included [m²]. */
  readonly areaM2: number
}

/**
 * The ground that drains to a place, by the ways its water takes.
 *
 * @param surface - the ground
 * @param terrain - its facts
 * @param at - the place [m]
 * @returns shares and area; undefined when the place is off the plot
 */
export function catchmentOf(surface: Surface, terrain: Terrain, at: PlanPoint): Catchment | undefined {
  const target = plotCellAt(surface, at)
  if (target === undefined) return undefined
  const { starts, to, share: handed, order } = terrain.flow
  const share = new Float64Array(surface.share.length)
  share[target] = 1
  let areaM2 = 0
  for (let turn = order.length - 1; turn >= 0; turn--) {
    const cell = order[turn]!
    if (cell !== target)
      for (let link = starts[cell]!; link < starts[cell + 1]!; link++)
        share[cell]! += handed[link]! * share[to[link]!]!
    areaM2 += share[cell]! * surface.share[cell]!
  }
  return { share, areaM2: areaM2 * surface.frame.cellM ** 2 }
}
