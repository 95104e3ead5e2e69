/** How near our sun must come to outside figures, and why no nearer. May only be tightened. */
export const tolerances = {
  /** Share of the day's brightest plane: r.sun sums 0.05 h steps whose ends miss sunrise and sunset by up to half a step. */
  planes: { beam: 0.0011, diffuse: 0.0018, reflected: 0.0052 },
  /** Share of each plane's own global radiation, same reason. */
  planesGlobalOwn: 0.008,
  /** Two r.sun steps of 0.05 h, one at each end of the day [h]. */
  planesHours: 0.1,
  /** r.horizon reads heights as 32-bit floats and bends the earth; cardinal directions [°]. */
  horizonCardinalDeg: 0.01,
  /** r.horizon towards north-east, where its steps fall on cell centres as ours do [°]. */
  horizonNorthEastDeg: 0.2,
  /** r.horizon's steps towards the other diagonals fall on neighbouring cells; mean difference [°]. */
  horizonDiagonalMeanDeg: 0.04,
  /** Same atmosphere, no cast shadows, r.sun steps of 0.1 h: share of each cell's own beam. */
  groundBeam: 0.0015,
  /** Cells that no shadow reaches in our reckoning; r.sun reads the nearest cell for shadows, so a few differ: share of the mean. */
  groundDayMean: 0.004,
  /** Share of cells whose lit or shaded state may differ: we read between cells, r.sun the nearest one. */
  shadedCells: 0.02,
  /** Share of sky against SAGA, which looks in 16 directions from slopes of another method; mean difference. */
  skyView: 0.005,
  /** Share of sky past things by exact solutions: a thing's edge is looked for every 3.75° around. */
  thingsSky: 0.005,
} as const
