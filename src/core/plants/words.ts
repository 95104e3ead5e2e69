/** Names of the moisture scale's classes, 1 to 12. */
const moistureNames = [
  'arid',
  'very dry',
  'dry',
  'rather dry',
  'fresh',
  'fresh to moist',
  'moist',
  'damp',
  'wet',
  'shallow water',
  'standing water',
  'deep water',
] as const

/** Names of the light scale's classes, 1 to 9. */
const lightNames = [
  'the darkest shade',
  'deep shade',
  'shade',
  'light shade',
  'half shade',
  'half sun',
  'bright ground',
  'sun',
  'full sun',
] as const

/**
 * A place on the plants' moisture scale in words.
 *
 * @param moistureClass - place on the scale, 1 (arid) to 12 (deep water) [class]
 * @returns its name, such as "fresh"
 */
export function moistureName(moistureClass: number): string {
  return nearest(moistureNames, moistureClass)
}

/**
 * A place on the plants' light scale in words.
 *
 * @param lightClass - place on the scale, 1 (darkest) to 9 (full sun) [class]
 * @returns its name, such as "half shade"
 */
export function lightName(lightClass: number): string {
  return nearest(lightNames, lightClass)
}

function nearest(names: readonly string[], place: number): string {
  const index = Math.min(names.length, Math.max(1, Math.round(place))) - 1
  return names[index] ?? ''
}
