import type { CoverBrief, CoverFacts } from './cover.types'
import type { Measured, When } from './cover.schema'

/**
 * A zone as rules, limits and cautions see it.
 *
 * @param zone - the zone's facts
 * @param brief - what the person said
 * @returns each measure by its name; yes is 1, no is 0
 * @throws RangeError when a fact is not finite or the slope is outside 0 to below 90°
 */
export function measured(zone: CoverFacts, brief: CoverBrief): Measured {
  if (!(zone.slopeDegSteep >= 0 && zone.slopeDegSteep < 90))
    throw new RangeError(`coverOf: slopeDegSteep must be 0 to below 90, got ${zone.slopeDegSteep}`)
  const all = {
    steepDeg: zone.slopeDegSteep,
    wetness: zone.wetness,
    wetDays: zone.wetDays,
    sunHours: zone.midsummerSunHours,
    bareErosionTPerHa: zone.bareErosionTPerHa,
    areaM2: zone.slopeAreaM2,
    soilDepthM: zone.soilDepthM,
    nearHouse: Number(zone.nearHouse),
    servicesNear: Number(zone.servicesNear),
    fallsTowardsHouse: Number(brief.fallsTowardsHouse),
  }
  for (const [name, value] of Object.entries(all))
    if (!Number.isFinite(value)) throw new RangeError(`coverOf: ${name} must be finite, got ${value}`)
  return all
}

/**
 * Whether a row's conditions hold.
 *
 * @param when - ranges by measure, ends included
 * @param facts - the zone as rules see it
 * @returns true when every range holds; true when there is none
 */
export function holds(when: When, facts: Measured): boolean {
  return Object.entries(when).every(([name, range]) => {
    const value = facts[name as keyof Measured]
    return value >= (range.min ?? -Infinity) && value <= (range.max ?? Infinity)
  })
}
