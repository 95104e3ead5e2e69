import { placeSky, type PlaceSky, type ZoneSun } from '#core/shade'
import { northernTwin } from '#core/units'
import { shadingOf, type Findings, type Plan } from '#plan'

/** A zone whose sky is printed, from its middle. */
export interface SkyPlace {
  readonly zoneId: string
  readonly name: string
  readonly sky: PlaceSky
}

/** At most this many skies are printed. */
const MOST = 3

/** The zones whose skies differ most: most and least sun at midsummer, and the longest winter darkness. */
export function skyPlaces(plan: Plan, findings: Findings): readonly SkyPlace[] {
  const { zoning, zoneSun, terrain } = findings
  const midsummer = northernTwin(5, plan.site.latitudeDeg)
  const shading = shadingOf(plan, findings)
  const places = zoning.zones.flatMap((zone, at) => {
    const sun = zoneSun[at]
    const sky = sun && placeSky(shading, terrain, sun.middle)
    return sun && sky ? [{ zone, sun, sky }] : []
  })
  const by = (value: (sun: ZoneSun) => number) =>
    [...places].sort((one, other) => value(one.sun) - value(other.sun))[0]
  const least = by((sun) => sun.sunHours[midsummer])
  const darkest = by((sun) => sun.sunHours[northernTwin(11, plan.site.latitudeDeg)])
  const most = by((sun) => -sun.sunHours[midsummer])
  const chosen = new Set([least, darkest, most, ...places].flatMap((place) => (place ? [place] : [])))
  return [...chosen].slice(0, MOST).map(({ zone, sky }) => ({
    zoneId: zone.id,
    name: `${zone.letter} ${zone.name}`,
    sky,
  }))
}
