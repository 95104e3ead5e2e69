import type { TextureClass } from './soil.schema'
import type { SoilProperties } from './soil.types'
import type { SoilTables } from './soil-tables.schema'
import { britishClassOf } from './british-class'
import { rowOf } from './row-of'

/**
 * A soil in a gardener's words.
 *
 * @param soil - what the sample holds and lets through
 * @param tables - soil tables, for the words
 * @returns one sentence, such as "Clay, 0.6 m deep: holds 84 mm for plants; drains very slowly; very sticky when wet, hard and cracked when dry."; where a British survey would name another class, it says so
 * @throws RangeError when a table lacks the row for the soil
 */
export function describeSoil(soil: SoilProperties, tables: SoilTables): string {
  const { handling } = classRow(soil.textureClass, tables)
  const { words } = rowOf(
    tables.drainage,
    (row) => soil.conductivityMmPerH >= row.minMmPerH,
    `a conductivity of ${soil.conductivityMmPerH} mm/h`,
  )
  const name = soil.textureClass.charAt(0).toUpperCase() + soil.textureClass.slice(1)
  const holds = `holds ${Math.round(soil.availableWaterMm)} mm for plants`
  return `${name}${inBritain(soil)}, ${soil.depthM} m deep: ${holds}; ${words}; ${handling}.`
}

/**
 * The broad kind of soil that plant lists speak of.
 *
 * @param textureClass - class of the USDA triangle
 * @param tables - soil tables
 * @returns sand, loam or clay
 * @throws RangeError when the table lacks the class
 */
export function coarseTexture(textureClass: TextureClass, tables: SoilTables): 'sand' | 'loam' | 'clay' {
  return classRow(textureClass, tables).coarse
}

function inBritain({ textureClass, sandPercent, clayPercent }: SoilProperties): string {
  const british = britishClassOf(sandPercent, clayPercent)
  return british === textureClass ? '' : ` (${british} to a British survey)`
}

function classRow(textureClass: TextureClass, tables: SoilTables) {
  return rowOf(tables.classes, (row) => row.class === textureClass, textureClass)
}
