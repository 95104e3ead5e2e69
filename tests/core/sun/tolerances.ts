/** How near our sun must come to outside figures, and why no nearer. May only be tightened. */
export const tolerances = {
  /** suncalc leaves out parallax and part of nutation: 0.014° at most against a full ephemeris [°]. */
  sunPositionDeg: 0.03,
  /** NREL SPA gives seconds; suncalc is within 9 s of a full ephemeris below 60° latitude [s]. */
  riseAgainstSpaS: 20,
  /** USNO gives whole minutes [s]. */
  riseAgainstUsnoS: 60,
  /** The same parts left out, and the equation of the equinoxes; height and direction, as the eye would see it [°]. */
  ephemerisDeg: 0.014,
  /** At 60° the sun rises slantwise, so a little height is more time [s]. */
  riseAgainstEphemerisS: 9,
  noonAgainstEphemerisS: 3,
  /** One series for every year, whatever its place in the cycle of leap days [°]. */
  atlasDeclinationDeg: 0.31,
} as const
