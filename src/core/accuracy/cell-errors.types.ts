/** Standard errors of every cell, and the roughness they were reckoned with. */
export interface CellErrors {
  /** [m] */
  readonly levelSdM: Float32Array
  /** [°] */
  readonly slopeSdDeg: Float32Array
  /** Coefficient of the power variogram [m² at 1 m]; undefined where the survey cannot tell. */
  readonly roughness: number | undefined
}
