/** What the retention equations ask for. */
export interface Grains {
  /** Sand by weight [share], 0 to 1. */
  readonly sand: number
  /** Clay by weight [share], 0 to 0.6. */
  readonly clay: number
  /** Organic matter by weight [%], 0 to 8. */
  readonly organicPercent: number
  /** Density over the density usual for the texture [ratio], 0.9 to 1.3. */
  readonly densityFactor: number
}

/** Water in the fine earth at the three marks, and how fast it passes when full. */
export interface WaterHolding {
  /** Water content at wilting point, 1500 kPa [m³/m³]. */
  readonly wiltingPoint: number
  /** Water content at field capacity, 33 kPa [m³/m³]. */
  readonly fieldCapacity: number
  /** Water content when every pore is full [m³/m³]. */
  readonly saturation: number
  /** Saturated conductivity [mm/h]. */
  readonly conductivityMmPerH: number
  /** Dry density of the fine earth [t/m³]. */
  readonly densityTPerM3: number
}

/** Density of soil minerals [t/m³]: Saxton & Rawls 2006. */
const MINERAL_DENSITY = 2.65

/** Conductivity scale [mm/h]: Saxton & Rawls 2006, eq. 16. */
const CONDUCTIVITY_SCALE = 1930

/** Natural logarithm of the suctions at wilting point over field capacity [-]: 1500 and 33 kPa. */
const LOG_SUCTION_RATIO = Math.log(1500 / 33)

/**
 * Least water content at wilting point, and least gap between one mark and the next [m³/m³]: own judgement,
 * for pure sand and packed clay where the equations leave nothing.
 */
const SMALLEST_STEP = 0.01

/** Most clay the equations were made for [share]: Saxton & Rawls 2006. */
export const MOST_CLAY_SHARE = 0.6

/**
 * Water held by fine earth of a given texture, organic matter and density.
 *
 * @param grains - sand and clay [share], organic matter [%], density factor [ratio]
 * @returns water contents [m³/m³], conductivity [mm/h] and density [t/m³]
 * @throws RangeError when an input is outside its range
 * @see Saxton & Rawls 2006, Soil Sci. Soc. Am. J. 70:1569-1578, eqs 1 to 18; density from memory
 */
export function waterHolding(grains: Grains): WaterHolding {
  refuseOutside(grains)
  const wiltingPoint = wiltingPointOf(grains)
  const loosely = fieldCapacityOf(grains)
  const usualSaturation = saturationOf(grains, loosely)
  const densityTPerM3 = (1 - usualSaturation) * MINERAL_DENSITY * grains.densityFactor
  const packed = 1 - densityTPerM3 / MINERAL_DENSITY
  // Squeezed pores hold a little more at field capacity, loosened ones a little less.
  const fieldCapacity = Math.max(wiltingPoint + SMALLEST_STEP, loosely - 0.2 * (usualSaturation - packed))
  const saturation = Math.max(packed, fieldCapacity + SMALLEST_STEP)
  const poreIndex = poreSizeIndex(fieldCapacity, wiltingPoint)
  const conductivityMmPerH = CONDUCTIVITY_SCALE * (saturation - fieldCapacity) ** (3 - poreIndex)
  return { wiltingPoint, fieldCapacity, saturation, conductivityMmPerH, densityTPerM3 }
}

/**
 * Slope of the logarithmic line of suction against water content, turned over.
 *
 * @param fieldCapacity - water content at 33 kPa [m³/m³], above the wilting point
 * @param wiltingPoint - water content at 1500 kPa [m³/m³], above 0
 * @returns pore size index [-]
 * @throws RangeError when the field capacity is not above the wilting point
 * @see Saxton & Rawls 2006, Soil Sci. Soc. Am. J. 70:1569-1578, eqs 15 and 18
 */
export function poreSizeIndex(fieldCapacity: number, wiltingPoint: number): number {
  if (!(wiltingPoint > 0 && fieldCapacity > wiltingPoint))
    throw new RangeError(
      `poreSizeIndex: field capacity must be above the wilting point, got ${fieldCapacity} and ${wiltingPoint}`,
    )
  return Math.log(fieldCapacity / wiltingPoint) / LOG_SUCTION_RATIO
}

function wiltingPointOf({ sand, clay, organicPercent: om }: Grains): number {
  const first =
    -0.024 * sand +
    0.487 * clay +
    0.006 * om +
    0.005 * sand * om -
    0.013 * clay * om +
    0.068 * sand * clay +
    0.031
  return Math.max(SMALLEST_STEP, first + (0.14 * first - 0.02))
}

function fieldCapacityOf({ sand, clay, organicPercent: om }: Grains): number {
  const first =
    -0.251 * sand +
    0.195 * clay +
    0.011 * om +
    0.006 * sand * om -
    0.027 * clay * om +
    0.452 * sand * clay +
    0.299
  return first + (1.283 * first ** 2 - 0.374 * first - 0.015)
}

function saturationOf({ sand, clay, organicPercent: om }: Grains, fieldCapacity: number): number {
  const first =
    0.278 * sand +
    0.034 * clay +
    0.022 * om -
    0.018 * sand * om -
    0.027 * clay * om -
    0.584 * sand * clay +
    0.078
  const aboveFieldCapacity = first + (0.636 * first - 0.107)
  return fieldCapacity + aboveFieldCapacity - 0.097 * sand + 0.043
}

function refuseOutside({ sand, clay, organicPercent, densityFactor }: Grains): void {
  if (!(sand >= 0 && clay >= 0 && clay <= MOST_CLAY_SHARE && sand + clay <= 1.000001))
    throw new RangeError(
      `waterHolding: sand must be 0 to 1 and clay 0 to ${MOST_CLAY_SHARE}, together at most 1, got ${sand} and ${clay}`,
    )
  if (!(organicPercent >= 0 && organicPercent <= 8))
    throw new RangeError(`waterHolding: organicPercent must be 0 to 8, got ${organicPercent}`)
  if (!(densityFactor >= 0.9 && densityFactor <= 1.3))
    throw new RangeError(`waterHolding: densityFactor must be 0.9 to 1.3, got ${densityFactor}`)
}
