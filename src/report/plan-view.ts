import { contoursOf, contourStepM } from '#core/terrain'
import type { Findings, Plan } from '#plan'
import { planMarked } from './plan-marked'
import { planWater } from './plan-water'
import type { ContourLine, Hachure, PlanView } from './section-view.types'

/** Every fifth contour is drawn heavier. */
const MAIN_EVERY = 5

/** Most hachures along the longer side of the plot [count]. */
const HACHURES_ACROSS = 26

/** Flatter ground carries no hachures [°]. */
const LEAST_HACHURE_DEG = 2

/**
 * Everything that the small plan shows.
 *
 * @param plan - the plan
 * @param findings - what was derived from it
 */
export function planView(plan: Plan, findings: Findings): PlanView {
  const { surface, terrain, zoning } = findings
  const stepM = contourStepM(surface.fallM)
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
    crowns: findings.standing.flatMap(({ id, crowns }) =>
      crowns.map(({ at, radiusM }) => ({ id, at, radiusM })),
    ),
    contours: contourLines(findings, stepM),
    contourStepM: stepM,
    hachures: hachuresOf(findings),
    marked: planMarked(plan, surface.boundary),
    water: planWater(findings),
  }
}

function contourLines({ surface, terrain }: Findings, stepM: number): ContourLine[] {
  return contoursOf(surface, terrain, stepM).map(({ levelM, lines }) => ({
    levelM,
    main: Math.round(levelM / stepM) % MAIN_EVERY === 0,
    rings: lines,
  }))
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
