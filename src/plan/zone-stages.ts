import { demandOnSlope, type MonthClimate } from '#core/climate'
import type { CoverKind } from '#core/cover'
import type { SoilProperties } from '#core/soil'
import { daysInMonth, eachMonth, type Outcome, type Twelve } from '#core/units'
import { waterYear, type PlotWater, type WaterClimate, type WaterCover, type WaterUnit } from '#core/water'
import { seasonWeights, zoneMeans, zoneProblems, zoningOf, type ZoneFacts, type Zoning } from '#core/zones'
import type { Step } from './derive'
import type { Ground } from './ground-stages'
import type { Plan } from './plan.schema'
import type { StageMemory } from './stages'
import type { Tables } from './tables.types'
import { zoneEdges } from './zone-edges'
import { soilOfZone, soilsOf } from './zone-soil'

/** Tables, and the memory of earlier runs. */
export interface Means {
  readonly tables: Tables
  readonly memory: StageMemory
}

/** Zones with their soil, and the year's water. */
export interface ZonedGround {
  readonly soils: readonly SoilProperties[]
  readonly zoning: Zoning
  /** One soil to a zone, in the order of the zones. */
  readonly soilOf: readonly SoilProperties[]
  readonly water: PlotWater
}

/** Soil, zones and water of a plan. */
export function* zoneStages(
  plan: Plan,
  ground: Ground,
  { tables, memory }: Means,
): Generator<Step, Outcome<ZonedGround>> {
  const { surface, terrain, sun, climate, sunRatio } = ground
  yield { stage: 'zones', done: 0.6 }
  const problems = zoneProblems(surface, plan.zones)
  if (problems.length > 0) return { ok: false, problems }
  const soils = memory.run('soil', [plan.soil], () => soilsOf(plan, tables.soil))
  const season = seasonWeights(climate, sun.openLevel)
  const zoning = memory.run('zones', [surface, terrain, sun, sunRatio, plan.zones], () =>
    zoningOf({ surface, terrain, sunHours: sun.sunHours, sunRatio, season }, plan.zones),
  )
  yield { stage: 'water', done: 0.7 }
  const soilOf = memory.run('soil-of-zones', [zoning, soils, plan.soil], () =>
    zoning.zones.map((zone) => soilOfZone(zone, plan.soil, soils)),
  )
  const { aboveM } = plan.survey
  const { beyond } = plan.survey
  const water = memory.run('water', [zoning, soilOf, climate, aboveM, beyond, plan.choices], () => {
    const levels = zoneMeans(zoning.zoneOfCell, zoning.zones.length, surface.share, surface.levelM)
    const units = zoning.zones.map((zone, index) =>
      unitOf(zone, soilAt(soilOf, index), { plan, climate, levelM: levels[index] ?? 0 }),
    )
    return waterYear(units, skyOf(climate), tables.water, { aboveM, edges: zoneEdges(plan, surface, zoning) })
  })
  return { ok: true, value: { soils, zoning, soilOf, water } }
}

function soilAt(soilOf: readonly SoilProperties[], index: number): SoilProperties {
  const soil = soilOf[index]
  if (!soil) throw new RangeError(`soilAt: zone ${index} has no soil`)
  return soil
}

/** What the sky gives open level ground. */
export function skyOf(climate: Twelve<MonthClimate>): WaterClimate {
  return {
    rainMm: eachMonth((month) => climate[month].rainMm),
    referenceEtMm: eachMonth((month) => climate[month].referenceEtMmPerDay * daysInMonth[month]),
  }
}

/** Covers as the water tables name them. */
const waterCovers: Readonly<Record<CoverKind, WaterCover>> = {
  mown: 'mown',
  meadow: 'meadow',
  'ground-cover': 'ground-cover',
  shrubs: 'shrubs',
  trees: 'trees',
  terrace: 'terrace',
  leave: 'left',
}

/** What stands where nothing is chosen yet: see docs/decisions/0002-water-before-cover.md. */
const COVER_BEFORE_CHOICE: WaterCover = 'meadow'

/** What a zone's water needs besides its own facts. */
interface Setting {
  readonly plan: Plan
  /** Mean level of the zone [m]: water goes from higher to lower zones. */
  readonly levelM: number
  readonly climate: Twelve<MonthClimate>
}

function unitOf(zone: ZoneFacts, soil: SoilProperties, { plan, climate, levelM }: Setting): WaterUnit {
  const chosen = plan.choices.find(({ zoneId }) => zoneId === zone.id)?.cover
  return {
    id: zone.id,
    planAreaM2: zone.planAreaM2,
    slopeDeg: zone.slopeDegMean,
    lengthM: zone.lengthM,
    soil,
    cover: chosen ? waterCovers[chosen] : COVER_BEFORE_CHOICE,
    levelM,
    referenceEtMm: eachMonth((month) =>
      Math.max(0, demandOnSlope(climate[month], zone.sunRatio[month]) * daysInMonth[month]),
    ),
    handsOn: zone.handsOn,
  }
}
