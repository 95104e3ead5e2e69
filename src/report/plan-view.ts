import { contours } from 'd3-contour'
import type { PlanPoint } from '#core/geometry'
import type { Surface } from '#core/survey'
import type { Findings, Plan } from '#plan'
import { planMarked } from './plan-marked'
import { planWater } from './plan-water'
import type { ContourLine, Hachure, PlanView } from './section-view.types'

/** Level differences between contours that a reader expects [m]. */
const STEPS_M = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50] as const
const MOST_CONTOURS = 14
const MAIN_EVERY = 5

/** Most hachures along the longer side of the plot [count]. */
const HACHURES_ACROSS = 26

/** Flatter ground carries no hachures [°]. */
const LEAST_HACHURE_DEG = 2

/** Rows of cells that are carried outwards over the boundary, so that contours run up to it. */
const PAD = 2

/**
 * Everything that the small plan shows.
 *
 * @param plan - the plan
 * @param findings - what was derived from it
 */
export function planView(plan: Plan, findings: Findings): PlanView {
  const { surface, terrain, zoning } = findings
  const stepM =
    STEPS_M.find((step) => surface.fallM / step <= MOST_CONTOURS) ?? STEPS_M[STEPS_M.length - 1] ?? 1
  return {
    boundary: surface.boundary,
    section: { from: terrain.section.from, to: terrain.section.to, lengthM: terrain.section.lengthM },
    zones: zoning.zones.map((zone) => ({
      id: zone.id,
      letter: zone.letter,
      ring: zone.ring,
      mowing: findings.zones.find((each) => each.zoneId === zone.id)?.cover.mowing ?? 'leave',
    })),
    obstacles: plan.survey.obstacles,
    contours: contourLines(surface, stepM),
    contourStepM: stepM,
    hachures: hachuresOf(findings),
    marked: planMarked(plan, surface.boundary),
    water: planWater(findings),
  }
}

function contourLines(surface: Surface, stepM: number): ContourLine[] {
  const { columns, rows, levels } = padded(surface)
  const first = Math.ceil(surface.lowestM / stepM)
  const last = Math.floor(surface.highestM / stepM)
  const thresholds = Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => (first + at) * stepM)
  return contours()
    .size([columns, rows])
    .thresholds(thresholds)(levels)
    .map(({ value, coordinates }) => ({
      levelM: value,
      main: Math.round(value / stepM) % MAIN_EVERY === 0,
      rings: coordinates.flatMap((polygon) =>
        polygon.map((ring) => ring.map(([x = 0, y = 0]) => inPlan(surface, x, y))),
      ),
    }))
}

/** Grid corners count from the north-west; the padded grid starts PAD cells further out. */
function inPlan({ frame }: Surface, x: number, y: number): PlanPoint {
  return {
    eastM: frame.westM + (x - PAD) * frame.cellM,
    northM: frame.southM + (frame.rows - (y - PAD)) * frame.cellM,
  }
}

/** Levels with the plot's edge carried outwards: the nearest known level in the same pass. */
function padded({ frame, levelM, share }: Surface): { columns: number; rows: number; levels: number[] } {
  const [columns, rows] = [frame.columns + PAD * 2, frame.rows + PAD * 2]
  const known = new Array<number>(columns * rows).fill(Number.NaN)
  for (let row = 0; row < frame.rows; row++)
    for (let column = 0; column < frame.columns; column++) {
      const cell = row * frame.columns + column
      if ((share[cell] ?? 0) > 0) known[(row + PAD) * columns + column + PAD] = levelM[cell] ?? Number.NaN
    }
  const passes = Math.max(columns, rows)
  let levels = known
  for (let pass = 0; pass < passes && levels.some(Number.isNaN); pass++) levels = grown(levels, columns)
  return { columns, rows, levels }
}

function grown(levels: readonly number[], columns: number): number[] {
  return levels.map((level, at) => {
    if (!Number.isNaN(level)) return level
    const column = at % columns
    const beside = [
      column > 0 ? levels[at - 1] : undefined,
      column < columns - 1 ? levels[at + 1] : undefined,
      levels[at - columns],
      levels[at + columns],
    ].filter((value): value is number => value !== undefined && !Number.isNaN(value))
    return beside.length === 0 ? level : beside.reduce((sum, value) => sum + value, 0) / beside.length
  })
}

function hachuresOf({ surface, terrain }: Findings): Hachure[] {
  const { columns, rows, cellM, westM, southM } = surface.frame
  const every = Math.max(1, Math.round(Math.max(columns, rows) / HACHURES_ACROSS))
  const hachures: Hachure[] = []
  for (let row = Math.floor(every / 2); row < rows; row += every)
    for (let column = Math.floor(every / 2); column < columns; column += every) {
      const cell = row * columns + column
      const slopeDeg = terrain.slopeDeg[cell] ?? 0
      const fallsDeg = terrain.aspectDeg[cell] ?? -1
      if ((surface.share[cell] ?? 0) < 0.5 || slopeDeg < LEAST_HACHURE_DEG || fallsDeg < 0) continue
      const at = { eastM: westM + (column + 0.5) * cellM, northM: southM + (rows - row - 0.5) * cellM }
      hachures.push({ at, fallsDeg, slopeDeg })
    }
  return hachures
}
