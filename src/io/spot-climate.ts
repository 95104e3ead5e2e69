import { climateOfPlace, type Climate, type MonthNormals, type Place } from '#core/climate'
import { monthNames, months, type Month } from '#core/units'
import type { SpotCells } from './spot-cells'
import { figureColumns, monthColumns } from './spot-columns'
import { neededMonth, spotLight } from './spot-light'

/** Where a place's climate comes from, and the listed place it is of. */
export interface SpotClimate {
  readonly climate: Climate
  readonly place: Place | undefined
  /** Height of the place itself [m]. */
  readonly elevationM: number
}

/** Height above the sea where none is given with typed normals [m]; it bears on the pressure of the air alone. */
const USUAL_ELEVATION_M = 100

/**
 * The climate of a row: twelve months as typed, or those of a listed place, with sunshine or radiation where they are given.
 *
 * @param cells - the row
 * @param places - the listed places
 * @param latitudeDeg - latitude of the row [°]; undefined where that cell is wrong
 * @returns the climate; undefined when it is not sound
 */
export function spotClimate(
  cells: SpotCells,
  places: readonly Place[],
  latitudeDeg: number | undefined,
): SpotClimate | undefined {
  const elevationM = cells.figure(figureColumns.elevationM)
  const placeId = cells.text('place')
  const found =
    placeId === undefined
      ? typedClimate(cells, elevationM ?? USUAL_ELEVATION_M)
      : placeClimate(cells, places, { placeId, elevationM })
  const light = spotLight(cells, latitudeDeg)
  if (!found || !light) return undefined
  const months = found.climate.months.map((month, at) => ({ ...month, ...light[at] }))
  return { ...found, climate: { ...found.climate, months } }
}

function placeClimate(
  cells: SpotCells,
  places: readonly Place[],
  { placeId, elevationM }: { readonly placeId: string; readonly elevationM: number | undefined },
): SpotClimate | undefined {
  const place = places.find(({ id }) => id === placeId)
  return place
    ? { climate: climateOfPlace(place), place, elevationM: elevationM ?? place.elevationM }
    : cells.refuse(
        'place',
        `There is no place “${placeId}” in the list.`,
        `Use one of ${places.map(({ id }) => id).join(', ')}, or give tmin1..12, tmax1..12 and rain1..12.`,
      )
}

function typedClimate(cells: SpotCells, elevationM: number): SpotClimate | undefined {
  const all = Object.values(monthColumns).flat()
  if (all.every(({ name }) => cells.text(name) === undefined))
    return cells.refuse(
      'place',
      'There is no climate.',
      'Name a listed place in a column “place”, or give tmin1..12, tmax1..12 and rain1..12.',
    )
  const read = months.map((month) => monthOf(cells, month))
  const known = read.filter((month) => month !== undefined)
  const coast = cells.word('coast', ['yes', 'no']) === 'yes'
  return known.length === months.length
    ? { climate: { from: 'typed', elevationM, coast, months: known }, place: undefined, elevationM }
    : undefined
}

function monthOf(cells: SpotCells, month: Month): MonthNormals | undefined {
  const tMinC = neededMonth(cells, monthColumns.tMinC[month])
  const tMaxC = neededMonth(cells, monthColumns.tMaxC[month])
  const rainMm = neededMonth(cells, monthColumns.rainMm[month])
  if (tMinC === undefined || tMaxC === undefined || rainMm === undefined) return undefined
  return tMinC <= tMaxC
    ? { tMinC, tMaxC, rainMm }
    : cells.refuse(
        `tmin${month + 1}`,
        `The minimum of ${monthNames[month]}, ${tMinC} °C, is above its maximum, ${tMaxC} °C.`,
        'They may be swapped.',
      )
}
