export type {
  DayChoice,
  DayOnGround,
  OpenLevelDay,
  ShadingGround,
  SunOnGround,
  SunSite,
  TiltedCells,
} from './sun.types'
export { dayOnGround } from './dayOnGround'
export { heatLoad } from './heatLoad'
export { horizonOf } from './horizonOf'
export { representativeDays } from './representativeDays'
export { ruralLinke } from './ruralLinke'
export { sunEvents, type SunEvents } from './sunEvents'
export { sunOnGround, sunOnPlane } from './sunOnGround'
export { sunPosition, type SunPosition } from './sunPosition'
export { withinRange } from './withinRange'
