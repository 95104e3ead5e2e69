import { bearingGapDeg, toDegrees, toRadians } from '#core/units'

/** Tilt of the Earth's axis, the sun's declination at the solstices [°]; Meeus 1998, mean obliquity of J2000. */
const TILT_DEG = 23.44

/** Closer than this to a right angle, the noon sun stands across the section and throws no shade along it [°]. */
const ACROSS_DEG = 80

/** The sun at noon of a solstice as the section sees it. */
export interface NoonSun {
  readonly when: 'midsummer' | 'midwinter'
  /** True height above the horizon [°]. */
  readonly heightDeg: number
  /** Height as it appears in the plane of the section [°], 0 to 90. */
  readonly inSectionDeg: number
  /** True when the light falls from the right end of the section towards the left. */
  readonly fromFoot: boolean
  /** True when the sun stands nearly square to the section. */
  readonly across: boolean
}

/**
 * The noon sun of both solstices; a sun that does not rise is left out.
 *
 * @param latitudeDeg - latitude, north positive [°]
 * @param bearingDeg - direction in which the section runs, clockwise from true north [°]
 */
export function noonSuns(latitudeDeg: number, bearingDeg: number): NoonSun[] {
  const north = latitudeDeg >= 0 ? 1 : -1
  return (['midsummer', 'midwinter'] as const)
    .map((when) =>
      noon(when, latitudeDeg, {
        bearingDeg,
        declinationDeg: (when === 'midsummer' ? 1 : -1) * north * TILT_DEG,
      }),
    )
    .filter((sun) => sun.heightDeg > 0)
}

interface Setting {
  readonly bearingDeg: number
  readonly declinationDeg: number
}

function noon(when: NoonSun['when'], latitudeDeg: number, { bearingDeg, declinationDeg }: Setting): NoonSun {
  const heightDeg = 90 - Math.abs(latitudeDeg - declinationDeg)
  const sunBearingDeg = latitudeDeg >= declinationDeg ? 180 : 0
  const gapDeg = bearingGapDeg(sunBearingDeg, bearingDeg)
  const along = Math.cos(toRadians(gapDeg))
  return {
    when,
    heightDeg,
    inSectionDeg: toDegrees(Math.atan2(Math.tan(toRadians(Math.min(heightDeg, 89.9))), Math.abs(along))),
    fromFoot: along > 0,
    across: Math.abs(gapDeg - 90) < 90 - ACROSS_DEG,
  }
}
