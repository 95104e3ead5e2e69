/** How near our sun must come to outside figures, and why no nearer. May only be tightened. */
export const tolerances = {
  /** The sun at the same moments: share of each plane's own figure, and the rounding of the printed one [Wh/m²]. */
  planes: { share: 0.001, whPerM2: 0.06 },
  /** Share of each plane's own global radiation; r.sun's 0.05 h steps miss sunrise and sunset by up to half a step. */
  planesOwnSteps: 0.0033,
  /** Two r.sun steps of 0.05 h, one at each end of the day [h]. */
  planesHours: 0.1,
  /** r.horizon's own rule, told again: the rounding of its 32-bit figures as printed [°]. */
  horizonRuleDeg: 0.0002,
  /** The same cells on the same line: r.horizon bends the earth by up to 0.003° [°]. */
  horizonDeg: 0.004,
  /** Between the winds heights are read between two cells, rays also within them: mean difference on 10 m cells [°]. */
  horizonBetweenMeanDeg: 0.28,
  /** Same atmosphere, no cast shadows, r.sun steps of 0.1 h: share of each cell's own beam. */
  groundBeam: 0.0015,
  /** The same moments and the same rule of shadows: share of each cell's own figure, and what rounding leaves where the sun only grazes [Wh/m²]. */
  rsunDay: { share: 0.0001, whPerM2: 0.01 },
  /** Share of cells whose lit or shaded state may differ: we read between cells, r.sun the nearest one. */
  shadedCells: 0.016,
  /** The integral over the same skylines and slopes: half of SAGA's last printed digit, and a little. */
  skyFormula: 0.00006,
  /** The same with the sky ending at the cell's own plane. */
  skyView: 0.01,
  /** Our slopes after Horn and our skylines, read between cells: mean difference. */
  skyOwnMean: 0.004,
  /** Share of sky past things by exact solutions: a thing's edge is looked for every 3.75° around. */
  thingsSky: 0.005,
} as const
