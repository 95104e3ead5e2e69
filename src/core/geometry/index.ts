export type { GridFrame, LevelPoint, PlanPoint, Ring, Tin } from './geometry.types'
export { centroid, perimeterM, ringAreaM2, sides, signedAreaM2 } from './ring-measures'
export { pointInRing } from './point-in-ring'
export { convexHull } from './convex-hull'
export { clipRing } from './clip-ring'
export { cellShares } from './cell-shares'
export { splitRing } from './split-ring'
export { crossesItself } from './crosses-itself'
export { cutLine } from './cut-line'
export { distanceToSegmentM } from './distance-to-segment'
export { simplifyRing } from './simplify-ring'
export { boxAround, cellAt, cellCentre, cellRing, frameAround } from './grid-frame'
export { cellOutline } from './cell-outline'
export { triangulate } from './triangulate'
export {
  levelOnPlaneM,
  triangleThicknessM,
  trianglePlane,
  trianglesOverGrid,
  type Plane,
} from './tin-over-grid'
export { fitPlane } from './fit-plane'
export { lineDistanceM } from './line-distance'
export { nearestOnRing, ringStretch } from './ring-stretch'
