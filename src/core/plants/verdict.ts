import type { Plant } from './plant.schema'
import type { MatchReason, PlantFlags, PlantTables, PlantVerdict, Site } from './plants.types'
import type { MatchBrief, Meeting } from './match.types'
import { bindingClass } from './binding'
import { fitParts } from './fit-parts'
import { bars, legalEntries } from './legal'
import { refusalRules } from './refusal-rules'
import { toxicityOf } from './toxicity'
import { TAKES_ALL, warningsOf } from './warnings'

const nobodyAsks: MatchBrief = { children: false, pets: false }

/** A part this well or this badly met is worth a line [0 to 1; own judgement]. */
const GOOD_PART = 0.75
const POOR_PART = 0.4

/**
 * Whether a plant may be offered on a site, how well it fits, and every reason.
 *
 * @param plant - the plant
 * @param site - what the zone offers
 * @param tables - legal lists and poisonous plants
 * @param brief - who comes here and what is wanted
 * @returns the verdict; fit 0 to 100 [points of 100], 0 when refused
 * @throws RangeError when the site's moisture or light is not a finite number
 */
export function plantVerdict(
  plant: Plant,
  site: Site,
  tables: Pick<PlantTables, 'legal' | 'toxicity'>,
  brief: MatchBrief = nobodyAsks,
): PlantVerdict {
  checkSite(site)
  const flags = flagsOf(plant, site, tables)
  const meeting: Meeting = { plant, site, flags, brief, bindingClass: bindingClass(plant.binding) }
  const refusals = refusalsOf(meeting)
  const offered = refusals.length === 0
  const fit = offered ? fitOf(meeting) : { points: 0, reasons: [] }
  return {
    plant,
    offered,
    fit: fit.points,
    bindingClass: meeting.bindingClass,
    reasons: [...refusals, ...fit.reasons, ...warningsOf(meeting)],
    flags,
  }
}

function flagsOf(plant: Plant, site: Site, tables: Pick<PlantTables, 'legal' | 'toxicity'>): PlantFlags {
  const legal = legalEntries(plant, site.legalRegion, tables.legal)
  return {
    legal,
    toxicity: toxicityOf(plant, tables.toxicity),
    barred: legal.some(bars),
    takesOver: plant.dominance >= TAKES_ALL,
  }
}

function refusalsOf(meeting: Meeting): MatchReason[] {
  return refusalRules
    .filter((rule) => rule.refuses(meeting))
    .map((rule) => ({
      id: rule.id,
      for: false,
      because: rule.because(meeting),
      source: typeof rule.source === 'string' ? rule.source : rule.source(meeting),
    }))
}

function fitOf(meeting: Meeting): { points: number; reasons: MatchReason[] } {
  const parts = fitParts.map((part) => ({
    part,
    weight: part.weight(meeting.site),
    score: part.score(meeting),
  }))
  const weights = parts.reduce((sum, { weight }) => sum + weight, 0)
  const earned = parts.reduce((sum, { weight, score }) => sum + weight * score, 0)
  const reasons = parts
    .filter(({ weight, score }) => weight > 0 && (score >= GOOD_PART || score <= POOR_PART))
    .map(({ part, score }) => ({
      id: part.id,
      for: score >= GOOD_PART,
      because: part.because(meeting),
      source: part.source,
    }))
  return { points: Math.round((100 * earned) / weights), reasons }
}

function checkSite(site: Site): void {
  for (const name of [
    'moistureClass',
    'lightClass',
    'hardWinterC',
    'soilDepthM',
    'slopeDeg',
    'wetDays',
  ] as const)
    if (!Number.isFinite(site[name]))
      throw new RangeError(`plantVerdict: ${name} must be finite, got ${site[name]}`)
}
