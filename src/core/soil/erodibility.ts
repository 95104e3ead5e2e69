import type { TextureClass } from './soil.schema'
import type { SoilTables } from './soil-tables.schema'
import { rowOf } from './row-of'

/** K in t ha h/(ha MJ mm) for a K of 1 in US units: AH-703 appendix A. */
const SI_PER_US = 0.1317

/** Organic matter that the table's three columns stand for [%]: Stewart et al. 1975. */
const COLUMNS_PERCENT = [0.5, 2, 4] as const

/**
 * How easily rain carries the soil off.
 *
 * Between the table's columns K runs straight; below 0.5 % and above 4 % it stays as at the end.
 *
 * @param textureClass - class of the USDA triangle
 * @param organicPercent - organic matter by weight [%], 0 to 8
 * @param tables - soil tables
 * @returns erodibility K [t ha h/(ha MJ mm)]
 * @throws RangeError when organic matter is outside its range
 * @see Stewart et al. 1975; units by AH-703 appendix A
 */
export function erodibility(textureClass: TextureClass, organicPercent: number, tables: SoilTables): number {
  if (!(organicPercent >= 0 && organicPercent <= 8))
    throw new RangeError(`erodibility: organicPercent must be 0 to 8, got ${organicPercent}`)
  const row = rowOf(tables.erodibility, (kind) => kind.class === textureClass, textureClass)
  const [low, middle, high] = COLUMNS_PERCENT
  const asked = Math.min(high, Math.max(low, organicPercent))
  const us =
    asked <= middle
      ? between(row.organicHalfPercent, row.organicTwoPercent, (asked - low) / (middle - low))
      : between(row.organicTwoPercent, row.organicFourPercent, (asked - middle) / (high - middle))
  return us * SI_PER_US
}

function between(from: number, to: number, share: number): number {
  return from + (to - from) * share
}
