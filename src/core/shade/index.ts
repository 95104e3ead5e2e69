export type {
  Crown,
  DarkSpell,
  DayChoice,
  DayOnGround,
  FarPoint,
  LightClassName,
  PlaceDay,
  PlaceSky,
  Screen,
  Shading,
  Standing,
  SunOnGround,
  SunTaker,
  TiltedCells,
  ZoneSun,
} from './shade.types'
export { coveredRise } from './covered-rise'
export { darkSpell } from './dark-spell'
export { dayOnGround, dayOnPlane } from './day-on-ground'
export { directLight } from './direct-light'
export { horizonOf } from './horizon-of'
export { placeDay } from './place-day'
export { placeSky } from './place-sky'
export { skylinesAround } from './skylines'
export { sunOnGround, sunOnPlane } from './sun-on-ground'
export { sunPath, type SunPathPoint } from './sun-path'
export { sunRatios } from './sun-ratios'
