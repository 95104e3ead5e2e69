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
  ZoneSun,
} from './shade.types'
export { coveredRise } from './covered-rise'
export { dayOnGround, dayOnPlane } from './day-on-ground'
export { horizonOf } from './horizon-of'
export { skylinesAround } from './skylines'
export { sunOnGround, sunOnPlane } from './sun-on-ground'
export { sunRatios } from './sun-ratios'
