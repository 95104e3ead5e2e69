import { zoneSlopeErrors } from '#core/accuracy'
import { careYear, type CareFacts, type CareYear } from '#core/care'
import { perimeterM } from '#core/geometry'
import { eachMonth } from '#core/units'
import type { WaterYear } from '#core/water'
import { zoneMeans, type ZoneFacts } from '#core/zones'
import { aroundStage } from './around-stage'
import type { Step } from './derive'
import type { Findings, ZoneFindings } from './findings.types'
import { furtherSections } from './further-sections'
import { measuringOf, type Ground } from './ground-stages'
import { fallsTowardsHouse, houseSights } from './house-sight'
import type { Plan } from './plan.schema'
import { cautionsOf, toSettle } from './settle'
import type { ZonedLight } from './light-stages'
import type { Means, ZonedGround } from './zone-stages'
import { judgeZone } from './judge-zone'
import { normalsOf } from './normals'

/** Scores, cover, planting, care, and what is still to settle. */
export function* plotStages(
  plan: Plan,
  ground: Ground & ZonedGround & ZonedLight,
  { tables, memory }: Means,
): Generator<Step, Findings> {
  yield { stage: 'plants', done: 0.86 }
  const { brief, choices, overrides, site, survey } = plan
  const inputs = [
    ground.zoning,
    ground.accuracy,
    ground.water,
    ground.soilOf,
    ground.climate,
    brief,
    choices,
    overrides,
    site,
  ]
  const zones = memory.run('judged', [...inputs, survey.obstacles], () => judgeZones(plan, ground, tables))
  yield { stage: 'care', done: 0.95 }
  const care = memory.run('care', [zones, ground.climate, brief, site], () =>
    careOf(plan, ground, { zones, tables }),
  )
  const { surface, terrain } = ground
  const sections = memory.run('sections', [surface, terrain, survey.sections], () =>
    furtherSections(plan, surface, terrain),
  )
  const around = aroundStage(plan, ground, memory)
  const sights = houseSights(terrain.section, survey.obstacles, survey.viewpoints)
  const found = { ...groundFindings(ground), sections, sights, around, zones, care }
  return {
    ...found,
    cautions: cautionsOf(zones),
    toSettle: toSettle({
      plan,
      ...found,
      tables: tables.care.cover,
      survey: tables.survey,
      shade: tables.shade,
    }),
  }
}

// Of what earlier stages made, what findings show.
function groundFindings(ground: Ground & ZonedGround & ZonedLight) {
  const { surface, terrain, accuracy, sun, standing, climate, soils, zoning, water, zoneSun, trials } = ground
  return { surface, terrain, accuracy, sun, standing, climate, soils, zoning, water, zoneSun, trials }
}

function judgeZones(
  plan: Plan,
  ground: Ground & ZonedGround,
  tables: Means['tables'],
): readonly ZoneFindings[] {
  const { zoning, surface, terrain, accuracy, soilOf, climate } = ground
  const meanOf = (values: ArrayLike<number>) =>
    zoneMeans(zoning.zoneOfCell, zoning.zones.length, surface.share, values)
  const heights = meanOf(terrain.heightAboveFootM)
  const levels = meanOf(surface.levelM)
  const slopeErrors = zoneSlopeErrors(
    { zoneOfCell: zoning.zoneOfCell, count: zoning.zones.length, surface, slopeDeg: terrain.slopeDeg },
    { ground: plan.survey.ground, errors: measuringOf(plan, tables), accuracy },
  )
  return zoning.zones.map((zone, index) => {
    const slopeError = slopeErrors[index]
    const soil = soilOf[index]
    if (!soil || !slopeError) throw new RangeError(`judgeZones: zone ${zone.id} has no soil or no slope`)
    const evidence = {
      zone,
      slopeError,
      soil,
      climate,
      fallsTowardsHouse: fallsTowardsHouse(plan, terrain.section),
      water: waterOf(ground, zone.id),
      heightAboveFootM: heights[index] ?? 0,
      belowCrestM: Math.max(0, surface.highestM - (levels[index] ?? surface.highestM)),
    }
    return judgeZone(evidence, plan, tables)
  })
}

function waterOf({ water }: ZonedGround, zoneId: string): WaterYear {
  const year = water.units.find(({ id }) => id === zoneId)
  if (!year) throw new RangeError(`waterOf: zone ${zoneId} has no water year`)
  return year
}

interface Judged {
  readonly zones: readonly ZoneFindings[]
  readonly tables: Means['tables']
}

function careOf(plan: Plan, ground: Ground & ZonedGround, { zones, tables }: Judged): CareYear {
  const facts = ground.zoning.zones.flatMap((zone) => {
    const found = zones.find(({ zoneId }) => zoneId === zone.id)
    return found ? [careFacts(zone, found, waterOf(ground, zone.id))] : []
  })
  return careYear(
    facts,
    tables.care,
    {
      ratePerHourMinor: plan.brief.ratePerHourMinor,
      legalRegion: plan.site.legalRegion,
      months: normalsOf(ground.climate),
    },
    plan.site.latitudeDeg,
  )
}

function careFacts(zone: ZoneFacts, { cover, planting }: ZoneFindings, water: WaterYear): CareFacts {
  return {
    zoneId: zone.id,
    letter: zone.letter,
    name: zone.name,
    slopeDegMean: zone.slopeDegMean,
    slopeDegSteep: zone.slopeDegSteep,
    slopeAreaM2: zone.slopeAreaM2,
    edgeM: perimeterM(zone.ring),
    wetDays: eachMonth((month) => water.months[month].wetDays),
    plants: countsOf(planting),
    cover,
  }
}

function countsOf({ mix }: ZoneFindings['planting']): CareFacts['plants'] {
  const inLayer = (layer: string) =>
    mix.reduce((sum, line) => (line.layer === layer ? sum + line.count : sum), 0)
  return { ground: inLayer('ground'), shrub: inLayer('shrub'), tree: inLayer('tree') }
}
