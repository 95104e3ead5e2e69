import { eachMonth, toRadians } from '#core/units'
import type { CellPlanes } from './cell-planes'
import { farAngleDeg } from './far-skyline'
import type { FarPoint, Shading } from './shade.types'
import { addDirection, skyView } from './sky-view'
import type { Skylines } from './skylines'
import { isHard } from './things-parts'
import { meetScreen, type Looking } from './things-rises'
import { groundLevels } from './things-shadow'
import { softSky, type SkyViews } from './things-soft-sky'

/** Directions in which things are looked for, at least [count]: a thing's edge is known to 2°. */
const THING_DIRECTIONS = 96

/**
 * Share of the sky that each cell sees past its own plane, the plot's skyline, far hills and things; what comes through a
 * thing counts by its share. Between the skyline's directions the ground is read between the nearest two.
 *
 * @param shading - everything that can take the sky away
 * @param skylines - the skyline of every cell, all around
 * @param planes - the cells as planes
 * @returns share of the sky [1], one value per cell; 0 outside the plot
 * @see Dozier & Frew 1990, IEEE Transactions on Geoscience and Remote Sensing 28:963-969
 */
export function skyViews(shading: Shading, skylines: Skylines, planes: CellPlanes): SkyViews {
  const standing = shading.standing.filter(({ through }) => through.some((share) => share < 1))
  if (standing.length === 0 && shading.far.length === 0) return alike(skyView(skylines, planes))
  const { ground, far } = shading
  const { lowestM } = groundLevels(ground)
  const finer = standing.length === 0 ? 1 : Math.ceil(THING_DIRECTIONS / skylines.length)
  const directions = finer * skylines.length
  const hard = standing.filter(isHard).flatMap(({ screens }) => screens)
  const soft = softSky(standing, planes)
  const view = new Float32Array(ground.levelM.length)
  const skyline = new Float32Array(ground.levelM.length)
  const met = { low: skyline, high: skyline, any: new Uint8Array(skyline.length) }
  for (let at = 0; at < directions; at += 1) {
    const azimuthRad = (2 * Math.PI * at) / directions
    const look = { east: Math.sin(azimuthRad), north: Math.cos(azimuthRad) }
    const looking: Looking = { ground, lowestM, look }
    readSkyline(skylines, at / finer, riseOf(far, (360 * at) / directions), skyline)
    for (const screen of hard) meetScreen(screen, looking, met)
    addDirection(view, planes, skyline, azimuthRad)
    soft.take(looking, skyline)
  }
  return soft.leave(view, directions)
}

/**
 * The same sky in every month.
 *
 * @param view - share of the sky [1], one value per cell
 * @returns the views
 */
export function alike(view: Float32Array): SkyViews {
  return { months: eachMonth(() => view), mean: view }
}

function riseOf(far: readonly FarPoint[], azimuthDeg: number): number {
  return Math.tan(toRadians(farAngleDeg(far, azimuthDeg)))
}

function readSkyline(skylines: Skylines, place: number, least: number, into: Float32Array): void {
  const before = Math.floor(place)
  const part = place - before
  const one = skylines[before]!
  const other = skylines[(before + 1) % skylines.length]!
  for (let cell = 0; cell < into.length; cell += 1) {
    const here = one[cell]!
    into[cell] = Math.max(least, part === 0 ? here : here + part * (other[cell]! - here))
  }
}
