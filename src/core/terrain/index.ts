export type { FlowShares, Section, SectionStation, Terrain } from './terrain.types'
export { terrainOf } from './terrainOf'
export { sectionProblem } from './sectionProblem'
export type { SectionLine } from './section'
