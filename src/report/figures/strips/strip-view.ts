import type { ZoneFacts } from '#core/zones'
import type { WaterMonth } from '#core/water'
import { eachMonth } from '#core/units'
import type { Findings, Plan, ZoneFindings } from '#plan'
import type { CareHours, Passing, PlantedLine, StripStation, StripView, StripZone } from './strip-view.types'

/** What the strips show of a plan and its findings. */
export function stripView(plan: Plan, findings: Findings): StripView {
  return {
    lengthM: findings.terrain.section.lengthM,
    latitudeDeg: plan.site.latitudeDeg,
    zones: findings.zoning.zones.flatMap((facts) => {
      const own = findings.zones.find(({ zoneId }) => zoneId === facts.id)
      return own ? [zoneOf(facts, own, findings)] : []
    }),
    stations: stationsOf(findings),
    machines: (findings.zones[0]?.cover.machines ?? []).map(({ name, limitDeg }) => ({ name, limitDeg })),
    openSunHours: eachMonth((month) => findings.sun.openLevel[month].sunHours),
    hoursAvailable: plan.brief.hoursPerYear,
  }
}

function stationsOf({ terrain, sun }: Findings): StripStation[] {
  return terrain.section.stations.map(({ distanceM, slopeDeg, cell }) => ({
    distanceM,
    slopeDeg,
    sunHours: eachMonth((month) => sun.sunHours[month][cell] ?? 0),
  }))
}

function zoneOf(facts: ZoneFacts, own: ZoneFindings, findings: Findings): StripZone {
  const { id, letter, name, spans, slopeDegMean, slopeDegSteep, planAreaM2, slopeAreaM2, sunHours } = facts
  const { aspectDeg } = facts
  const { soil, cover } = own
  const sun = findings.zoneSun[findings.zoning.zones.indexOf(facts)]
  const water = findings.water.units.find((unit) => unit.id === id)?.months
  const monthly = (take: (month: WaterMonth) => number) =>
    eachMonth((month) => (water ? take(water[month]) : 0))
  return {
    ...{ id, letter, name, spans, slopeDegMean, slopeDegSteep, planAreaM2, slopeAreaM2, sunHours, aspectDeg },
    soil: {
      texture: soil.textureClass,
      depthM: soil.depthM,
      stonesPercent: soil.stonesPercent,
      availableMm: soil.availableWaterMm,
    },
    morningHours: eachMonth((month) => sun?.morningHours[month] ?? 0),
    dappledHours: eachMonth((month) => sun?.dappledHours[month] ?? 0),
    scores: own.scores,
    mowing: cover.mowing,
    suggested: cover.suggested,
    chosen: cover.chosen,
    chosenByPerson: cover.chosenByPerson,
    fullness: monthly(({ fullness }) => fullness),
    dryDays: monthly(({ dryDays }) => dryDays),
    wetDays: monthly(({ wetDays }) => wetDays),
    passing: passingOf(water ?? [], planAreaM2),
    planting: plantingOf(own),
    care: careOf(id, findings),
  }
}

/** Litres over a square metre in a cubic metre [mm m²/m³]. */
const MM_M2_PER_M3 = 1000

function passingOf(months: readonly WaterMonth[], areaM2: number): Passing {
  const yearM3 = (key: 'runOnMm' | 'runoffMm' | 'lateralInMm' | 'lateralOutMm') =>
    (months.reduce((sum, month) => sum + month[key], 0) * areaM2) / MM_M2_PER_M3
  return {
    overInM3: yearM3('runOnMm'),
    overOutM3: yearM3('runoffMm'),
    throughInM3: yearM3('lateralInMm'),
    throughOutM3: yearM3('lateralOutMm'),
  }
}

function plantingOf({ planting }: ZoneFindings): PlantedLine[] {
  const verdicts = [...planting.offered, ...planting.refused]
  return planting.mix.map(({ plantId, layer, count, seedG }) => {
    const plant = verdicts.find((verdict) => verdict.plant.id === plantId)?.plant
    return { plantId, latin: plant?.name ?? plantId, name: plant?.common ?? plantId, layer, count, seedG }
  })
}

function careOf(zoneId: string, { care }: Findings): CareHours {
  const own = care.zones.find((zone) => zone.zoneId === zoneId)
  const mown = own?.compared.find(({ cover }) => cover === 'mown')
  const yearly = own?.jobs.filter(({ firstYearOnly }) => !firstYearOnly) ?? []
  return {
    hours: own?.account.total ?? 0,
    slopeHours: yearly.reduce((sum, job) => sum + job.slopeHours, 0),
    mownHours: mown?.hours,
    mownRefusal: mown?.refusal,
  }
}
