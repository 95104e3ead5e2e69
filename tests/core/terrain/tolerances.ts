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
  /** Freeman's shares worked to five decimals. */
  share: 5e-6,
  /** Least rank correlation of accumulation and wetness with other programs; they agree with one another to 0.82-0.99. */
  rank: 0.85,
  /** Sphere's curvature from 1 m cells on a radius of 200 m [share of the exact figure]. */
  curvature: 0.005,
  /** A pointed corner of a plot: its cell is cut by two sides, and cells beyond it hold none of it [cells]. */
  cornerCells: 2,
  /** Upslope area on cones, a grid of squares for a round hill [share of the exact figure, mean round the ring]. */
  cone: 0.05,
} as const
