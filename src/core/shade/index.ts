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
export { farAngleDeg } from './far-skyline'
export { horizonOf } from './horizon-of'
export { lightClassOf } from './light-class'
export { placeDay } from './place-day'
export { placeSky } from './place-sky'
export { sunArc } from './place-sun'
export { shadeTablesSchema, type ShadeTables } from './shade-tables.schema'
export { skylinesAround, type Skylines } from './skylines'
export { standingOf } from './standing-of'
export type { Thing } from './standing-thing.types'
export { sunOnGround, sunOnPlane, type YearSky } from './sun-on-ground'
export { sunPath, type SunPathPoint } from './sun-path'
export { sunRatios } from './sun-ratios'
export { zoneSun } from './zone-sun'
export { usualDayOnGround } from './usual-day-on-ground'
export { thingFigures } from './thing-figures'
