import type { SoilSample } from './soil.schema'
import type { SoilProperties } from './soil.types'
import type { SoilTables } from './soil-tables.schema'
import { grainsOf, type GrainShares } from './grains-of'
import { hydrologicGroup } from './hydrologic-group'
import { rowOf } from './row-of'
import { stoneSlowing } from './stones'
import { MOST_CLAY_SHARE, waterHolding } from './water-holding'

/** Millimetres in a metre [mm/m]. */
const MM_PER_M = 1000

/**
 * Soil as water and roots find it.
 *
 * Water contents are of the fine earth; depths of water and the conductivity are of the whole soil,
 * its stones deducted. A soil with more than 60 % clay, beyond the equations, is taken as one of 60 %;
 * `soilProblems` tells the person so.
 *
 * @param sample - one pit or handful
 * @param tables - soil tables
 * @returns what the sample holds, lets through and sheds
 * @throws RangeError when the texture can not be read (an empty jar); `soilProblems` says so first
 */
export function soilProperties(sample: SoilSample, tables: SoilTables): SoilProperties {
  const grains = grainsOf(sample.texture, tables)
  const { densityFactor } = rowOf(
    tables.compaction,
    (row) => row.compaction === sample.compaction,
    sample.compaction,
  )
  const holding = waterHolding({
    ...sharesWithinMethod(grains),
    organicPercent: sample.organicPercent,
    densityFactor,
  })
  const stonesShare = sample.stonesPercent / 100
  const fineDepthMm = sample.depthM * MM_PER_M * (1 - stonesShare)
  const conductivityMmPerH = holding.conductivityMmPerH * stoneSlowing(stonesShare, holding.densityTPerM3)
  return {
    sampleId: sample.id,
    ...grainsOnly(grains),
    organicPercent: sample.organicPercent,
    wiltingPoint: holding.wiltingPoint,
    fieldCapacity: holding.fieldCapacity,
    saturation: holding.saturation,
    conductivityMmPerH,
    depthM: sample.depthM,
    stonesPercent: sample.stonesPercent,
    availableWaterMm: fineDepthMm * (holding.fieldCapacity - holding.wiltingPoint),
    drainableMm: fineDepthMm * (holding.saturation - holding.fieldCapacity),
    hydrologicGroup: hydrologicGroup(conductivityMmPerH, sample.depthM),
    ph: sample.ph,
  }
}

// Shares for the equations; clay beyond their range stands at its edge, the rest keeps its proportions.
function sharesWithinMethod({ sandPercent, clayPercent }: GrainShares): { sand: number; clay: number } {
  const sand = sandPercent / 100
  const clay = clayPercent / 100
  if (clay <= MOST_CLAY_SHARE) return { sand, clay }
  const rest = 1 - clay
  return { sand: rest > 0 ? (sand * (1 - MOST_CLAY_SHARE)) / rest : 0, clay: MOST_CLAY_SHARE }
}

function grainsOnly({ textureClass, sandPercent, siltPercent, clayPercent }: GrainShares): GrainShares {
  return { textureClass, sandPercent, siltPercent, clayPercent }
}
