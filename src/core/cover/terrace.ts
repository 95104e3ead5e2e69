import { degToGradient, slopeAreaFactor } from '#core/units'
import type { CoverLimits } from './cover.schema'
import type { CoverFacts, TerraceFigures } from './cover.types'

/**
 * What terraces of each width would do to the ground of a zone. The back half of every tread is cut and fills its front
 * half, so nothing is carried away; steps are upright. Geometry of the ground only: how a step is held is for others.
 *
 * @param zone - the zone's slopes and areas
 * @param rows - widths to choose from, and heights of step that call for a caution
 * @returns one set of figures a width, in the table's order
 * @throws RangeError when a slope is outside 0 to below 90° or the plan area is not above 0
 */
export function terracesOn(
  zone: Pick<CoverFacts, 'slopeDegMean' | 'slopeDegSteep' | 'planAreaM2'>,
  rows: CoverLimits['terraces'],
): readonly TerraceFigures[] {
  for (const slopeDeg of [zone.slopeDegMean, zone.slopeDegSteep])
    if (!(slopeDeg >= 0 && slopeDeg < 90))
      throw new RangeError(`terracesOn: slope must be 0 to below 90°, got ${slopeDeg}`)
  if (!(zone.planAreaM2 > 0 && Number.isFinite(zone.planAreaM2)))
    throw new RangeError(`terracesOn: planAreaM2 must be above 0, got ${zone.planAreaM2}`)
  return rows.treads.map((tread) => figuresOf(tread, zone, rows.steps))
}

/** Half a tread wide and half a step high, halved again for a triangle: W/2 · h/2 / 2 [1]. */
const TRIANGLE_OF_TREAD_AND_STEP = 1 / 8

function figuresOf(
  { id, treadM, because, source }: CoverLimits['terraces']['treads'][number],
  zone: Pick<CoverFacts, 'slopeDegMean' | 'slopeDegSteep' | 'planAreaM2'>,
  steps: CoverLimits['terraces']['steps'],
): TerraceFigures {
  const stepM = treadM * degToGradient(zone.slopeDegMean)
  const stepSteepM = treadM * degToGradient(zone.slopeDegSteep)
  return {
    id,
    treadM,
    because,
    source,
    stepM,
    stepSteepM,
    cutM3PerM: treadM * stepM * TRIANGLE_OF_TREAD_AND_STEP,
    cutM3: zone.planAreaM2 * stepM * TRIANGLE_OF_TREAD_AND_STEP,
    levelM2: zone.planAreaM2,
    levelShare: 1 / slopeAreaFactor(zone.slopeDegMean),
    cautions: steps
      .filter(({ aboveM }) => stepSteepM > aboveM)
      .map((step) => ({ id: step.id, text: step.text, source: step.source })),
  }
}
