import type { CellPlanes } from './cell-planes'
import type { DayOnGround } from './shade.types'
import type { SunStep } from '#core/sun'

/** What a day's light falls on. */
export interface Collecting {
  readonly planes: CellPlanes
  /** Share of the sky that each cell sees, cosine-weighted on its own plane [1]. */
  readonly skyView: Float32Array
  /** Share of light thrown back by the ground in front [1]. */
  readonly albedo: number
  /** Share of the cell that direct sun can reach at a step, 0 (in shadow) to 1; undefined without cast shadows. */
  readonly litAt: ((step: SunStep) => Float32Array) | undefined
}

/** Muneer's weight of the tilt term on ground in shadow [1] (Muneer 1990). */
const SHADED_TERM = 0.252271
/** Sun height below which Muneer's glow around the sun has its own formula [rad]. */
const LOW_SUN_RAD = 0.1

/**
 * Adds up a clear day on tilted cells.
 *
 * @param steps - the day's sun
 * @param on - the cells, the sky they see and what shades them
 * @returns hours of sun [h] and radiation [Wh/m² of slope], one value per cell
 * @see Hofierka & Suri 2002, after Muneer 1990 for diffuse light on slopes
 */
export function collectDay(steps: readonly SunStep[], on: Collecting): DayOnGround {
  const sky = seenSky(on)
  const count = on.planes.up.length
  const sums = {
    sunHours: new Float32Array(count),
    beamWhPerM2: new Float32Array(count),
    diffuseWhPerM2: new Float32Array(count),
    reflectedWhPerM2: new Float32Array(count),
  }
  const openly = new Float32Array(count).fill(1)
  for (const step of steps) addStep(step, { planes: on.planes, sky, lit: on.litAt?.(step) ?? openly }, sums)
  const skyWh = steps.reduce((sum, step) => sum + step.diffuseWPerM2 * step.hours, 0)
  reflect(sums.reflectedWhPerM2, skyWh, on)
  return sums
}

/** Muneer's two parts of the sky as each cell sees them, narrowed by the skyline. */
interface SeenSky {
  readonly even: Float64Array
  readonly uneven: Float64Array
  /** Both together on ground in shadow. */
  readonly inShade: Float64Array
}

// What cells see of the sky, the same on every day.
function seenSky(on: Collecting): SeenSky {
  const { skyView } = on
  const { ownSky, tiltTerm } = on.planes
  const even = new Float64Array(ownSky.length)
  const uneven = new Float64Array(ownSky.length)
  const inShade = new Float64Array(ownSky.length)
  for (let cell = 0; cell < ownSky.length; cell += 1) {
    const own = ownSky[cell]!
    if (own === 0) continue
    const term = tiltTerm[cell]!
    const view = skyView[cell]!
    even[cell] = (own * view) / own
    uneven[cell] = (term * view) / own
    inShade[cell] = ((own + SHADED_TERM * term) * view) / own
  }
  return { even, uneven, inShade }
}

// The glow around the sun on a sloping cell, as factors of its level and upright parts [1]; level ground has all of it.
function glowFactors({ altitudeRad, sun, beamShare }: SunStep) {
  if (altitudeRad >= LOW_SUN_RAD) return { level: beamShare / sun.up, upright: beamShare }
  return { level: beamShare / (Math.cos(altitudeRad) * (LOW_SUN_RAD - 0.008 * altitudeRad)), upright: 0 }
}

interface Lighting {
  readonly planes: CellPlanes
  readonly sky: SeenSky
  readonly lit: Float32Array
}

function addStep(step: SunStep, { planes, sky, lit }: Lighting, sums: DayOnGround): void {
  const { sunHours, beamWhPerM2, diffuseWhPerM2, reflectedWhPerM2 } = sums
  const { east, north, up } = planes
  const { even, uneven, inShade } = sky
  const { hours, beamShare } = step
  const { east: sunEast, north: sunNorth, up: sunUp } = step.sun
  const { level: glowLevel, upright: glowUpright } = glowFactors(step)
  const beamWh = step.beamWPerM2 * hours
  const skyWh = step.diffuseWPerM2 * hours
  const evenWh = skyWh * (1 - beamShare)
  const unevenWh = evenWh * (0.00263 - beamShare * (0.712 + 0.6883 * beamShare))
  const count = up.length
  for (let cell = 0; cell < count; cell += 1) {
    const sideways = east[cell]! * sunEast + north[cell]! * sunNorth
    const upright = up[cell]!
    const facing = sideways + upright * sunUp
    const share = facing > 0 ? lit[cell]! : 0
    if (share === 0) {
      diffuseWhPerM2[cell]! += skyWh * inShade[cell]!
      continue
    }
    const glow = upright === 1 ? beamShare : sideways * glowLevel + upright * glowUpright
    const inSunWh = even[cell]! * evenWh + uneven[cell]! * unevenWh + skyWh * glow
    sunHours[cell]! += hours * share
    beamWhPerM2[cell]! += beamWh * facing * share
    diffuseWhPerM2[cell]! += share * inSunWh + (1 - share) * skyWh * inShade[cell]!
    reflectedWhPerM2[cell]! += beamWh * sunUp * share
  }
}

// Turns the level beam of a cell's own sunny hours, with the day's sky light, into what the ground in front throws back.
function reflect(levelBeamWh: Float32Array, skyWh: number, { planes, skyView, albedo }: Collecting): void {
  for (let cell = 0; cell < levelBeamWh.length; cell += 1) {
    const groundView = planes.up[cell] === 0 ? 0 : 1 - skyView[cell]!
    levelBeamWh[cell] = albedo * groundView * (levelBeamWh[cell]! + skyWh)
  }
}
