import type { PlanPoint, Ring } from '#core/geometry'
import type { GridSurvey, GroundSurvey, LevelsSurvey } from '#core/survey'
import type { Problem } from '#core/units'
import type { LevelColumns, TextTable } from '#io'

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
  /** Side of a cell northwards where it differs from `grid.cellM`, which then is the side eastwards. */
  readonly cellNorth?: number | undefined
}

/** Where on the globe a file's coordinates belong. */
export interface FileCrs {
  /** As the file says it. */
  readonly name: string
  readonly epsg: number | undefined
  /** Definition that proj4 understands; undefined when it is not known here. */
  readonly definition: string | undefined
}

/** What a doubt is about, so that an answer to it is recognised. */
export type DoubtAbout = 'unit' | 'columns' | 'decimals' | 'levels' | 'places' | 'crs'

/** Something that looks wrong and must be asked; `mend` says how to answer. */
export interface Doubt extends Problem {
  readonly about?: DoubtAbout
}

/** A table as read, and which column is taken to hold what until the person has confirmed it. */
export interface ReadTable extends TextTable {
  readonly reading: LevelColumns
  /** Whether the headings say it; when not, the reading must be asked. */
  readonly headed: boolean
  /** Usual orders of columns that would fit, the likeliest first. */
  readonly orders: readonly { readonly name: string; readonly columns: LevelColumns }[]
}

/** What a survey file was understood to hold, before anything is kept. Coordinates are the file's own. */
export interface SurveyRead {
  readonly format: SurveyFormat
  readonly parts: readonly SurveyPart[]
  /** Unit the file names; undefined when it names none and the person must say. */
  readonly unit: LengthUnit | undefined
  /** Unit of levels where the file names another one for them. */
  readonly levelUnit?: LengthUnit | undefined
  readonly crs: FileCrs | undefined
  /** East and north are longitude and latitude [°]; `unit` is then that of the levels alone. */
  readonly inDegrees?: boolean
  /** The table that the points came from, when it was one. */
  readonly table?: ReadTable
  /** What was left out or put right, a sentence each. */
  readonly notes: readonly string[]
  /** What looks wrong and must be asked: a unit that does not fit, levels of zero, columns that may be swapped. */
  readonly doubts: readonly Doubt[]
}

/** What the person confirmed of a file. */
export interface SurveyWish {
  /** Parts to take together; one for surfaces and grids. */
  readonly partIds: readonly string[]
  readonly unit: LengthUnit
  /** Unit of levels where it is another one. */
  readonly levelUnit?: LengthUnit | undefined
  /** EPSG code the person gives when the file tells none, or a wrong one. */
  readonly epsg?: number | undefined
  /** Whether east and north are longitude and latitude [°]; as the file says when left out. */
  readonly inDegrees?: boolean | undefined
  /** Whether points with a level of exactly zero are ground; kept when left out. */
  readonly zeroLevels?: 'keep' | 'leave-out' | undefined
  /** Part of a grid to keep, in the file's own coordinates; all of it when left out. */
  readonly window?: SurveyWindow | undefined
}

/** A box in the file's own coordinates. */
export interface SurveyWindow {
  readonly west: number
  readonly south: number
  readonly east: number
  readonly north: number
}

/** Ground in the plot's own frame and in metres, ready to be kept. */
export interface SurveyGround {
  readonly ground: GroundSurvey
  readonly boundary: Ring | undefined
  /** What was taken off the file's coordinates [m]; undefined when they are near their origin already. */
  readonly shift: PlanPoint | undefined
  /** Middle of the survey on the globe; undefined when the file does not tell and the person must. */
  readonly site: { readonly latitudeDeg: number; readonly longitudeDeg: number } | undefined
  readonly notes: readonly string[]
}
