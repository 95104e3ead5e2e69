export type { FlowShares, Section, SectionStation, Terrain } from './terrain.types'
