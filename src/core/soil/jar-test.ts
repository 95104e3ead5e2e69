import type { TextureClass } from './soil.schema'
import { textureClassOf } from './texture-class'

/** Layers of a shaken jar: sand after 1 minute, silt to 2 hours, clay when the water is clear. */
export interface JarLayers {
  readonly sandMm: number
  readonly siltMm: number
  readonly clayMm: number
}

/** Shares of a jar, and how far they may be trusted. */
export interface JarReading {
  readonly sandPercent: number
  readonly siltPercent: number
  readonly clayPercent: number
  readonly textureClass: TextureClass
  /** Each share may be this far off [percentage points]. */
  readonly errorPercent: number
  /** Every class the soil may be within that error, the likeliest first. */
  readonly mayBe: readonly TextureClass[]
}

/**
 * How far a jar may be off [percentage points]: own judgement. After 2 hours fine silt still floats
 * and counts as clay, and a fresh layer of clay is swollen with water.
 */
const JAR_ERROR_PERCENT = 10

/** Step at which the ground within the error is searched for other classes [percentage points]. */
const SEARCH_STEP_PERCENT = 2

/**
 * Sand, silt and clay from the layers of a jar.
 *
 * @param layers - thickness of each layer [mm], 0 or more, at least one above 0
 * @returns the shares [%], their error [percentage points] and every class they may mean
 * @throws RangeError when a layer is negative or the jar is empty
 */
export function readJar(layers: JarLayers): JarReading {
  const { sandMm, siltMm, clayMm } = layers
  const totalMm = sandMm + siltMm + clayMm
  if (!(Math.min(sandMm, siltMm, clayMm) >= 0 && totalMm > 0 && Number.isFinite(totalMm)))
    throw new RangeError(
      `readJar: layers must be 0 mm or more and not all 0, got ${sandMm}, ${siltMm}, ${clayMm}`,
    )
  const sandPercent = (100 * sandMm) / totalMm
  const clayPercent = (100 * clayMm) / totalMm
  const siltPercent = 100 - sandPercent - clayPercent
  const textureClass = textureClassOf(sandPercent, Math.max(0, siltPercent), clayPercent)
  return {
    sandPercent,
    siltPercent: Math.max(0, siltPercent),
    clayPercent,
    textureClass,
    errorPercent: JAR_ERROR_PERCENT,
    mayBe: classesAround(sandPercent, clayPercent, textureClass),
  }
}

function classesAround(sandPercent: number, clayPercent: number, likeliest: TextureClass): TextureClass[] {
  const found = new Set<TextureClass>([likeliest])
  for (let sandOff = -JAR_ERROR_PERCENT; sandOff <= JAR_ERROR_PERCENT; sandOff += SEARCH_STEP_PERCENT)
    for (let clayOff = -JAR_ERROR_PERCENT; clayOff <= JAR_ERROR_PERCENT; clayOff += SEARCH_STEP_PERCENT) {
      const sand = sandPercent + sandOff
      const clay = clayPercent + clayOff
      const silt = 100 - sand - clay
      if (Math.abs(sandOff + clayOff) <= JAR_ERROR_PERCENT && Math.min(sand, clay, silt) >= 0)
        found.add(textureClassOf(sand, silt, clay))
    }
  return [...found]
}
