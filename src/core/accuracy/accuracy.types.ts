/** How good the surface is, one value per cell of its frame; read only where the surface's share is above 0. */
export interface Accuracy {
  /** Standard error of the level [m]. */
  readonly levelSdM: Float32Array
  /** Standard error of the slope [°]. */
  readonly slopeSdDeg: Float32Array
  /** What it was reckoned from. */
  readonly from: {
    /** Standard error of one measured level [m]. */
    readonly levelSdM: number
    /** Standard error of a measured place [m]. */
    readonly planSdM: number
    /** Roughness found between the points: the standard deviation of the ground over one metre [m]; undefined where the survey cannot tell. */
    readonly roughnessM: number | undefined
    /** Key of data/survey/methods.json; undefined when the person typed the errors. */
    readonly methodId: string | undefined
    /** True when the person did not say how it was measured. */
    readonly assumed: boolean
  }
}
