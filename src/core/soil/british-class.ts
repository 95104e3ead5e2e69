export type BritishTextureClass =
  | 'sand'
  | 'loamy sand'
  | 'sandy loam'
  | 'sandy silt loam'
  | 'silt loam'
  | 'sandy clay loam'
  | 'clay loam'
  | 'silty clay loam'
  | 'sandy clay'
  | 'clay'
  | 'silty clay'

interface Grains {
  readonly sand: number
  readonly silt: number
  readonly clay: number
}

type Rules = readonly (readonly [BritishTextureClass, (grains: Grains) => boolean])[]

// Boundaries of the triangle in percent, below and from 18 % of clay; the first that fits names the class.
const light: Rules = [
  ['sand', ({ silt, clay }) => silt + 1.5 * clay < 15],
  ['loamy sand', ({ silt, clay }) => silt + 2 * clay < 30],
  ['sandy loam', ({ sand }) => sand > 50],
  ['sandy silt loam', ({ sand }) => sand > 20],
  ['silt loam', () => true],
]
const heavy: Rules = [
  ['sandy clay', ({ sand, silt, clay }) => clay >= 30 && (clay < 35 ? silt < 20 : sand > 45)],
  ['silty clay', ({ silt, clay }) => clay >= 35 && silt >= 45],
  ['clay', ({ clay }) => clay >= 35],
  ['sandy clay loam', ({ sand }) => sand > 50],
  ['clay loam', ({ sand }) => sand > 20],
  ['silty clay loam', () => true],
]

/** Least clay of the heavier classes [%]: Soil Survey of England and Wales. */
const HEAVY_CLAY_PERCENT = 18

/**
 * Texture class as British soil surveys name it.
 *
 * They part silt from sand at 0.06 mm, the USDA at 0.05 mm: with USDA shares the class is near, not exact.
 *
 * @param sandPercent - sand by weight [%], 0 to 100
 * @param clayPercent - clay by weight [%], 0 to 100
 * @returns one of the eleven classes
 * @throws RangeError when the shares are negative or more than 100 together
 * @see Soil Survey of England and Wales texture triangle, Hodgson 1997
 */
export function britishClassOf(sandPercent: number, clayPercent: number): BritishTextureClass {
  const silt = 100 - sandPercent - clayPercent
  if (!(Math.min(sandPercent, clayPercent, silt) >= 0))
    throw new RangeError(
      `britishClassOf: shares must be 0 or more and at most 100 %, got ${sandPercent}, ${clayPercent}`,
    )
  const rules = clayPercent < HEAVY_CLAY_PERCENT ? light : heavy
  const grains = { sand: sandPercent, silt, clay: clayPercent }
  return rules.find(([, fits]) => fits(grains))?.[0] ?? 'silt loam'
}
