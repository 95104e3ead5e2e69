/** How near our errors must come to simulated ones, and why no nearer. May only be tightened. */
export const tolerances = {
  /** Relative sampling error of a standard deviation of n runs is 1/√(2n) (Heuvelink et al. 1989); so many of them are allowed. */
  samplingErrors: 4,
  /** Cells of one simulation share their points, so the mean of their ratios is hardly better known than one cell's. */
  samplingErrorsOfMean: 3,
  /** The stated slope error holds the error across the fall to the second order, which the simulated gradient down the fall leaves out, relative. */
  acrossTheFall: 0.05,
} as const

/** Relative sampling error of a standard deviation from some runs [1]. */
export const samplingError = (runs: number): number => 1 / Math.sqrt(2 * runs)
