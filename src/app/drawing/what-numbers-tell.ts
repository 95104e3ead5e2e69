import type { Machine } from '#core/cover'
import { dayOnPlane } from '#core/shade'
import { representativeDays } from '#core/sun'
import { toDegrees } from '#core/units'

/** A bank in four numbers and where it lies. */
export interface NumberedBank {
  readonly lengthM: number
  readonly riseM: number
  readonly facesDeg: number
  readonly widthM: number
  readonly latitudeDeg: number
}

/** What follows at once, before any soil is known. */
export interface FirstFigures {
  readonly slopeDeg: number
  /** Metres along, on plan, for a metre up; undefined on level ground. */
  readonly runPerRise: number | undefined
  readonly slopeAreaM2: number
  readonly planAreaM2: number
  /** Direct sun under a clear sky [h]. */
  readonly midsummerHours: number
  readonly midwinterHours: number
  /** Machines whose cautious limit this slope is within. */
  readonly mayMow: readonly string[]
  /** Change of the angle if the rise is 10 cm out [°]. */
  readonly doubtDeg: number
}

/** Rise that a string and a pole may be out by [m]; own judgement. */
const RISE_DOUBT_M = 0.1

/** Clean country air and grass, as in deriving; hours of sun do not depend on either. */
const AIR = { elevationM: 0, linke: 3, albedo: 0.2 }

/** Reckons the first figures of a bank. */
export function firstFigures(bank: NumberedBank, machines: readonly Machine[]): FirstFigures {
  const { lengthM, riseM, widthM, facesDeg, latitudeDeg } = bank
  const slopeDeg = angleDeg(riseM, lengthM)
  const runM = Math.sqrt(Math.max(lengthM ** 2 - riseM ** 2, 0))
  const hours = (month: 5 | 11) =>
    dayOnPlane(
      { slopeDeg, aspectDeg: facesDeg % 360 },
      { ...AIR, latitudeDeg, dayOfYear: representativeDays[month] },
    ).sunHours[0] ?? 0
  const south = latitudeDeg < 0
  return {
    slopeDeg,
    runPerRise: riseM > 0 ? runM / riseM : undefined,
    slopeAreaM2: lengthM * widthM,
    planAreaM2: runM * widthM,
    midsummerHours: hours(south ? 11 : 5),
    midwinterHours: hours(south ? 5 : 11),
    mayMow: machines.filter(({ limitDeg }) => slopeDeg <= limitDeg).map(({ name }) => name),
    doubtDeg:
      (angleDeg(riseM + RISE_DOUBT_M, lengthM) - angleDeg(Math.max(0, riseM - RISE_DOUBT_M), lengthM)) / 2,
  }
}

const angleDeg = (riseM: number, lengthM: number): number =>
  toDegrees(Math.asin(Math.min(1, riseM / lengthM)))
