/** Metres, to the nearest 10 cm. */
export function metres(lengthM: number): string {
  return `${Math.round(lengthM * 10) / 10} m`
}

/** Square metres: whole, or one decimal below 10. */
export function squareMetres(areaM2: number): string {
  return `${areaM2 < 10 ? Math.round(areaM2 * 10) / 10 : Math.round(areaM2)} m²`
}

/** Cubic metres: whole, or one decimal below 10. */
export function cubicMetres(volumeM3: number): string {
  return `${volumeM3 < 10 ? Math.round(volumeM3 * 10) / 10 : Math.round(volumeM3)} m³`
}

/** Whole degrees. */
export function degrees(angleDeg: number): string {
  return `${Math.round(angleDeg)}°`
}

/** Hours, to a tenth. */
export function hours(time: number): string {
  return `${Math.round(time * 10) / 10} h`
}
