import { eachMonth, months, type Month } from '#core/units'
import type { SoilProperties } from '#core/soil'
import type { WaterYear } from '#core/water'
import type { ZoneFacts } from '#core/zones'
import type { Findings, ZoneFindings } from '#plan'
import type { DrawnPlanting, SectionZone, StandingWater, ZoneVolumes } from './section-view.types'

/** Millimetres over square metres in a cubic metre [mm·m² per m³]. */
const MM_M2_PER_M3 = 1000

/** Water standing thinner than this is not drawn [m]. */
const LEAST_STANDING_M = 0.02

/** The zones of the findings, with what their drawing needs. */
export function zonesOn(findings: Findings): SectionZone[] {
  return findings.zoning.zones.flatMap((facts) => {
    const own = findings.zones.find((zone) => zone.zoneId === facts.id)
    return own ? [zoneOn(facts, own, findings)] : []
  })
}

function zoneOn(facts: ZoneFacts, own: ZoneFindings, findings: Findings): SectionZone {
  const year = findings.water.units.find((unit) => unit.id === facts.id)
  const care = findings.care.zones.find((zone) => zone.zoneId === facts.id)
  return {
    id: facts.id,
    letter: facts.letter,
    name: facts.name,
    spans: facts.spans,
    slopeDegMean: facts.slopeDegMean,
    slopeDegSteep: facts.slopeDegSteep,
    slopeSdDeg: own.slopeError.meanDeg,
    planAreaM2: facts.planAreaM2,
    slopeAreaM2: facts.slopeAreaM2,
    soil: {
      texture: own.soil.textureClass,
      depthM: own.soil.depthM,
      stonesPercent: own.soil.stonesPercent,
    },
    cover: own.cover.chosen,
    mowing: own.cover.mowing,
    allowedMachines: own.cover.machines.filter((each) => each.allowed).map((each) => each.name),
    sunHours: facts.sunHours,
    wetDays: eachMonth((month) => year?.months[month].wetDays ?? 0),
    volumes: year && volumesOf(year, facts.planAreaM2),
    standing: year && standingOf(year, own.soil),
    planting: plantingOf(own),
    keepOff: months.filter((month) => care?.keepOff.some((keep) => keep.months.includes(month))),
  }
}

function volumesOf(year: WaterYear, planAreaM2: number): ZoneVolumes {
  const total = (pick: (month: Month) => number) =>
    (months.reduce<number>((sum, month) => sum + pick(month), 0) * planAreaM2) / MM_M2_PER_M3
  return {
    rainM3: total((month) => year.months[month].rainMm),
    usedM3: total((month) => year.months[month].actualEtMm),
    ranOffM3: total((month) => year.months[month].runoffMm),
    sidewaysM3: total((month) => year.months[month].lateralOutMm),
    drainedM3: total((month) => year.months[month].drainageMm),
  }
}

/** Water above field capacity fills the drainable pores from the base of the soil upwards. */
function standingOf(year: WaterYear, soil: SoilProperties): StandingWater | undefined {
  const fullness = (month: Month) => year.months[month].fullness
  const wettest = [...months].sort((one, other) => fullness(other) - fullness(one))[0] ?? 0
  const excessMm = (fullness(wettest) - 1) * soil.availableWaterMm
  if (!(excessMm > 0) || !(soil.drainableMm > 0)) return undefined
  const thicknessM = Math.min(1, excessMm / soil.drainableMm) * soil.depthM
  return thicknessM < LEAST_STANDING_M ? undefined : { month: wettest, thicknessM }
}

function plantingOf({ planting }: ZoneFindings): DrawnPlanting[] {
  return planting.mix.flatMap((line) => {
    const plant = planting.offered.find((verdict) => verdict.plant.id === line.plantId)?.plant
    return plant
      ? [{ plant, layer: line.layer, share: line.share, spacingM: line.spacingM, count: line.count }]
      : []
  })
}
