import { computed, type ComputedRef } from 'vue'
import type { sunArc } from '#core/shade'
import { windName } from '#core/units'
import { dayWords, timeWords } from '#report'
import type { PlaceClock } from './placeClock'

type Arc = ReturnType<typeof sunArc>

/** A day and a time of it, with the sun. */
interface Moment {
  readonly dayOfYear: ComputedRef<number>
  readonly arc: ComputedRef<Arc>
  /** Up at all. */
  readonly rises: ComputedRef<boolean>
  /** Time by the sun [h]. */
  readonly hour: ComputedRef<number>
  readonly clock: ComputedRef<PlaceClock>
}

/** Hours of a day [h]; rise and set are this far apart in polar day. */
const DAY_H = 24

/** A moment told by the sun, and by the clock where the plan knows its time zone. */
export function useMomentWords({ dayOfYear, arc, rises, hour, clock }: Moment) {
  const dayText = computed(() => dayWords(dayOfYear.value))
  const byClock = (hourBySun: number) => clock.value.at(hourBySun, dayOfYear.value)
  const timeText = computed(() => {
    const clockText = byClock(hour.value)
    return `${timeWords(hour.value)} by the sun${clockText ? `, ${clockText} by the clock` : ''}`
  })
  const riseText = computed(() => {
    if (!rises.value) return `The sun does not rise on ${dayText.value}.`
    const { riseH, setH } = arc.value
    if (setH - riseH >= DAY_H) return 'The sun does not set on this day.'
    const [rise, set] = [riseH, setH].map((at) => byClock(at) ?? timeWords(at))
    return `Up from ${rise} to ${set} by the ${clock.value.known ? 'clock' : 'sun'}, over an open horizon.`
  })
  const sunText = computed(() => {
    if (!rises.value) return riseText.value
    const { azimuthDeg, altitudeDeg } = arc.value.at(hour.value)
    return `The sun stands in the ${windName(azimuthDeg)}, ${Math.max(0, altitudeDeg).toFixed(0)}° up.`
  })
  return { dayText, timeText, riseText, sunText, byClock }
}
