import { eachMonth, type Twelve } from '#core/units'
import { cellPlanes } from './cell-planes'
import { collectDay, seenSky, type Collecting } from './collect-day'
import { openSky, requireFit } from './day-on-ground'
import { representativeDays } from './representative-days'
import { requireSite } from './require-site'
import { litOverSkyline, skylinesAround } from './skylines'
import { skyView } from './sky-view'
import type {
  DayChoice,
  DayOnGround,
  OpenLevelDay,
  ShadingGround,
  SunOnGround,
  SunSite,
  TiltedCells,
} from './sun.types'
import { sunSteps, type SunStep } from './sun-steps'

/**
 * Sun on every cell for twelve clear days that stand for their months, ground shading itself.
 *
 * @param ground - the grid of levels
 * @param cells - slope and aspect of each cell
 * @param site - place and air
 * @returns hours [h], radiation [Wh/m² of slope and day] and share of sky [1], one value per cell; 0 outside the plot
 * @throws RangeError when the grids do not fit together or the site is out of range
 * @see Hofierka & Suri 2002, The solar radiation model for Open source GIS; checked by GRASS r.sun
 */
export function sunOnGround(ground: ShadingGround, cells: TiltedCells, site: SunSite): SunOnGround {
  requireSite(site)
  requireFit(ground, cells)
  const planes = cellPlanes(cells, ground.share)
  const skylines = skylinesAround(ground)
  const lit = new Float32Array(ground.levelM.length)
  return twelveDays(site, {
    planes,
    skyView: skyView(skylines, planes),
    albedo: site.albedo,
    litAt: (step) => litOverSkyline(skylines, step.sun, lit),
  })
}

/**
 * Sun on one tilted place with nothing around it, for twelve clear days that stand for their months.
 *
 * @param plane - slope [°], 0 to below 90, and aspect faced, clockwise from true north [°]
 * @param plane.slopeDeg - steepness [°]
 * @param plane.aspectDeg - direction faced [°]
 * @param site - place and air
 * @returns the same as for ground, with grids of one cell
 * @throws RangeError when the plane or the site is out of range
 * @see Hofierka & Suri 2002, The solar radiation model for Open source GIS; checked by GRASS r.sun
 */
export function sunOnPlane(plane: { slopeDeg: number; aspectDeg: number }, site: SunSite): SunOnGround {
  requireSite(site)
  const planes = oneCell(plane)
  return twelveDays(site, { planes, skyView: openSky(planes), albedo: site.albedo, litAt: undefined })
}

/**
 * Sun on one tilted place with nothing around it on one clear day.
 *
 * @param plane - slope [°], 0 to below 90, and aspect faced, clockwise from true north [°]
 * @param plane.slopeDeg - steepness [°]
 * @param plane.aspectDeg - direction faced [°]
 * @param choice - place, air, day and time step
 * @returns the same as for ground, with grids of one cell
 */
export function dayOnPlane(plane: { slopeDeg: number; aspectDeg: number }, choice: DayChoice): DayOnGround {
  const planes = oneCell(plane)
  return collectDay(sunSteps(choice), {
    planes,
    skyView: openSky(planes),
    albedo: choice.albedo,
    litAt: undefined,
  })
}

function oneCell({ slopeDeg, aspectDeg }: { slopeDeg: number; aspectDeg: number }) {
  return cellPlanes({ slopeDeg: Float64Array.of(slopeDeg), aspectDeg: Float64Array.of(aspectDeg) })
}

function twelveDays(site: SunSite, on: Collecting): SunOnGround {
  const choices = eachMonth((month) => ({
    ...site,
    linke: typeof site.linke === 'number' ? site.linke : site.linke[month],
    dayOfYear: representativeDays[month],
  }))
  const steps = eachMonth((month) => sunSteps(choices[month]))
  const sky = seenSky(on)
  const days = eachMonth((month) => collectDay(steps[month], on, sky))
  const pick = (name: keyof DayOnGround): Twelve<Float32Array> => eachMonth((month) => days[month][name])
  return {
    sunHours: pick('sunHours'),
    beamWhPerM2: pick('beamWhPerM2'),
    diffuseWhPerM2: pick('diffuseWhPerM2'),
    reflectedWhPerM2: pick('reflectedWhPerM2'),
    skyView: on.skyView,
    openLevel: eachMonth((month) => openLevelDay(choices[month], steps[month])),
  }
}

// Open level ground, by the same steps.
function openLevelDay({ dayOfYear, albedo }: DayChoice, steps: readonly SunStep[]): OpenLevelDay {
  const planes = oneCell({ slopeDeg: 0, aspectDeg: 0 })
  const day = collectDay(steps, { planes, skyView: openSky(planes), albedo, litAt: undefined })
  return {
    dayOfYear,
    sunHours: day.sunHours[0]!,
    beamWhPerM2: day.beamWhPerM2[0]!,
    diffuseWhPerM2: day.diffuseWhPerM2[0]!,
  }
}
