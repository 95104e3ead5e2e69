import { trueBearing } from '#core/booking'
import type { Place } from '#core/climate'
import { declinationAt } from '#io'
import { nearestPlace, type Plan } from '#plan'
import { computed, ref, type Ref } from 'vue'
import { today } from './useStartBook'

/** How a direction was found. */
type BearingWay = 'true' | 'compass' | 'roughly'

/** Where the bearing was taken. */
interface BearingPlace {
  readonly latitudeDeg: Readonly<Ref<number | undefined>>
  readonly longitudeDeg: Readonly<Ref<number | undefined>>
  readonly places: readonly Place[]
}

/**
 * The way the ground faces, as it was found: a compass reads from magnetic north, and is corrected for place and day.
 *
 * @param firstDeg - bearing to begin with [°]
 * @param place - where it was taken
 * @returns the bearing as read, how it was found, the true one, what is kept of the compass, and what it says in words
 */
export function useStartBearing(firstDeg: number, place: BearingPlace) {
  const readDeg = ref<number | undefined>(firstDeg)
  const way = ref<BearingWay>('true')
  const on = ref(today())

  const correction = computed(() => {
    const [north, east] = [place.latitudeDeg.value, place.longitudeDeg.value]
    if (way.value !== 'compass' || north === undefined || east === undefined) return undefined
    const { elevationM } = nearestPlace(place.places, north, east)
    return declinationAt(north, east, elevationM, on.value)
  })
  const compass = computed<Plan['survey']['compass']>(() => {
    const found = correction.value
    if (!found?.ok || readDeg.value === undefined) return undefined
    return { magneticDeg: readDeg.value, on: on.value, ...found.value }
  })
  const facesDeg = computed(() => {
    if (way.value !== 'compass' || readDeg.value === undefined) return readDeg.value
    const { value } = compass
    return value && Number(trueBearing(value.magneticDeg, value.declinationDeg).toFixed(1))
  })
  const problems = computed(() => (correction.value?.ok === false ? correction.value.problems : []))
  const words = computed(() => correctionWords(compass.value, facesDeg.value))
  const view = computed(() => ({
    readDeg: readDeg.value,
    way: way.value,
    on: on.value,
    words: words.value,
    problems: problems.value,
  }))

  function set(change: { readDeg?: number | undefined; way?: BearingWay; on?: string }): void {
    if ('readDeg' in change) readDeg.value = change.readDeg
    way.value = change.way ?? way.value
    on.value = change.on ?? on.value
  }

  return { facesDeg, compass, view, set }
}

function correctionWords(compass: Plan['survey']['compass'], facesDeg: number | undefined): string {
  if (!compass || facesDeg === undefined) return ''
  const { magneticDeg, declinationDeg, model } = compass
  const off = Math.abs(declinationDeg).toFixed(1)
  const how = off === '0.0' ? 'reads true' : `reads ${off} degrees too ${declinationDeg > 0 ? 'low' : 'high'}`
  return `The compass ${how} here on that day (${model}): ${magneticDeg}° on the dial is ${facesDeg.toFixed(1)}° from true north.`
}
