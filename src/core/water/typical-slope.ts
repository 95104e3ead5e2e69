import { degToGradient, type Twelve } from '#core/units'
import type { SoilProperties } from '#core/soil'
import type { WaterUnit } from './water.types'
import type { WaterCover } from './water-tables.schema'

/** Places down a slope, top first. */
export const slopePlaces = ['crest', 'upper', 'mid', 'lower', 'foot'] as const

/** Length of one fifth of a typical garden slope [m plan], and the width of the strip looked at [m]: own judgement. */
const FIFTH_M = 4
const WIDTH_M = 1

/**
 * A typical garden slope of 20 m in five equal pieces, to judge one place by its position when no survey
 * is at hand.
 *
 * @param place - the ground, alike from top to bottom
 * @param place.soil - its soil
 * @param place.cover - what grows on it
 * @param place.slopeDeg - angle from horizontal [°], 0 to below 90
 * @param place.referenceEtMm - reference evapotranspiration on that slope, per m² of plan [mm a month]
 * @returns five units named crest, upper, mid, lower and foot
 * @throws RangeError when the slope is vertical or beyond
 */
export function typicalSlope(place: {
  readonly soil: SoilProperties
  readonly cover: WaterCover
  readonly slopeDeg: number
  readonly referenceEtMm: Twelve<number>
}): readonly WaterUnit[] {
  const fallM = Math.abs(degToGradient(place.slopeDeg)) * FIFTH_M
  return slopePlaces.map((id, at) => {
    const below = slopePlaces[at + 1]
    return {
      ...place,
      id,
      planAreaM2: FIFTH_M * WIDTH_M,
      lengthM: FIFTH_M,
      // On level ground no place is higher, so no water is handed on.
      levelM: -at * fallM,
      handsOn: below === undefined ? [] : [{ to: below, share: 1 }],
    }
  })
}
