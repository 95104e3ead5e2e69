import { hayDavies } from './hay-davies'
import type { SunStep } from './sun-steps'
import type { UsualDay } from './sun.types'

/** The sun for one short time of a usual day. */
export interface UsualStep {
  readonly step: SunStep
  /** Light from straight out of the sun and the bright ring around it, square to the sun [W/m²]. */
  readonly directWPerM2: number
  /** Light from the rest of the sky, on open level ground [W/m²]. */
  readonly evenWPerM2: number
}

/**
 * Fits the steps of a clear day to what the usual sky of the month lets through: beam and diffuse light keep the course
 * of the clear day and together the month's sums. The ring around the sun is as bright as the beam is strong.
 *
 * @param steps - a clear day
 * @param usual - what reaches open level ground
 * @returns the same steps under the usual sky
 * @see Hay & Davies 1980, Calculation of the solar radiation incident on an inclined surface
 */
export function usualSteps(steps: readonly SunStep[], usual: UsualDay): readonly UsualStep[] {
  const levelBeamWh = steps.reduce((sum, { beamWPerM2, sun, hours }) => sum + beamWPerM2 * sun.up * hours, 0)
  const skyWh = steps.reduce((sum, { diffuseWPerM2, hours }) => sum + diffuseWPerM2 * hours, 0)
  const { levelWhPerM2, diffuseShare } = usual
  const beamFactor = levelBeamWh > 0 ? (levelWhPerM2 * (1 - diffuseShare)) / levelBeamWh : 0
  const skyFactor = skyWh > 0 ? (levelWhPerM2 * diffuseShare) / skyWh : 0
  return steps.map((step) => {
    const { ringWPerM2, evenWPerM2 } = hayDavies(
      skyFactor * step.diffuseWPerM2,
      beamFactor * step.beamShare,
      step.sun.up,
    )
    return { step, directWPerM2: beamFactor * step.beamWPerM2 + ringWPerM2, evenWPerM2 }
  })
}
