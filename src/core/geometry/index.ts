export type { GridFrame, LevelPoint, PlanPoint, Ring, Tin } from './geometry.types'
export { centroid, perimeterM, ringAreaM2, sides, signedAreaM2 } from './ringMeasures'
export { pointInRing } from './pointInRing'
export { convexHull } from './convexHull'
export { clipRing } from './clipRing'
export { cellShares } from './cellShares'
export { splitRing } from './splitRing'
export { crossesItself } from './crossesItself'
export { cutLine } from './cutLine'
export { distanceToSegmentM } from './distanceToSegment'
export { simplifyRing } from './simplifyRing'
export { boxAround, cellAt, cellCentre, cellRing, frameAround } from './gridFrame'
export { cellOutline } from './cellOutline'
export { triangulate } from './triangulate'
export {
  levelOnPlaneM,
  triangleThicknessM,
  trianglePlane,
  trianglesOverGrid,
  type Plane,
} from './tinOverGrid'
export { fitPlane } from './fitPlane'
