/** The light of the sky, parted into a ring around the sun and the rest. */
export interface PartedSky {
  /** Light of the ring, square to the sun [W/m²]. */
  readonly ringWPerM2: number
  /** Light of the rest of the sky, alike from all sides, on open level ground [W/m²]. */
  readonly evenWPerM2: number
}

/** Least sine of the sun's height by which the ring around a low sun is turned square to it [1]: 1°; common practice. */
const LEAST_SINE = 0.01745

/**
 * Parts the light of the sky: as much of it as there is beam left of the sun above the air comes from a ring around the
 * sun, the rest alike from all sides.
 *
 * @param skyWPerM2 - light of the sky on open level ground [W/m²], 0 or more
 * @param beamShare - beam over radiation above the air, both square to the sun [1], 0 or more; above 1 counts as 1
 * @param sunUp - sine of the sun's height [1], 0 to 1
 * @returns ring, square to the sun, and the rest, on open level ground [W/m²]
 * @see Hay & Davies 1980, Calculation of the solar radiation incident on an inclined surface
 */
export function hayDavies(skyWPerM2: number, beamShare: number, sunUp: number): PartedSky {
  const ring = Math.min(1, beamShare)
  return {
    ringWPerM2: (skyWPerM2 * ring) / Math.max(LEAST_SINE, sunUp),
    evenWPerM2: skyWPerM2 * (1 - ring),
  }
}
