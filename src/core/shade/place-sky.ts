import { cellAt, type PlanPoint } from '#core/geometry'
import { toDegrees, toRadians } from '#core/units'
import { coveredRise } from './covered-rise'
import { farAngleDeg } from './far-skyline'
import { placeGroundDeg, placeLevelM } from './place-ground'
import type { PlaceSky, Shading, Standing, TiltedCells } from './shade.types'

/** Directions of a place's sky [1]: whole degrees. */
const DIRECTIONS = 360

/**
 * The sky from one place on the ground of the plot, all around.
 *
 * @param shading - ground, things and hills that can take the sun
 * @param cells - slope and aspect of each cell
 * @param at - the place in plan [m]
 * @returns what stands in each whole degree of azimuth [°]; undefined when the place is off the plot
 */
export function placeSky(shading: Shading, cells: TiltedCells, at: PlanPoint): PlaceSky | undefined {
  const { ground } = shading
  const cell = cellAt(ground.frame, at)
  if (cell === undefined || !(ground.share[cell]! > 0)) return undefined
  const levelM = placeLevelM(ground, at)
  const around = (angleDeg: (azimuthDeg: number) => number) =>
    Float32Array.from({ length: DIRECTIONS }, (_, azimuthDeg) => angleDeg(azimuthDeg))
  return {
    at,
    levelM,
    slopeDeg: cells.slopeDeg[cell]!,
    aspectDeg: cells.aspectDeg[cell]!,
    groundDeg: around((azimuthDeg) => placeGroundDeg(ground, at, levelM, azimuthDeg)),
    farDeg: around((azimuthDeg) => farAngleDeg(shading.far, azimuthDeg)),
    things: shading.standing.map((thing) => ({
      id: thing.id,
      name: thing.name,
      ...covered(thing, { ...at, levelM }),
      through: thing.through,
    })),
  }
}

// From the lowest to the highest angle that any part of the thing covers in each direction.
function covered({ screens, crowns }: Standing, place: PlanPoint & { levelM: number }) {
  const lowDeg = new Float32Array(DIRECTIONS).fill(NaN)
  const highDeg = new Float32Array(DIRECTIONS).fill(NaN)
  const rise = { low: 0, high: 0 }
  for (const part of [...screens, ...crowns])
    for (let azimuthDeg = 0; azimuthDeg < DIRECTIONS; azimuthDeg += 1) {
      if (!coveredRise(part, place, toRadians(azimuthDeg), rise)) continue
      const low = toDegrees(Math.atan(rise.low))
      const high = toDegrees(Math.atan(rise.high))
      if (!(lowDeg[azimuthDeg]! <= low)) lowDeg[azimuthDeg] = low
      if (!(highDeg[azimuthDeg]! >= high)) highDeg[azimuthDeg] = high
    }
  return { lowDeg, highDeg }
}
