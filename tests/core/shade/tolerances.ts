/** How near our sun must come to outside figures, and why no nearer. May only be tightened. */
export const tolerances = {
  /** The sun at the same moments: share of each plane's own figure, and the rounding of the printed one [Wh/m²]. */
  planes: { share: 0.001, whPerM2: 0.06 },
  /** Share of each plane's own global radiation; r.sun's 0.05 h steps miss sunrise and sunset by up to half a step. */
  planesOwnSteps: 0.0033,
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
  /** The same moments and the same rule of shadows: share of each cell's own figure, and what rounding leaves where the sun only grazes [Wh/m²]. */
  rsunDay: { share: 0.0001, whPerM2: 0.01 },
  /** Share of cells whose lit or shaded state may differ: we read between cells, r.sun the nearest one. */
  shadedCells: 0.016,
  /** Share of sky against SAGA, which looks in 16 directions from slopes of another method; mean difference. */
  skyView: 0.005,
  /** Share of sky past things by exact solutions: a thing's edge is looked for every 3.75° around. */
  thingsSky: 0.005,
} as const
