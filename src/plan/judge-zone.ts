import type { SlopeError } from '#core/accuracy'
import { coldAirC, hardWinterC, type MonthClimate } from '#core/climate'
import { coverOf, type CoverFacts } from '#core/cover'
import { plantingOf, type Site } from '#core/plants'
import {
  gatherFacts,
  lightClassOf,
  moistureClassOf,
  scoreZone,
  type Override,
  type ScoreFacts,
  type ScoreName,
  type Scores,
} from '#core/scores'
import { coarseTexture, type SoilProperties } from '#core/soil'
import { eachMonth, type Twelve } from '#core/units'
import { soilLoss, type WaterYear } from '#core/water'
import type { ZoneFacts } from '#core/zones'
import type { ZoneFindings } from './findings.types'
import { houseNear, servicesNear } from './near-zone'
import { normalsOf } from './normals'
import type { Plan } from './plan.schema'
import type { Tables } from './tables.types'

/** What earlier stages found about one zone. */
export interface ZoneEvidenceOf {
  readonly zone: ZoneFacts
  readonly slopeError: SlopeError
  readonly soil: SoilProperties
  readonly water: WaterYear
  readonly heightAboveFootM: number
  /** Height of the zone's middle below the highest ground [m]. */
  readonly belowCrestM: number
  readonly climate: Twelve<MonthClimate>
  /** The ground falls towards a house, by the drawing or by what the person said. */
  readonly fallsTowardsHouse: boolean
}

/** Scores of a zone, what it may be, and what to plant in it. */
export function judgeZone(evidence: ZoneEvidenceOf, plan: Plan, tables: Tables): ZoneFindings {
  const { zone, soil } = evidence
  const loss = lossOf(evidence, tables)
  const facts = factsOf(evidence, plan, loss)
  const scores = scoreZone(facts, tables.scores, overridesOf(plan, zone.id), `zone ${zone.letter}`)
  const choice = plan.choices.find(({ zoneId }) => zoneId === zone.id)
  const cover = coverOf(
    coverFacts({ evidence, facts, scores, plan }),
    { machines: plan.brief.machines, fallsTowardsHouse: evidence.fallsTowardsHouse },
    tables.care.cover,
    choice?.cover,
  )
  const site = siteOf({ evidence, facts, scores, plan }, tables)
  const { children, pets, nativeShare, heightLimitM } = plan.brief
  const planting = plantingOf(site, tables.plants, {
    cover: cover.chosen,
    children,
    pets,
    nativeShare,
    heightLimitM,
    insist: choice?.plants,
    without: choice?.without,
  })
  return {
    zoneId: zone.id,
    soil,
    slopeError: evidence.slopeError,
    facts,
    scores,
    site,
    cover,
    planting,
    soilLoss: loss,
  }
}

function lossOf({ zone, soil, climate }: ZoneEvidenceOf, tables: Tables) {
  const widthM = zone.planAreaM2 / zone.lengthM
  return soilLoss(
    {
      soil,
      lengthM: zone.lengthM + zone.upslopeAreaM2 / widthM,
      slopeDeg: zone.slopeDegMean,
      rainMm: eachMonth((month) => climate[month].rainMm),
    },
    tables.soil,
    tables.water,
  )
}

function factsOf(evidence: ZoneEvidenceOf, plan: Plan, loss: ReturnType<typeof lossOf>): ScoreFacts {
  const { zone, soil, water, heightAboveFootM, climate } = evidence
  const lossAt = (stage: 'bare' | 'covered') => loss.find((one) => one.stage === stage)?.tPerHaYear ?? 0
  return gatherFacts({
    zone,
    soil,
    water,
    climate: normalsOf(climate),
    latitudeDeg: plan.site.latitudeDeg,
    heightAboveFootM,
    soilLoss: { bareTPerHa: lossAt('bare'), coveredTPerHa: lossAt('covered') },
    hardWinterC: hardWinterC(climate),
  })
}

function overridesOf(plan: Plan, zoneId: string): Partial<Record<ScoreName, Override>> {
  return Object.fromEntries(
    plan.overrides
      .filter((row) => row.zoneId === zoneId)
      .map(({ score, value, reason }) => [score, { score: value, reason }]),
  )
}

interface Judging {
  readonly evidence: ZoneEvidenceOf
  readonly facts: ScoreFacts
  readonly scores: Scores
  readonly plan: Plan
}

function coverFacts({ evidence, facts, scores, plan }: Judging): CoverFacts {
  const { zone, soil } = evidence
  return {
    zoneId: zone.id,
    letter: zone.letter,
    name: zone.name,
    slopeDegMean: zone.slopeDegMean,
    slopeDegSteep: zone.slopeDegSteep,
    slopeSdDegSteep: evidence.slopeError.steepDeg,
    slopeAreaM2: zone.slopeAreaM2,
    planAreaM2: zone.planAreaM2,
    wetness: scores.wetness.value,
    wetDays: facts.wetDays,
    midsummerSunHours: facts.midsummerSunHours,
    bareErosionTPerHa: facts.erosionBareTPerHa,
    soilDepthM: soil.depthM,
    nearHouse: houseNear(zone, plan.survey.obstacles),
    servicesNear: servicesNear(zone, plan.survey.obstacles),
  }
}

/** Wet in winter and short of water in summer: fuller than this, and with this many dry days [own judgement]. */
const WET_WINTER_FULLNESS = 1
const DRY_SUMMER_DAYS = 30

/** Whether a place is wet in winter and short of water in summer. */
export function isWetThenDry({ winterFullness, dryDays }: ScoreFacts): boolean {
  return winterFullness > WET_WINTER_FULLNESS && dryDays > DRY_SUMMER_DAYS
}

function siteOf({ evidence, facts, scores, plan }: Judging, tables: Tables): Site {
  const { zone, soil } = evidence
  return {
    zoneId: zone.id,
    wetness: scores.wetness.value,
    moistureClass: moistureClassOf(scores.wetness.value, tables.scores),
    wetWinterDrySummer: isWetThenDry(facts),
    wetDays: facts.airlessDays,
    midsummerSunHours: facts.midsummerSunHours,
    lightClass: lightClassOf(facts.midsummerSunHours, tables.scores),
    ph: soil.ph,
    texture: coarseTexture(soil.textureClass, tables.soil),
    soilDepthM: soil.depthM,
    hardWinterC: facts.hardWinterC - coldAirC(evidence.belowCrestM, zone.position),
    slopeDeg: zone.slopeDegMean,
    slopeAreaM2: zone.slopeAreaM2,
    region: plan.site.plantRegion,
    legalRegion: plan.site.legalRegion,
  }
}
