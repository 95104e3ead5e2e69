import { contoursOf, contourStepM, terrainOf } from '#core/terrain'
import { contoursGeoJson } from '#io'
import { openPlan, plotSurface } from '#plan'
import type { Arguments } from './arguments'
import { complainOf, readText, writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'

/** Writes the contours of a plan as GeoJSON in the plot's own metres. */
export function contours(given: Arguments, console: Console): number {
  const [file] = given.words
  if (file === undefined) throw new UsageError('contours needs a plan.')
  const interval = given.number('interval')
  const opened = openPlan(readText(file))
  const surfaced = opened.ok ? plotSurface(opened.value) : opened
  if (!surfaced.ok) return complainOf(surfaced.problems, console)
  const surface = surfaced.value
  const stepM = interval ?? contourStepM(surface.fallM)
  if (!(stepM > 0 && surface.fallM / stepM <= MOST_CONTOURS))
    throw new UsageError(
      `--interval needs metres above 0 that make ${MOST_CONTOURS} contours at most on a fall of ${surface.fallM.toFixed(2)} m, not ${stepM}.`,
    )
  writeText(
    given.text('out'),
    contoursGeoJson(contoursOf(surface, terrainOf(surface), stepM), stepM),
    console,
  )
  return exitCodes.done
}

/** Most contours in one file [count]. */
const MOST_CONTOURS = 5000
