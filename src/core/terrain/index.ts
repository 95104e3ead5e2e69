export type { FlowShares, Section, Terrain } from './terrain.types'
export { terrainOf } from './terrain-of'
export { sectionProblem } from './section-problem'
export { outOfSight, type Stretch } from './out-of-sight'
