import type { GridFrame } from '#core/geometry'
import type { GridSurvey } from './survey.schema'

/** A grid of levels, some of them unknown. */
export interface LevelGrid {
  readonly frame: GridFrame
  /** Level of each cell [m]; read only where known. */
  readonly levelM: Float64Array
  /** 1 where the level is known. */
  readonly known: Uint8Array
}

/** Sides of an upright box [m]. */
interface Box {
  readonly westM: number
  readonly southM: number
  readonly eastM: number
  readonly northM: number
}

/**
 * The part of a grid survey within a box, widened to whole cells.
 *
 * @param survey - the grid, with as many levels as cells
 * @param box - the box [m]; the whole grid when undefined
 * @returns the part; undefined when the box misses the grid
 */
export function cropped(survey: GridSurvey, box: Box | undefined): LevelGrid | undefined {
  const { cellM, westM, southM } = survey
  const across = overlap(survey.columns, box && [box.westM - westM, box.eastM - westM], cellM)
  const up = overlap(survey.rows, box && [box.southM - southM, box.northM - southM], cellM)
  if (across.count <= 0 || up.count <= 0) return undefined
  const frame = {
    columns: across.count,
    rows: up.count,
    cellM,
    westM: westM + across.first * cellM,
    southM: southM + up.first * cellM,
  }
  return { frame, ...levelsWithin(survey, frame, across.first, survey.rows - up.first - up.count) }
}

// Cells of one direction that a stretch touches.
function overlap(cells: number, stretchM: readonly [number, number] | undefined, cellM: number) {
  if (!stretchM) return { first: 0, count: cells }
  const first = Math.max(0, Math.floor(stretchM[0] / cellM))
  return { first, count: Math.min(cells, Math.ceil(stretchM[1] / cellM)) - first }
}

function levelsWithin(survey: GridSurvey, frame: GridFrame, firstColumn: number, firstRow: number) {
  const levelM = new Float64Array(frame.columns * frame.rows)
  const known = new Uint8Array(levelM.length)
  for (let row = 0; row < frame.rows; row++)
    for (let column = 0; column < frame.columns; column++) {
      const level = survey.levelsM[(row + firstRow) * survey.columns + column + firstColumn]
      if (level === null || level === undefined) continue
      levelM[row * frame.columns + column] = level
      known[row * frame.columns + column] = 1
    }
  return { levelM, known }
}

/** A block counts as known when at least this share of its cells is [cells/cells]. */
const KNOWN_SHARE = 0.5

/**
 * A coarser grid: each new cell is the mean of a square block of known cells.
 *
 * @param grid - the grid
 * @param factor - cells along the side of a block [count], 1 or more
 * @returns the coarser grid, its north-west corner kept; the grid itself when the factor is 1
 */
export function coarser(grid: LevelGrid, factor: number): LevelGrid {
  if (factor === 1) return grid
  const { frame } = grid
  const columns = Math.ceil(frame.columns / factor)
  const rows = Math.ceil(frame.rows / factor)
  const cellM = frame.cellM * factor
  const levelM = new Float64Array(columns * rows)
  const known = new Uint8Array(columns * rows)
  for (let cell = 0; cell < levelM.length; cell++) {
    const block = blockMean(grid, (cell % columns) * factor, Math.floor(cell / columns) * factor, factor)
    if (block.known < KNOWN_SHARE * factor * factor) continue
    levelM[cell] = block.sumM / block.known
    known[cell] = 1
  }
  const northM = frame.southM + frame.rows * frame.cellM
  return { frame: { columns, rows, cellM, westM: frame.westM, southM: northM - rows * cellM }, levelM, known }
}

function blockMean(grid: LevelGrid, firstColumn: number, firstRow: number, factor: number) {
  const { columns, rows } = grid.frame
  let [known, sumM] = [0, 0]
  for (let row = firstRow; row < Math.min(rows, firstRow + factor); row++)
    for (let column = firstColumn; column < Math.min(columns, firstColumn + factor); column++) {
      const cell = row * columns + column
      if (!grid.known[cell]) continue
      known += 1
      sumM += grid.levelM[cell] ?? 0
    }
  return { known, sumM }
}
