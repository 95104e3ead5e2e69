import type { Job, JobMark } from '#core/care'
import { n, outline, polyline } from '../../drawing/path'

/** What each mark stands for, in the order of the key. */
export const markWords: Readonly<Record<JobMark, string>> = {
  mow: 'mow',
  cut: 'cut and trim',
  weed: 'weed by hand',
  plant: 'plant',
  rake: 'rake and clear',
  look: 'look and water',
}

/** A mark drawn about its own middle; `areaPx2` is the area it covers, ring and diamond to their outline. */
export interface DrawnMark {
  readonly d: string
  /** Half its width and height [px]. */
  readonly reachPx: number
  readonly solid: boolean
}

/** A cross's arms are a quarter as wide as they are long. */
const ARM_SHARE = 0.25

/** Area of a cross over the square of its length: two arms, less their overlap. */
const CROSS_AREA = 2 * ARM_SHARE - ARM_SHARE ** 2

/** The mark of a kind of work with a given area [px²]. */
export function drawnMark(mark: JobMark, areaPx2: number): DrawnMark {
  const radius = Math.sqrt(areaPx2 / Math.PI)
  switch (mark) {
    case 'mow':
      return { d: disc(radius), reachPx: radius, solid: true }
    case 'plant':
      return {
        d: disc(radius) + disc(radius * 0.22),
        reachPx: radius,
        solid: false,
      }
    case 'cut':
      return triangle(areaPx2)
    case 'weed':
      return cross(areaPx2)
    case 'rake': {
      const half = Math.sqrt((2 * areaPx2) / Math.PI)
      return {
        d: `M${n(-half)} ${n(half / 2)}A${n(half)} ${n(half)} 0 0 1 ${n(half)} ${n(half / 2)}Z`,
        reachPx: half,
        solid: true,
      }
    }
    case 'look': {
      const half = Math.sqrt(areaPx2 / 2)
      return {
        d: outline([
          { xPx: 0, yPx: -half },
          { xPx: half, yPx: 0 },
          { xPx: 0, yPx: half },
          { xPx: -half, yPx: 0 },
        ]),
        reachPx: half,
        solid: false,
      }
    }
  }
}

/** Two half turns; to the hundredth, so that they meet. */
function disc(radiusPx: number): string {
  const r = Math.round(radiusPx * 100) / 100
  return `M${-r} 0A${r} ${r} 0 0 1 ${r} 0A${r} ${r} 0 0 1 ${-r} 0Z`
}

/** Equal sides. */
function triangle(areaPx2: number): DrawnMark {
  const side = Math.sqrt((4 * areaPx2) / Math.sqrt(3))
  const tall = (side * Math.sqrt(3)) / 2
  return {
    d: outline([
      { xPx: 0, yPx: -tall / 2 },
      { xPx: side / 2, yPx: tall / 2 },
      { xPx: -side / 2, yPx: tall / 2 },
    ]),
    reachPx: side / 2,
    solid: true,
  }
}

function cross(areaPx2: number): DrawnMark {
  const half = Math.sqrt(areaPx2 / CROSS_AREA) / 2
  const arm = half * ARM_SHARE
  const corner = (xPx: number, yPx: number) => ({ xPx, yPx })
  const points = [
    corner(-arm, -half),
    corner(arm, -half),
    corner(arm, -arm),
    corner(half, -arm),
    corner(half, arm),
    corner(arm, arm),
    corner(arm, half),
    corner(-arm, half),
    corner(-arm, arm),
    corner(-half, arm),
    corner(-half, -arm),
    corner(-arm, -arm),
  ]
  return { d: `${polyline(points)}Z`, reachPx: half, solid: true }
}

/** Air between marks [px]. */
const GAP_PX = 3

/** Largest area for an hour [px² per h], and how it shrinks until every cell holds its marks. */
const LARGEST_PX2_PER_H = 900
const SHRINK = 0.94
const LEAST_PX2_PER_H = 1

export interface PlacedMark extends DrawnMark {
  readonly job: Job
  readonly xPx: number
  readonly yPx: number
  readonly areaPx2: number
}

/** A cell of the year with the jobs in it. */
export interface JobCell {
  readonly jobs: readonly Job[]
  readonly leftPx: number
  readonly topPx: number
  readonly widthPx: number
  readonly heightPx: number
}

/** A mark beside written words, with the room it has [px]. */
export interface WrittenMark {
  readonly job: Job
  readonly roomPx: number
}

/** One area for an hour over the whole year, so that marks can be compared: the largest that fits every cell. */
export function areaPerHour(cells: readonly JobCell[], written: readonly WrittenMark[] = []): number {
  let area = LARGEST_PX2_PER_H
  const tooLarge = () =>
    cells.some((cell) => !fits(cell, area)) ||
    written.some(({ job, roomPx }) => drawnMark(job.mark, job.hours * area).reachPx * 2 > roomPx)
  while (area > LEAST_PX2_PER_H && tooLarge()) area *= SHRINK
  return area
}

function fits(cell: JobCell, areaPx2PerHour: number): boolean {
  const rows = rowsOf(cell, areaPx2PerHour)
  const tall = rows.reduce((sum, row) => sum + row.tallPx, 0) + GAP_PX * Math.max(0, rows.length - 1)
  return tall <= cell.heightPx - GAP_PX * 2 && rows.every(({ widthPx }) => widthPx <= cell.widthPx - GAP_PX)
}

interface MarkRow {
  readonly marks: readonly (DrawnMark & { readonly job: Job; readonly areaPx2: number })[]
  readonly widthPx: number
  readonly tallPx: number
}

function rowsOf(cell: JobCell, areaPx2PerHour: number): MarkRow[] {
  const rows: MarkRow[] = []
  for (const job of cell.jobs) {
    const areaPx2 = job.hours * areaPx2PerHour
    const mark = { ...drawnMark(job.mark, areaPx2), job, areaPx2 }
    const last = rows.at(-1)
    const widthPx = (last?.widthPx ?? 0) + GAP_PX + mark.reachPx * 2
    if (last && widthPx <= cell.widthPx - GAP_PX)
      rows[rows.length - 1] = {
        marks: [...last.marks, mark],
        widthPx,
        tallPx: Math.max(last.tallPx, mark.reachPx * 2),
      }
    else rows.push({ marks: [mark], widthPx: mark.reachPx * 2, tallPx: mark.reachPx * 2 })
  }
  return rows
}

/** Marks of a cell in rows about its middle; no two touch. */
export function placedMarks(cell: JobCell, areaPx2PerHour: number): PlacedMark[] {
  const rows = rowsOf(cell, areaPx2PerHour)
  const tall = rows.reduce((sum, row) => sum + row.tallPx, 0) + GAP_PX * Math.max(0, rows.length - 1)
  let topPx = cell.topPx + (cell.heightPx - tall) / 2
  return rows.flatMap((row) => {
    let leftPx = cell.leftPx + (cell.widthPx - row.widthPx) / 2
    const yPx = topPx + row.tallPx / 2
    topPx += row.tallPx + GAP_PX
    return row.marks.map((mark) => {
      const xPx = leftPx + mark.reachPx
      leftPx += mark.reachPx * 2 + GAP_PX
      return { ...mark, xPx, yPx }
    })
  })
}
