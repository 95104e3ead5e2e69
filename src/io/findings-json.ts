import type { PlantVerdict } from '#core/plants'
import type { Findings, Plan, ZoneFindings } from '#plan'
import { citedSources } from './cited-sources'
import { findingsSchema } from './findings.schema'
import { groundOf, valuesOf } from './draw-layer'
import { cellsOf, layers } from './layers'
import { shaped } from './shaped'
import { sunBodies, type SunBodies } from './sun-body'

/**
 * The complete findings as JSON (docs/schema/findings.md): the same plan gives the same bytes.
 *
 * @param plan - the plan
 * @param findings - what follows from it
 * @param options - whether the grids are written too
 * @param options.layers - with grids or without
 * @returns the file's text
 */
export function findingsJson(plan: Plan, findings: Findings, options: { readonly layers: boolean }): string {
  const sun = sunBodies(findings)
  const body = {
    format: 'lynchet-findings',
    version: 2,
    plan: plan.name,
    surface: findings.surface,
    accuracy: findings.accuracy.from,
    section: findings.terrain.section,
    sights: findings.sights,
    around: findings.around,
    climate: findings.climate,
    openLevel: findings.sun.openLevel,
    standing: findings.standing,
    trials: sun.trials,
    soils: findings.soils,
    zonesSuggested: findings.zoning.suggested,
    zones: findings.zones.map((zone) => zoneBody(zone, findings, sun)),
    water: findings.water.account,
    care: { ...findings.care, currency: plan.brief.currency },
    cautions: findings.cautions,
    toSettle: findings.toSettle,
    layers: options.layers ? layerBodies(plan, findings) : [],
  }
  const whole = shaped(findingsSchema, { ...body, sources: citedSources(body) })
  return `${JSON.stringify(whole, null, 1)}\n`
}

function zoneBody(zone: ZoneFindings, { zoning, water }: Findings, { zones }: SunBodies) {
  return {
    ...zoning.zones.find(({ id }) => id === zone.zoneId),
    ...zone,
    soilSampleId: zone.soil.sampleId,
    planting: {
      ...zone.planting,
      offered: zone.planting.offered.map(verdictBody),
      refused: zone.planting.refused.map(verdictBody),
    },
    sun: zones.find(({ zoneId }) => zoneId === zone.zoneId)?.sun,
    water: water.units.find(({ id }) => id === zone.zoneId),
  }
}

/** A verdict with what an export says of its plant. */
export function verdictBody(verdict: PlantVerdict) {
  const { plant, flags } = verdict
  return {
    ...verdict,
    plantId: plant.id,
    name: plant.name,
    common: plant.common,
    barred: flags.barred,
    takesOver: flags.takesOver,
    poisonous: flags.toxicity,
    law: flags.legal,
    // The plant's own row and flags are not written, so their sources are not cited.
    plant: undefined,
    flags: undefined,
  }
}

function layerBodies(plan: Plan, findings: Findings) {
  const { frame, share } = findings.surface
  const ground = groundOf(plan, findings.surface)
  return layers
    .filter(({ needs }) => needs.length === 0)
    .map((layer) => ({
      ...layer,
      ...frame,
      values: cellsOf(valuesOf(layer, { plan, findings }, ground), share, layer.decimals),
    }))
}
