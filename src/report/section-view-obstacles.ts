import type { PlanPoint } from '#core/geometry'
import type { Section } from '#core/terrain'
import type { Standing } from '#core/shade'
import type { Obstacle } from '#plan'
import { standingShape } from './section-view-standing'
import type { SectionObstacle, Stretch } from './section-view.types'

/** Ground shown beyond each end of the plot: at least, and for things that stand there [share of the length]. */
const MARGIN_SHARE = { least: 0.04, most: 0.14 }

/** Things beside the line are projected onto it from no further than this [m]. */
const REACH_M: Readonly<Partial<Record<Obstacle['kind'], number>>> = {
  house: 8,
  building: 8,
  tree: 4,
  hedge: 1.5,
}
const USUAL_REACH_M = 2

/** Half the width that a line is drawn with where only a line was surveyed [m]; our judgement. */
const HALF_WIDTH_M: Readonly<Partial<Record<Obstacle['kind'], number>>> = {
  wall: 0.2,
  hedge: 0.4,
  path: 0.6,
  paving: 0.6,
}

/** A place as seen from the section: along it from the top edge, and to its left [m]. */
interface AlongAcross {
  readonly alongM: number
  readonly acrossM: number
}

/** The line that things are seen from. */
interface Sight {
  readonly section: Section
  /** Things as they stand in the light. */
  readonly standing: readonly Standing[]
  /** Level of height 0 of the section [m]. */
  readonly footLevelM: number
}

/** What stands on, under or near the section. */
export function obstaclesOn(sight: Sight, obstacles: readonly Obstacle[]): SectionObstacle[] {
  const { section } = sight
  const marginM = section.lengthM * MARGIN_SHARE.most
  return obstacles
    .flatMap((obstacle) => met(sight, obstacle))
    .filter((obstacle) => obstacle.toM >= -marginM && obstacle.fromM <= section.lengthM + marginM)
}

/** The stretch drawn: the section, and what stands just outside it. */
export function drawnStretch(lengthM: number, obstacles: readonly SectionObstacle[]): Stretch {
  const least = lengthM * MARGIN_SHARE.least
  const most = lengthM * MARGIN_SHARE.most
  const air = lengthM * 0.02
  const firstM = Math.min(...obstacles.map((obstacle) => obstacle.fromM - air), 0)
  const lastM = Math.max(...obstacles.map((obstacle) => obstacle.toM + air), lengthM)
  return {
    fromM: Math.max(-most, Math.min(-least, firstM)),
    toM: Math.min(lengthM + most, Math.max(lengthM + least, lastM)),
  }
}

function met({ section, standing, footLevelM }: Sight, obstacle: Obstacle): SectionObstacle[] {
  const corners = obstacle.ring.map((point) => fromSection(section, point))
  const crossings = crossingsOf(corners, isOutline(obstacle))
  const reachM = REACH_M[obstacle.kind] ?? USUAL_REACH_M
  const near = Math.min(...corners.map((corner) => Math.abs(corner.acrossM))) <= reachM
  if (crossings.length === 0 && !near) return []
  const alongs = crossings.length > 0 ? crossings : corners.map((corner) => corner.alongM)
  const stands = standing.find(({ id }) => id === obstacle.id)
  const half = (HALF_WIDTH_M[obstacle.kind] ?? 0) * (Math.max(...alongs) === Math.min(...alongs) ? 1 : 0)
  return [
    {
      id: obstacle.id,
      kind: obstacle.kind,
      name: obstacle.name,
      heightM: obstacle.heightM,
      fromM: Math.min(...alongs) - half,
      toM: Math.max(...alongs) + half,
      cut: crossings.length > 0,
      standing: stands && standingShape(stands, section, footLevelM),
    },
  ]
}

function fromSection({ from, to, lengthM }: Section, point: PlanPoint): AlongAcross {
  const [eastward, northward] = [(to.eastM - from.eastM) / lengthM, (to.northM - from.northM) / lengthM]
  const [eastM, northM] = [point.eastM - from.eastM, point.northM - from.northM]
  return {
    alongM: eastM * eastward + northM * northward,
    acrossM: northM * eastward - eastM * northward,
  }
}

/** Surveyed along their middle, however many corners they have. */
const LINES: readonly Obstacle['kind'][] = ['wall', 'fence', 'hedge', 'path', 'drain', 'services', 'downpipe']

/** Houses, paving, crowns and wet places of three corners or more are outlines; a bent wall is not. */
export function isOutline({ kind, ring }: Obstacle): boolean {
  return ring.length > 2 && !LINES.includes(kind)
}

/** Where a line or closed outline crosses the section. */
function crossingsOf(corners: readonly AlongAcross[], closed: boolean): number[] {
  return corners.flatMap((corner, at) => {
    const next = corners[at + 1] ?? (closed ? corners[0] : undefined)
    if (!next || corner.acrossM > 0 === next.acrossM > 0) return []
    const share = corner.acrossM / (corner.acrossM - next.acrossM)
    return [corner.alongM + share * (next.alongM - corner.alongM)]
  })
}
