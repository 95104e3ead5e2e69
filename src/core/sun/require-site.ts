import type { SunDay, SunSite } from './sun.types'
import { withinRange } from './within-range'

/**
 * Refuses a site that is off the globe or has impossible air.
 *
 * @param site - the site to look at
 * @throws RangeError when a value is out of its range
 */
export function requireSite(site: SunSite): void {
  withinRange('sun: latitude [°]', site.latitudeDeg, -90, 90)
  withinRange('sun: elevation [m]', site.elevationM, -430, 6000)
  withinRange('sun: albedo [1]', site.albedo, 0, 1)
  const linkes = typeof site.linke === 'number' ? [site.linke] : site.linke
  for (const linke of linkes) withinRange('sun: Linke turbidity [1]', linke, 1, 8)
}

/**
 * Refuses an impossible day.
 *
 * @param choice - the choice to look at
 * @throws RangeError when a value is out of its range
 */
export function requireDay(choice: SunDay): void {
  requireSite(choice)
  withinRange('sun: day of the year [d]', choice.dayOfYear, 1, 366)
  if (choice.stepHours !== undefined) withinRange('sun: time step [h]', choice.stepHours, 0.01, 2)
}
