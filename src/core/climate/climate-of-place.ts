import type { Climate, Place } from './climate.schema'

/**
 * A typical place's normals, as a plan keeps them.
 *
 * @param place - a row of the list of typical places
 * @returns the climate, with the place's name and height
 */
export function climateOfPlace(place: Place): Climate {
  return {
    from: 'place',
    place: place.name,
    elevationM: place.elevationM,
    coast: place.coast,
    months: place.months.map((month) => ({ ...month })),
  }
}
