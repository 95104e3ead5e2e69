import type { TextureClass } from './soil.schema'

/** Shortest ribbon of a loam with clay, and of a clay [cm]: Thien 1979. */
const CLAY_LOAM_RIBBON_CM = 2.5
const CLAY_RIBBON_CM = 5

/** Classes by length of ribbon, then by what an over-wetted pinch feels like (Thien 1979). */
const classes = {
  short: { gritty: 'sandy loam', smooth: 'silt loam', neither: 'loam' },
  middling: { gritty: 'sandy clay loam', smooth: 'silty clay loam', neither: 'clay loam' },
  long: { gritty: 'sandy clay', smooth: 'silty clay', neither: 'clay' },
} as const

/** What a moist handful does when squeezed, pushed out between thumb and finger, and rubbed. */
export interface HandTest {
  /** It holds together when squeezed. */
  readonly ball: boolean
  /** Length of the ribbon before it breaks [cm]; 0 when it makes none. */
  readonly ribbonCm: number
  readonly feel: 'gritty' | 'smooth' | 'neither'
}

/**
 * Texture class by feel.
 *
 * @param test - what the handful did; a handful without a ball is sand whatever else was noted
 * @returns the texture class; silt can not be told from silt loam by hand
 * @throws RangeError when the ribbon is negative or not finite
 * @see Thien 1979, J. Agron. Educ. 8:54-55
 */
export function classByFeel(test: HandTest): TextureClass {
  const { ball, ribbonCm, feel } = test
  if (!(ribbonCm >= 0 && Number.isFinite(ribbonCm)))
    throw new RangeError(`classByFeel: ribbonCm must be 0 or more, got ${ribbonCm}`)
  if (!ball) return 'sand'
  if (ribbonCm === 0) return 'loamy sand'
  if (ribbonCm < CLAY_LOAM_RIBBON_CM) return classes.short[feel]
  return ribbonCm < CLAY_RIBBON_CM ? classes.middling[feel] : classes.long[feel]
}
