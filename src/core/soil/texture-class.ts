import type { TextureClass } from './soil.schema'

interface Grains {
  readonly sand: number
  readonly silt: number
  readonly clay: number
}

// Boundary rules of the triangle in percent; the first that fits names the class.
const triangle: readonly (readonly [TextureClass, (grains: Grains) => boolean])[] = [
  ['sand', ({ silt, clay }) => silt + 1.5 * clay < 15],
  ['loamy sand', ({ silt, clay }) => silt + 2 * clay < 30],
  ['sandy clay', ({ sand, clay }) => clay >= 35 && sand > 45],
  ['sandy clay loam', ({ sand, silt, clay }) => clay >= 20 && clay < 35 && silt < 28 && sand > 45],
  ['loam', ({ sand, silt, clay }) => clay >= 7 && clay < 27 && silt >= 28 && silt < 50 && sand <= 52],
  ['clay loam', ({ sand, clay }) => clay >= 27 && clay < 40 && sand > 20 && sand <= 45],
  ['silty clay loam', ({ sand, clay }) => clay >= 27 && clay < 40 && sand <= 20],
  ['silty clay', ({ silt, clay }) => clay >= 40 && silt >= 40],
  ['clay', ({ clay }) => clay >= 40],
  ['silt', ({ silt, clay }) => silt >= 80 && clay < 12],
  ['silt loam', ({ silt }) => silt >= 50],
]

/** Sand, silt and clay may add up to this much more or less than 100 [percentage points]. */
const SUM_TOLERANCE_PERCENT = 1

/** Grain shares are read to this many parts in one, so that 27 stays 27 after scaling to 100. */
const GRAIN_STEPS = 1e6

/**
 * Texture class of the USDA triangle.
 *
 * @param sandPercent - grains of 0.05 to 2 mm, by weight [%], 0 to 100
 * @param siltPercent - grains of 0.002 to 0.05 mm, by weight [%], 0 to 100
 * @param clayPercent - grains below 0.002 mm, by weight [%], 0 to 100
 * @returns one of the twelve classes
 * @throws RangeError when a share is outside its range or they do not add up to 100 within 1
 * @see USDA texture triangle: Soil Survey Manual, Agriculture Handbook 18
 */
export function textureClassOf(sandPercent: number, siltPercent: number, clayPercent: number): TextureClass {
  const grains = wholeHundred(sandPercent, siltPercent, clayPercent)
  return triangle.find(([, fits]) => fits(grains))?.[0] ?? 'sandy loam'
}

// Scales shares that add up to nearly 100 to exactly 100.
function wholeHundred(sand: number, silt: number, clay: number): Grains {
  const sum = sand + silt + clay
  if (!(Math.min(sand, silt, clay) >= 0 && Math.abs(sum - 100) <= SUM_TOLERANCE_PERCENT))
    throw new RangeError(
      `textureClassOf: shares must be 0 or more and add up to 100 %, got ${sand}, ${silt}, ${clay}`,
    )
  const scaled = (share: number) => Math.round((share * 100 * GRAIN_STEPS) / sum) / GRAIN_STEPS
  return { sand: scaled(sand), silt: scaled(silt), clay: scaled(clay) }
}
