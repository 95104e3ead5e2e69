import { toDegrees } from '#core/units'

/** Strength of the clear sky at one height of the sun. */
export interface ClearSky {
  /** Beam square to the sun [W/m²]. */
  readonly beamWPerM2: number
  /** Diffuse light on open level ground [W/m²]. */
  readonly diffuseWPerM2: number
}

/** Height over which air pressure falls to 1/e [m] (Hofierka & Suri 2002). */
const PRESSURE_HEIGHT_M = 8434.5
/** Correction of Linke turbidity at air mass 2 to Kasten's Rayleigh thickness [1] (Kasten 1996). */
const LINKE_CORRECTION = 0.8662
/** Least diffuse transmission that the low-sun term may give [1] (Rigollier et al. 2000). */
const LEAST_LOW_SUN = 0.0022

/**
 * Beam and diffuse light under a clear sky.
 *
 * @param aboveAirWPerM2 - radiation above the air, square to the sun [W/m²]
 * @param altitudeRad - true height of the sun [rad], above 0
 * @param elevationM - height above the sea [m]
 * @param linke - Linke turbidity [1], 1 to 8
 * @returns beam square to the sun and diffuse light on level ground [W/m²]
 * @see Rigollier, Bauer & Wald 2000, Solar Energy 68:33-48; Hofierka & Suri 2002; Kasten & Young 1989
 */
export function clearSky(
  aboveAirWPerM2: number,
  altitudeRad: number,
  elevationM: number,
  linke: number,
): ClearSky {
  const mass = airMass(altitudeRad, elevationM)
  return {
    beamWPerM2: aboveAirWPerM2 * Math.exp(-LINKE_CORRECTION * linke * mass * rayleighThickness(mass)),
    diffuseWPerM2: aboveAirWPerM2 * diffuseTransmission(altitudeRad, linke),
  }
}

// Path through the air over the path straight up [1], Kasten & Young 1989, with the bending of light.
function airMass(altitudeRad: number, elevationM: number): number {
  const h = altitudeRad
  const bent = h + (0.061359 * (0.1594 + 1.123 * h + 0.065656 * h * h)) / (1 + 28.9344 * h + 277.3971 * h * h)
  const low = 0.50572 * (toDegrees(bent) + 6.07995) ** -1.6364
  return Math.exp(-elevationM / PRESSURE_HEIGHT_M) / (Math.sin(bent) + low)
}

// Optical thickness of clean dry air per air mass [1], Kasten 1996.
function rayleighThickness(m: number): number {
  if (m > 20) return 1 / (10.4 + 0.718 * m)
  return 1 / (6.6296 + m * (1.7513 + m * (-0.1202 + m * (0.0065 - m * 0.00013))))
}

// Diffuse light on level ground over radiation above the air [1], Rigollier et al. 2000.
function diffuseTransmission(altitudeRad: number, linke: number): number {
  const t = linke
  const straightUp = -0.015843 + t * (0.030543 + t * 0.0003797)
  const lowSun = 0.26463 - 0.061581 * t + 0.0031408 * t * t
  const a1 = lowSun * straightUp < LEAST_LOW_SUN ? LEAST_LOW_SUN / straightUp : lowSun
  const a2 = 2.0402 + 0.018945 * t - 0.011161 * t * t
  const a3 = -1.3025 + 0.039231 * t + 0.0085079 * t * t
  const sine = Math.sin(altitudeRad)
  return straightUp * (a1 + sine * (a2 + sine * a3))
}
