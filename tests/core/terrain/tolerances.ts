/** How far terrain figures may lie from the truth; may only tighten. */
export const tolerances = {
  /** Exact planes [°]: rounding of doubles. */
  planeDeg: 1e-9,
  /** Horn slope against GRASS [°]: its file prints 4 decimals. */
  grassSlopeDeg: 5.0e-5,
  /** Horn aspect against GRASS [°]: its file prints 3 decimals. */
  grassAspectDeg: 5.0e-4,
  /** Filled level against SAGA [m]. */
  filledM: 0.001,
  /** Topographic position against SAGA [m]: 1 mm. */
  standingM: 0.001,
  /** The quick power 1.1 of a drop against the exact one [share of the exact figure]. */
  power: 1e-13,
  /** Freeman's shares worked to five decimals. */
  share: 5e-6,
  /** Least rank correlation of accumulation and wetness with other programs; they agree with one another to 0.82-0.99. */
  rank: 0.85,
  /** Sphere's curvature from 1 m cells on a radius of 200 m [share of the exact figure]. */
  curvature: 0.005,
  /** The same in cells at the border, which take their neighbours' second derivatives [share of the exact figure]. */
  borderCurvature: 0.01,
  /** A pointed corner of a plot: its cell is cut by two sides, and cells beyond it hold none of it [cells]. */
  cornerCells: 2,
  /** Upslope area on a cone: squares for a round hill, water spread over whole neighbours [share of the exact figure]. */
  cone: 0.07,
} as const
