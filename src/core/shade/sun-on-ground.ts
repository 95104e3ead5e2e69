import { eachMonth, type Month, type Twelve } from '#core/units'
import {
  representativeDays,
  requireSite,
  sunSteps,
  usualSteps,
  type SunSite,
  type SunStep,
  type UsualDay,
} from '#core/sun'
import { cellPlanes, openSky, type CellPlanes } from './cell-planes'
import { collectUsualDay, darkness, type StepLight } from './collect-usual-day'
import { requireFit } from './day-shading'
import { overFarSkyline } from './far-skyline'
import { requireShading } from './require-shading'
import { litOverSkyline, skylinesAround, type Skylines } from './skylines'
import { thingsShadow } from './things-shadow'
import { alike, skyViews } from './things-sky'
import type { SkyViews } from './things-soft-sky'
import type { DayOnGround, OpenLevelDay, Shading, SunOnGround, TiltedCells } from './shade.types'

/** Sky and air over a plot. */
export interface YearSky {
  readonly site: SunSite
  /** The usual day of each month. */
  readonly usual: Twelve<UsualDay>
}

/**
 * Sun on every cell for twelve days that stand for their months.
 *
 * @param shading - ground, things and hills that can take the sun
 * @param cells - slope and aspect of each cell
 * @param sky - place, air and the usual sky of each month
 * @param skylines - skylines of the ground, where they are already known
 * @returns hours [h], radiation [Wh/m² of slope and day] and share of sky [1], one value per cell; 0 outside the plot
 * @throws RangeError when the grids do not fit together, a thing cannot be or the site is out of range
 * @see Hofierka & Suri 2002, The solar radiation model for Open source GIS; checked by GRASS r.sun
 */
export function sunOnGround(
  shading: Shading,
  cells: TiltedCells,
  sky: YearSky,
  skylines: Skylines = skylinesAround(shading.ground),
): SunOnGround {
  const { ground, far } = shading
  requireSite(sky.site)
  requireShading(shading)
  requireFit(ground, cells)
  const planes = cellPlanes(cells, ground.share)
  const castThings = thingsShadow(shading.standing, ground)
  const direct = new Float32Array(ground.levelM.length)
  const noLight = darkness(ground.levelM.length)
  return twelveDays(sky, {
    planes,
    views: skyViews(shading, skylines, planes),
    lightAt: ({ sun }, month) => {
      if (!overFarSkyline(far, sun)) return noLight
      litOverSkyline(skylines, sun, direct)
      return { direct, ...castThings(sun, month, direct) }
    },
  })
}

/**
 * Sun on one tilted place with nothing around it, for twelve days that stand for their months.
 *
 * @param plane - slope [°], 0 to below 90, and aspect faced, clockwise from true north [°]
 * @param plane.slopeDeg - steepness [°]
 * @param plane.aspectDeg - direction faced [°]
 * @param sky - place, air and the usual sky of each month
 * @returns the same as for ground, with grids of one cell
 * @throws RangeError when the plane or the site is out of range
 * @see Hofierka & Suri 2002, The solar radiation model for Open source GIS; checked by GRASS r.sun
 */
export function sunOnPlane(plane: { slopeDeg: number; aspectDeg: number }, sky: YearSky): SunOnGround {
  requireSite(sky.site)
  const planes = oneCell(plane)
  return twelveDays(sky, { planes, views: alike(openSky(planes)), lightAt: undefined })
}

function oneCell({ slopeDeg, aspectDeg }: { slopeDeg: number; aspectDeg: number }) {
  return cellPlanes({ slopeDeg: Float64Array.of(slopeDeg), aspectDeg: Float64Array.of(aspectDeg) })
}

interface Falling {
  readonly planes: CellPlanes
  readonly views: SkyViews
  readonly lightAt: ((step: SunStep, month: Month) => StepLight) | undefined
}

function twelveDays({ site, usual }: YearSky, { planes, views, lightAt }: Falling): SunOnGround {
  const clear = eachMonth((month) =>
    sunSteps({
      ...site,
      linke: typeof site.linke === 'number' ? site.linke : site.linke[month],
      dayOfYear: representativeDays[month],
    }),
  )
  const days = eachMonth((month) =>
    collectUsualDay(usualSteps(clear[month], usual[month]), {
      planes,
      skyView: views.months[month],
      albedo: site.albedo,
      usual: usual[month],
      lightAt: lightAt && ((step) => lightAt(step, month)),
    }),
  )
  return {
    sunHours: eachMonth((month) => days[month].sunHours),
    morningHours: eachMonth((month) => days[month].morningHours),
    dappledHours: eachMonth((month) => days[month].dappledHours),
    usualWhPerM2: eachMonth((month) => wholeDay(days[month])),
    skyView: views.mean,
    openLevel: eachMonth((month) => openLevelDay(representativeDays[month], clear[month], usual[month])),
  }
}

function wholeDay({ beamWhPerM2, diffuseWhPerM2, reflectedWhPerM2 }: DayOnGround): Float32Array {
  return beamWhPerM2.map((beamWh, cell) => beamWh + diffuseWhPerM2[cell]! + reflectedWhPerM2[cell]!)
}

function openLevelDay(
  dayOfYear: number,
  steps: readonly SunStep[],
  { levelWhPerM2 }: UsualDay,
): OpenLevelDay {
  const sum = (of: (step: SunStep) => number) =>
    steps.reduce((total, step) => total + of(step) * step.hours, 0)
  return {
    dayOfYear,
    sunHours: sum(() => 1),
    beamWhPerM2: sum(({ beamWPerM2, sun }) => beamWPerM2 * sun.up),
    diffuseWhPerM2: sum(({ diffuseWPerM2 }) => diffuseWPerM2),
    usualWhPerM2: levelWhPerM2,
  }
}
