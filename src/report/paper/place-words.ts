import type { Plan } from '#plan'
import { withUnit } from '../words/figures-in-words'

/** Where the plot is, whose laws count, and whose climate was used. */
export function placeWords({ site, climate }: Plan): string {
  const latitude = `${withUnit(Math.abs(site.latitudeDeg), '°', 2)} ${site.latitudeDeg < 0 ? 'S' : 'N'}`
  const longitude = `${withUnit(Math.abs(site.longitudeDeg), '°', 2)} ${site.longitudeDeg < 0 ? 'W' : 'E'}`
  const law = site.legalRegion ?? 'no country set, so plants are not checked against the law'
  const weather =
    climate.from === 'place'
      ? `climate of ${climate.place ?? 'a listed place'}, a typical place and not the plot itself`
      : 'climate as typed in'
  return `${latitude}, ${longitude}, ${withUnit(site.elevationM, 'm', 0)} above the sea; law: ${law}; ${weather}.`
}
