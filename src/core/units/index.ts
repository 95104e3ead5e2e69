export type { Outcome, Problem } from './problem'
export { book, booksOut, type Account, type AccountLine } from './account'
export { daysInMonth, eachMonth, monthNames, months, northernTwin, type Month, type Twelve } from './months'
export {
  bearingGapDeg,
  degToGradient,
  gradientToDeg,
  slopeAreaFactor,
  toDegrees,
  toRadians,
  wholeCircleDeg,
  windName,
} from './angles'
