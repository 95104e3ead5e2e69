/** A place in the plot's own frame: metres east and north of its origin. */
export interface PlanPoint {
  readonly eastM: number
  readonly northM: number
}

/** A place with its level. */
export interface LevelPoint extends PlanPoint {
  /** Height above the plot's datum [m]. */
  readonly levelM: number
}

/** A closed outline, first point not repeated, in either sense of turning. */
export type Ring = readonly PlanPoint[]

/**
 * Where a regular grid lies. Cells are square; row 0 is the northernmost, column 0 the westernmost; a cell's
 * index is row × columns + column.
 */
export interface GridFrame {
  readonly columns: number
  readonly rows: number
  /** Side of a cell [m]. */
  readonly cellM: number
  /** East of the west edge [m]. */
  readonly westM: number
  /** North of the south edge [m]. */
  readonly southM: number
}

/** A triangulated surface: corner indices into `points`, three to a triangle. */
export interface Tin {
  readonly points: readonly LevelPoint[]
  readonly corners: Uint32Array
}
