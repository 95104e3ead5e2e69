import type { GridSurvey, LevelsSurvey } from '#core/survey'
import type { Problem } from '#core/units'

/** Formats of survey files that can be read. */
export type SurveyFormat = 'table' | 'geojson' | 'ascii-grid' | 'geotiff' | 'landxml' | 'dxf'

/** Units a length may be written in. The US survey foot is 1200/3937 m, the foot of 1959 is 0.3048 m. */
export type LengthUnit = 'm' | 'cm' | 'mm' | 'ft' | 'us-ft' | 'in'

/** One thing in a file that can become the ground of a plan, in the file's own coordinates and unit. */
export interface SurveyPart {
  readonly id: string
  /** Name as in the file: of a surface, a layer, a group of points. */
  readonly name: string
  readonly kind: 'points' | 'surface' | 'grid'
  /** Points with east and north in the right order; empty for a grid. */
  readonly points: LevelsSurvey['points']
  readonly faces: NonNullable<LevelsSurvey['faces']>
  readonly breaklines: NonNullable<LevelsSurvey['breaklines']>
  readonly boundary: readonly { readonly eastM: number; readonly northM: number }[] | undefined
  readonly grid: GridSurvey | undefined
}

/** Where on the globe a file's coordinates belong. */
export interface FileCrs {
  /** As the file says it. */
  readonly name: string
  readonly epsg: number | undefined
  /** Definition that proj4 understands; undefined when it is not known here. */
  readonly definition: string | undefined
}

/** What a survey file was understood to hold, before anything is kept. Coordinates are the file's own. */
export interface SurveyRead {
  readonly format: SurveyFormat
  readonly parts: readonly SurveyPart[]
  /** Unit the file names; undefined when it names none and the person must say. */
  readonly unit: LengthUnit | undefined
  readonly crs: FileCrs | undefined
  /** What was left out or put right, a sentence each. */
  readonly notes: readonly string[]
  /** What looks wrong and must be asked: a unit that does not fit, levels of zero, columns that may be swapped. */
  readonly doubts: readonly Problem[]
}

/** What the person confirmed of a file. */
export interface SurveyWish {
  /** Parts to take together; one for surfaces and grids. */
  readonly partIds: readonly string[]
  readonly unit: LengthUnit
  /** Unit of levels where it is another one. */
  readonly levelUnit?: LengthUnit | undefined
}
