import { withUnit } from '../words/figures-in-words'

/** Metres, to the nearest 10 cm; whole metres without a decimal. */
export function metres(lengthM: number): string {
  const tenths = Math.round(lengthM * 10)
  return withUnit(tenths / 10, 'm', tenths % 10 === 0 ? 0 : 1)
}

/** Square metres: whole, or one decimal below 10. */
export function squareMetres(areaM2: number): string {
  return withUnit(areaM2, 'm²')
}

/** Cubic metres: whole, or one decimal below 10. */
export function cubicMetres(volumeM3: number): string {
  return withUnit(volumeM3, 'm³')
}

/** Whole degrees. */
export function degrees(angleDeg: number): string {
  return withUnit(angleDeg, '°', 0)
}

/** A figure rounded as it is told with one decimal, so that sums of told figures agree. */
export function tenth(value: number): number {
  return Number(value.toFixed(1))
}

/** Hours, to a tenth. */
export function hours(time: number): string {
  return withUnit(time, 'h', 1)
}
