import { levelsOf } from './level-doubts'
import { rangeOf } from './spread'
import type { SurveyPart, SurveyRead, SurveyWindow } from './survey-read.types'

/** One part of a survey file in figures, in the file's own coordinates and units. */
export interface PartSummary {
  readonly id: string
  readonly name: string
  readonly kind: SurveyPart['kind']
  readonly points: number
  readonly faces: number
  readonly breaklines: number
  /** Corners of the boundary, 0 when there is none. */
  readonly boundaryCorners: number
  /** Cells of a grid and their sides; undefined for points. */
  readonly cells:
    | { readonly columns: number; readonly rows: number; readonly east: number; readonly north: number }
    | undefined
  readonly extent: SurveyWindow | undefined
  readonly lowest: number | undefined
  readonly highest: number | undefined
  /** Cells without a level. */
  readonly empty: number
}

/**
 * What a survey file was understood to hold, in figures.
 *
 * @param read - the file
 * @returns a summary of each part
 */
export function surveySummary({ parts }: SurveyRead): PartSummary[] {
  return parts.map((part) => {
    const levels = levelsOf(part)
    const range = levels.length > 0 ? rangeOf(levels) : undefined
    const { grid } = part
    return {
      id: part.id,
      name: part.name,
      kind: part.kind,
      points: part.points.length,
      faces: part.faces.length,
      breaklines: part.breaklines.length,
      boundaryCorners: part.boundary?.length ?? 0,
      cells: grid && {
        columns: grid.columns,
        rows: grid.rows,
        east: grid.cellM,
        north: part.cellNorth ?? grid.cellM,
      },
      extent: extentOf(part),
      lowest: range?.lowest,
      highest: range?.highest,
      empty: grid ? grid.levelsM.length - levels.length : 0,
    }
  })
}

/**
 * What a part covers, in the file's own coordinates.
 *
 * @param part - points or a grid
 * @returns its box; undefined when it holds nothing
 */
export function extentOf(part: SurveyPart): SurveyWindow | undefined {
  const { grid, points, breaklines } = part
  if (grid)
    return {
      west: grid.westM,
      south: grid.southM,
      east: grid.westM + grid.columns * grid.cellM,
      north: grid.southM + grid.rows * (part.cellNorth ?? grid.cellM),
    }
  const places = [...points, ...breaklines.flatMap(({ vertices }) => vertices)]
  if (places.length === 0) return undefined
  const east = rangeOf(places.map(({ eastM }) => eastM))
  const north = rangeOf(places.map(({ northM }) => northM))
  return { west: east.lowest, south: north.lowest, east: east.highest, north: north.highest }
}
