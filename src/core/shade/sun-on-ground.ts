import { eachMonth, type Twelve } from '#core/units'
import {
  representativeDays,
  requireSite,
  sunSteps,
  usualSteps,
  type SunSite,
  type SunStep,
  type UsualDay,
} from '#core/sun'
import { cellPlanes, type CellPlanes } from './cell-planes'
import { collectUsualDay } from './collect-usual-day'
import { openSky, requireFit } from './day-on-ground'
import { litOverSkyline, skylinesAround, type Skylines } from './skylines'
import { skyView } from './sky-view'
import type { OpenLevelDay, Shading, SunOnGround, TiltedCells } from './shade.types'

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
 * @throws RangeError when the grids do not fit together or the site is out of range
 * @see Hofierka & Suri 2002, The solar radiation model for Open source GIS; checked by GRASS r.sun
 */
export function sunOnGround(
  shading: Shading,
  cells: TiltedCells,
  sky: YearSky,
  skylines: Skylines = skylinesAround(shading.ground),
): SunOnGround {
  requireSite(sky.site)
  requireFit(shading.ground, cells)
  const planes = cellPlanes(cells, shading.ground.share)
  const lit = new Float32Array(shading.ground.levelM.length)
  return twelveDays(sky, {
    planes,
    skyView: skyView(skylines, planes),
    litAt: (step) => litOverSkyline(skylines, step.sun, lit),
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
  return twelveDays(sky, { planes, skyView: openSky(planes), litAt: undefined })
}

function oneCell({ slopeDeg, aspectDeg }: { slopeDeg: number; aspectDeg: number }) {
  return cellPlanes({ slopeDeg: Float64Array.of(slopeDeg), aspectDeg: Float64Array.of(aspectDeg) })
}

interface Falling {
  readonly planes: CellPlanes
  readonly skyView: Float32Array
  readonly litAt: ((step: SunStep) => Float32Array) | undefined
}

function twelveDays({ site, usual }: YearSky, on: Falling): SunOnGround {
  const clear = eachMonth((month) =>
    sunSteps({
      ...site,
      linke: typeof site.linke === 'number' ? site.linke : site.linke[month],
      dayOfYear: representativeDays[month],
    }),
  )
  const days = eachMonth((month) =>
    collectUsualDay(usualSteps(clear[month], usual[month]), {
      ...on,
      albedo: site.albedo,
      usual: usual[month],
    }),
  )
  return {
    sunHours: eachMonth((month) => days[month].sunHours),
    morningHours: eachMonth((month) => days[month].morningHours),
    dappledHours: eachMonth((month) => days[month].dappledHours),
    usualWhPerM2: eachMonth((month) => days[month].usualWhPerM2),
    skyView: on.skyView,
    openLevel: eachMonth((month) => openLevelDay(representativeDays[month], clear[month], usual[month])),
  }
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
