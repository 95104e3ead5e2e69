import type { GridFrame, PlanPoint } from '#core/geometry'
import type { TiltedCells } from '#core/shade'
import { squareTo, type Direction } from '#core/sun'
import { LIGHT_LIMITS } from '#report'

/** Light on every cell at one moment. */
export interface MomentLight {
  readonly frame: GridFrame
  /** Part of each cell inside the plot, 0 to 1. */
  readonly share: Float64Array
  /** Share of direct light that reaches the cell, 0 to 1; written anew at every moment. */
  readonly light: Float32Array
  readonly areas: LitAreas
}

/** What the plan shows of the moment that is picked. */
export interface Shadows {
  readonly lit: MomentLight
  /** Direction of the sun, clockwise from true north [°]; none below the horizon. */
  readonly sunDeg: number | undefined
  /** The place whose sky is looked at. */
  readonly place: PlanPoint | undefined
}

/** Ground on plan by the light it gets [m²]. */
export interface LitAreas {
  readonly sunM2: number
  readonly throughM2: number
  readonly shadeM2: number
}

/** Directions square to each cell, one after the other. */
export function squaresOf({ slopeDeg, aspectDeg }: TiltedCells): Float32Array {
  const squares = new Float32Array(slopeDeg.length * 3)
  slopeDeg.forEach((steepDeg, cell) => {
    const { east, north, up } = squareTo(steepDeg, Math.max(0, aspectDeg[cell] ?? 0))
    squares.set([east, north, up], cell * 3)
  })
  return squares
}

/** Ground that turns its back on the sun has none of its light. */
export function withoutTurnedAway(light: Float32Array, squares: Float32Array, sun: Direction): void {
  for (let cell = 0, at = 0; cell < light.length; cell += 1, at += 3) {
    const facing =
      (squares[at] ?? 0) * sun.east + (squares[at + 1] ?? 0) * sun.north + (squares[at + 2] ?? 0) * sun.up
    if (facing <= 0) light[cell] = 0
  }
}

/** How much of the plot is in the sun, gets some light through leaves, and is in shade. */
export function litAreas(light: Float32Array, share: Float64Array, cellM: number): LitAreas {
  let [sun, through, shade] = [0, 0, 0]
  for (let cell = 0; cell < light.length; cell += 1) {
    const own = share[cell] ?? 0
    if (!(own > 0)) continue
    const got = light[cell] ?? 0
    if (got >= LIGHT_LIMITS.sun) sun += own
    else if (got > LIGHT_LIMITS.shade) through += own
    else shade += own
  }
  const cellM2 = cellM ** 2
  return { sunM2: sun * cellM2, throughM2: through * cellM2, shadeM2: shade * cellM2 }
}
