import { climateOfPlace, type Place } from '#core/climate'
import type { PlantRegion } from '#core/plants'
import type { GroundSurvey } from '#core/survey'
import type { Plan } from './plan.schema'

/** What a new plan cannot do without. */
export interface PlanStart {
  readonly name: string
  readonly ground: GroundSurvey
  readonly latitudeDeg: number
  readonly longitudeDeg: number
  /** Typical places to take the climate from until the person gives their own. */
  readonly places: readonly Place[]
  readonly elevationM?: number
  readonly plantRegion?: PlantRegion
  /** How it was measured: field books, accuracy, compass. */
  readonly measured?: Pick<Plan['survey'], 'books' | 'accuracy' | 'compass'>
}

/**
 * A plan with everything still unanswered filled in by what is most usual, and marked as assumed.
 *
 * @param start - the ground and where it is
 * @returns a plan that can be derived at once; what was assumed stands in the list of things to settle
 */
export function newPlan(start: PlanStart): Plan {
  const place = nearestPlace(start.places, start.latitudeDeg, start.longitudeDeg)
  return {
    format: 'lynchet-plan',
    version: 3,
    name: start.name,
    site: {
      latitudeDeg: start.latitudeDeg,
      longitudeDeg: start.longitudeDeg,
      elevationM: start.elevationM ?? place.elevationM,
      plantRegion: start.plantRegion ?? regionAt(start.latitudeDeg, start.longitudeDeg),
    },
    climate: climateOfPlace(place),
    survey: { ground: start.ground, ...start.measured, obstacles: [], aboveM: 0 },
    soil: [
      {
        id: 'first',
        name: 'Whole plot',
        assumed: true,
        texture: { by: 'class', class: 'loam' },
        ...usualSoil,
      },
    ],
    zones: [],
    brief: {
      machines: [{ id: 'walk-behind' }],
      currency: 'EUR',
      whoWorks: 'household',
      children: false,
      pets: false,
      nativeShare: 0,
    },
    choices: [],
    overrides: [],
  }
}

/** What a garden soil is taken to be where nothing more is known of it; own judgement. */
export const usualSoil = {
  depthM: 0.6,
  stonesPercent: 5,
  organicPercent: 3,
  compaction: 'normal',
} as const

/**
 * The listed place closest on the globe.
 *
 * @param places - the list, not empty
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @param longitudeDeg - longitude [°], east positive, -180 to 180
 * @returns the nearest place
 * @throws RangeError when the list is empty
 */
export function nearestPlace(places: readonly Place[], latitudeDeg: number, longitudeDeg: number): Place {
  const [first, ...rest] = places
  if (!first) throw new RangeError('nearestPlace: the list of places is empty')
  return rest.reduce(
    (best, place) =>
      distanceKm(place, latitudeDeg, longitudeDeg) < distanceKm(best, latitudeDeg, longitudeDeg)
        ? place
        : best,
    first,
  )
}

/** Mean radius of the Earth [km], IUGG. */
const EARTH_RADIUS_KM = 6371.0088

/**
 * Distance over the globe (haversine).
 *
 * @param place - a place
 * @param latitudeDeg - latitude [°], north positive, -90 to 90
 * @param longitudeDeg - longitude [°], east positive, -180 to 180
 * @returns great-circle distance [km]
 */
export function distanceKm(
  place: Pick<Place, 'latitudeDeg' | 'longitudeDeg'>,
  latitudeDeg: number,
  longitudeDeg: number,
): number {
  const rad = Math.PI / 180
  const half = (oneDeg: number, otherDeg: number) => Math.sin(((oneDeg - otherDeg) * rad) / 2) ** 2
  const chord =
    half(place.latitudeDeg, latitudeDeg) +
    Math.cos(place.latitudeDeg * rad) * Math.cos(latitudeDeg * rad) * half(place.longitudeDeg, longitudeDeg)
  return 2 * EARTH_RADIUS_KM * Math.asin(Math.sqrt(Math.min(1, chord)))
}

/** Rough boxes [° north, south, west, east] of the plant regions; the person can always say otherwise. */
const regionBoxes: readonly {
  readonly region: PlantRegion
  readonly box: readonly [number, number, number, number]
}[] = [
  { region: 'british-isles', box: [61, 49.8, -11, 1.9] },
  { region: 'europe', box: [72, 34, -25, 45] },
  { region: 'north-america', box: [72, 15, -170, -50] },
  { region: 'australia-nz', box: [-10, -50, 110, 180] },
]

/** The plant region of a place on the globe. */
export function regionAt(latitudeDeg: number, longitudeDeg: number): PlantRegion {
  const within = regionBoxes.find(
    ({ box: [north, south, west, east] }) =>
      latitudeDeg <= north && latitudeDeg >= south && longitudeDeg >= west && longitudeDeg <= east,
  )
  return within?.region ?? (latitudeDeg < 0 ? 'australia-nz' : 'europe')
}
