import { cellAt, cellCentre, centroid, cutLine, pointInRing, type PlanPoint } from '#core/geometry'
import type { Surface } from '#core/survey'
import { toDegrees, toRadians } from '#core/units'
import type { Gradients } from './gradients'
import { levelAtM } from './level-at'
import type { Section, SectionStation } from './terrain.types'

/** Most pieces a section is cut into [count]. */
const MOST_PIECES = 400

/** Direction of the cut when the plot falls nowhere, from north to south [°]. */
const LEVEL_CUT_DEG = 180

/** Where the person wants the section. */
export interface SectionLine {
  readonly from: PlanPoint
  readonly to: PlanPoint
}

/** What the stations of a section are read from. */
export interface CutGround {
  readonly surface: Surface
  readonly slopes: Gradients
  readonly slopeDeg: Float64Array
}

/**
 * The cut through the ground from its top to its foot: along the fall of the whole plot through its middle, or where
 * the person wants it, clipped to the boundary, the higher end first.
 *
 * @param ground - levels, gradients and slope of every cell
 * @param line - where the person wants it; the line of fall when undefined
 * @returns the section, stations about a cell apart
 * @throws RangeError when the line misses the plot
 */
export function sectionOf(ground: CutGround, line: SectionLine | undefined): Section {
  const { surface } = ground
  const ends = line ? clipped(surface, line) : lineOfFall(surface)
  if (!ends) throw new RangeError('sectionOf: sectionLine must cross the plot, got one that misses it')
  const stations = stationsAlong(ground, ends)
  const [first, last] = [stations[0], stations[stations.length - 1]]
  if (line && first && last && last.levelM > first.levelM)
    return sectionBetween({ from: ends.to, to: ends.from }, ground)
  return { ...ends, lengthM: gapM(ends), stations }
}

function sectionBetween(ends: SectionLine, ground: CutGround): Section {
  return { ...ends, lengthM: gapM(ends), stations: stationsAlong(ground, ends) }
}

/**
 * The part of a wished section line inside the plot.
 *
 * @param surface - the ground
 * @param line - the line as drawn [m]
 * @returns the part between its first and last crossing of the boundary; undefined when it misses the plot
 */
export function clipped(surface: Surface, line: SectionLine): SectionLine | undefined {
  const lengthM = gapM(line)
  if (lengthM === 0) return undefined
  const bearingDeg = bearingOf(line)
  const spans = cutLine(surface.boundary, line.from, bearingDeg).filter(
    (span) => span.toM > 0 && span.fromM < lengthM,
  )
  const [first, last] = [spans[0], spans[spans.length - 1]]
  if (!first || !last) return undefined
  return {
    from: along(line.from, bearingDeg, Math.max(0, first.fromM)),
    to: along(line.from, bearingDeg, Math.min(lengthM, last.toM)),
  }
}

function lineOfFall(surface: Surface): SectionLine | undefined {
  const middle = middleOf(surface)
  const bearingDeg = surface.facesDeg ?? LEVEL_CUT_DEG
  const spans = cutLine(surface.boundary, middle, bearingDeg)
  const span = spans.find(({ fromM, toM }) => fromM <= 0 && toM >= 0) ?? spans[0]
  if (!span) return undefined
  return { from: along(middle, bearingDeg, span.fromM), to: along(middle, bearingDeg, span.toM) }
}

// The centre of the plot, or the cell nearest to it when the plot is bent around its centre.
function middleOf(surface: Surface): PlanPoint {
  const centre = centroid(surface.boundary)
  if (pointInRing(centre, surface.boundary)) return centre
  let [nearest, nearestM] = [centre, Infinity]
  for (let cell = 0; cell < surface.share.length; cell++) {
    if (surface.share[cell] !== 1) continue
    const place = cellCentre(surface.frame, cell)
    const awayM = gapM({ from: centre, to: place })
    if (awayM < nearestM) [nearest, nearestM] = [place, awayM]
  }
  return nearest
}

function stationsAlong(ground: CutGround, ends: SectionLine): SectionStation[] {
  const lengthM = gapM(ends)
  const { frame } = ground.surface
  const pieces = Math.min(MOST_PIECES, Math.max(1, Math.round(lengthM / frame.cellM)))
  const bearingDeg = bearingOf(ends)
  const stations: SectionStation[] = []
  for (let piece = 0; piece <= pieces; piece++) {
    const distanceM = (piece / pieces) * lengthM
    const place = along(ends.from, bearingDeg, distanceM)
    const cell = plotCellAt(ground.surface, place, ends)
    if (cell === undefined) continue
    const levelM = levelAtM(ground.surface, ground.slopes, place, cell)
    stations.push({ ...place, distanceM, levelM, slopeDeg: ground.slopeDeg[cell] ?? 0, cell })
  }
  return stations
}

/** How far inwards to look for a cell of the plot from an end on the boundary [cells]. */
const INWARD_CELLS = 0.5

// An end lies on the boundary itself, so the cell under it may be the one outside.
function plotCellAt(surface: Surface, place: PlanPoint, ends: SectionLine): number | undefined {
  const under = cellAt(surface.frame, place)
  if (under !== undefined && surface.share[under]) return under
  const middle = {
    eastM: (ends.from.eastM + ends.to.eastM) / 2,
    northM: (ends.from.northM + ends.to.northM) / 2,
  }
  const inward = bearingOf({ from: place, to: middle })
  const inside = cellAt(surface.frame, along(place, inward, INWARD_CELLS * surface.frame.cellM))
  return inside !== undefined && surface.share[inside] ? inside : undefined
}

function along(from: PlanPoint, bearingDeg: number, distanceM: number): PlanPoint {
  const bearing = toRadians(bearingDeg)
  return {
    eastM: from.eastM + distanceM * Math.sin(bearing),
    northM: from.northM + distanceM * Math.cos(bearing),
  }
}

function bearingOf({ from, to }: SectionLine): number {
  return toDegrees(Math.atan2(to.eastM - from.eastM, to.northM - from.northM))
}

function gapM({ from, to }: SectionLine): number {
  return Math.hypot(to.eastM - from.eastM, to.northM - from.northM)
}
