import type { MonthNormals } from '#core/climate'
import type { SoilProperties } from '#core/soil'
import { months, northernTwin, type Month } from '#core/units'
import type { WaterMonth, WaterYear } from '#core/water'
import type { ZoneFacts } from '#core/zones'
import type { ScoreFacts } from './facts'

/** Findings of the earlier stages about one zone. */
export interface ZoneEvidence {
  readonly zone: Pick<
    ZoneFacts,
    'slopeDegMean' | 'slopeDegSteep' | 'position' | 'formDown' | 'formAcross' | 'seasonSunRatio' | 'sunHours'
  >
  readonly soil: SoilProperties
  readonly water: WaterYear
  /** Twelve months of normals, January first. */
  readonly climate: readonly MonthNormals[]
  readonly latitudeDeg: number
  /** Mean height above the place where the zone's water leaves the plot or stops [m]. */
  readonly heightAboveFootM: number
  /** Soil lost in a usual year, bare and covered [t/(ha a)]. */
  readonly soilLoss: { readonly bareTPerHa: number; readonly coveredTPerHa: number }
  /** Lowest temperature to expect in a hard winter [°C]. */
  readonly hardWinterC: number
}

/** Seasons as months north of the equator; `northernTwin` turns them round for the south. */
const JUNE: Month = 5
const DECEMBER: Month = 11
const SUMMER: readonly Month[] = [5, 6, 7]
const WINTER: readonly Month[] = [11, 0, 1]
const SUMMER_HALF: readonly Month[] = [3, 4, 5, 6, 7, 8]

/**
 * Gathers what the rules ask about a zone from the findings of the earlier stages.
 *
 * @param evidence - the findings
 * @returns the zone's facts
 * @throws RangeError when there are not twelve months of normals
 */
export function gatherFacts(evidence: ZoneEvidence): ScoreFacts {
  const { zone, soil, water, climate, latitudeDeg } = evidence
  if (climate.length !== 12)
    throw new RangeError(`gatherFacts: climate must hold 12 months, got ${climate.length}`)
  const inSeason = (season: readonly Month[]) =>
    months.filter((month) => season.includes(northernTwin(month, latitudeDeg)))
  const inWater = (season: readonly Month[]) => inSeason(season).map((month) => water.months[month])
  const sunOn = (month: Month) => zone.sunHours[inSeason([month])[0] ?? month]
  return {
    slopeDeg: zone.slopeDegMean,
    steepSlopeDeg: zone.slopeDegSteep,
    position: zone.position,
    formDown: zone.formDown,
    formAcross: zone.formAcross,
    heightAboveFootM: evidence.heightAboveFootM,
    seasonSunRatio: zone.seasonSunRatio,
    midsummerSunHours: sunOn(JUNE),
    midwinterSunHours: sunOn(DECEMBER),
    availableWaterMm: soil.availableWaterMm,
    drainableMm: soil.drainableMm,
    conductivityMmPerH: soil.conductivityMmPerH,
    depthM: soil.depthM,
    stonesPercent: soil.stonesPercent,
    runOnMm: total(water.months, ({ runOnMm, lateralInMm }) => runOnMm + lateralInMm),
    yearRainLessEtMm: total(water.months, rainLessEtMm),
    summerRainLessEtMm: total(inWater(SUMMER_HALF), rainLessEtMm),
    wetDays: total(water.months, ({ wetDays }) => wetDays),
    airlessDays: total(water.months, ({ airlessDays }) => airlessDays),
    dryDays: total(water.months, ({ dryDays }) => dryDays),
    winterFullness: total(inWater(WINTER), ({ fullness }) => fullness) / WINTER.length,
    summerFullness: total(inWater(SUMMER), ({ fullness }) => fullness) / SUMMER.length,
    erosionBareTPerHa: evidence.soilLoss.bareTPerHa,
    erosionCoveredTPerHa: evidence.soilLoss.coveredTPerHa,
    coldestMonthTMinC: Math.min(...climate.map(({ tMinC }) => tMinC)),
    hardWinterC: evidence.hardWinterC,
  }
}

const rainLessEtMm = (month: WaterMonth) => month.rainMm - month.referenceEtMm

function total(year: readonly WaterMonth[], of: (month: WaterMonth) => number): number {
  return year.reduce((sum, month) => sum + of(month), 0)
}
