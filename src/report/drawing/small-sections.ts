import type { Findings, FurtherSection } from '#plan'
import { polyline, outline, type Px } from './path'

/** One further section, laid on a strip of its own. */
export interface SmallSection {
  readonly id: string
  readonly name: string
  readonly heightPx: number
  /** The ground, and the earth under it. */
  readonly ground: string
  readonly earth: string
  readonly lengthM: number
  readonly fallM: number
  readonly steepestDeg: number
  /** Letters of the zones it crosses, where each begins and how steep it is on the way. */
  readonly zones: readonly SmallZone[]
  readonly endPx: number
}

/** A stretch of a section in one zone. */
interface SmallZone {
  readonly key: string
  readonly letter: string
  readonly fromPx: number
  readonly toPx: number
  readonly slopeDeg: number
}

/** Room at both ends, over the highest ground, and for earth and letters under the lowest [px]. */
const ROOM = { leftPx: 34, rightPx: 70, overPx: 16, underPx: 38 }

/** Earth drawn under the lowest ground [px]. */
const EARTH_PX = 16

/** A strip is not drawn taller than this; all are then drawn smaller together [px]. */
const TALLEST_PX = 110

/** Short sections are not blown up beyond this [px for a metre]. */
const LARGEST_PX_PER_M = 24

/** All further sections at one true scale, so that they can be compared. */
export interface SmallSections {
  readonly sections: readonly SmallSection[]
  readonly pxPerM: number
}

/**
 * Lays the further sections of a plot one under the other, at one scale, heights true to lengths.
 *
 * @param findings - what was derived from the plan
 * @param widthPx - width of the drawing [px], 200 or more
 */
export function smallSections(findings: Findings, widthPx: number): SmallSections {
  const { sections } = findings
  const longestM = Math.max(0.1, ...sections.map(({ section }) => section.lengthM))
  const greatestFallM = Math.max(0.1, ...sections.map(fallOf))
  const pxPerM = Math.min(
    (widthPx - ROOM.leftPx - ROOM.rightPx) / longestM,
    TALLEST_PX / greatestFallM,
    LARGEST_PX_PER_M,
  )
  return { sections: sections.map((section) => laid(section, findings, pxPerM)), pxPerM }
}

function fallOf({ section }: FurtherSection): number {
  const levels = section.stations.map(({ levelM }) => levelM)
  return Math.max(...levels) - Math.min(...levels)
}

function laid({ id, name, section }: FurtherSection, findings: Findings, pxPerM: number): SmallSection {
  const lowestM = Math.min(...section.stations.map(({ levelM }) => levelM))
  const fallM = fallOf({ id, name, section })
  const heightPx = Math.ceil(ROOM.overPx + fallM * pxPerM + ROOM.underPx)
  const footPx = heightPx - ROOM.underPx
  const points = section.stations.map(({ distanceM, levelM }): Px => ({
    xPx: ROOM.leftPx + distanceM * pxPerM,
    yPx: footPx - (levelM - lowestM) * pxPerM,
  }))
  const basePx = footPx + EARTH_PX
  const [first, last] = [points[0], points.at(-1)]
  const under =
    first && last
      ? [
          { ...last, yPx: basePx },
          { ...first, yPx: basePx },
        ]
      : []
  return {
    id,
    name,
    heightPx,
    ground: polyline(points),
    earth: outline([...points, ...under]),
    lengthM: section.lengthM,
    fallM,
    steepestDeg: Math.max(...section.stations.map(({ slopeDeg }) => slopeDeg)),
    zones: zonesAlong(section, findings, pxPerM),
    endPx: ROOM.leftPx + section.lengthM * pxPerM,
  }
}

/** Runs of stations in one zone, each with its mean slope. */
function zonesAlong(section: FurtherSection['section'], { zoning }: Findings, pxPerM: number): SmallZone[] {
  const runs: { index: number; fromM: number; toM: number; slopes: number[] }[] = []
  for (const { distanceM, cell, slopeDeg } of section.stations) {
    const index = zoning.zoneOfCell[cell] ?? -1
    const run = runs.at(-1)
    if (run) run.toM = distanceM
    if (run?.index === index) run.slopes.push(slopeDeg)
    else runs.push({ index, fromM: distanceM, toM: distanceM, slopes: [slopeDeg] })
  }
  return runs.flatMap(({ index, fromM, toM, slopes }, at) => {
    const zone = zoning.zones[index]
    if (!zone || toM === fromM) return []
    return [
      {
        key: `${at}-${zone.id}`,
        letter: zone.letter,
        fromPx: ROOM.leftPx + fromM * pxPerM,
        toPx: ROOM.leftPx + toM * pxPerM,
        slopeDeg: slopes.reduce((sum, slope) => sum + slope, 0) / slopes.length,
      },
    ]
  })
}
