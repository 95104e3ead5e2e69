import { computed, watch } from 'vue'
import { representativeDays } from '#core/sun'
import { sunArc } from '#core/shade'
import { windName } from '#core/units'
import { dateOf, dayWords, timeWords } from '#report'
import type { Plan } from '#plan'
import type { Month } from '#core/units'
import { useSheetStore } from '../stores/sheet'
import { useSunMomentStore } from '../stores/sun-moment'
import { placeClock } from './placeClock'

/** Steps of the time slider [h]. */
const STEP_H = 1 / 6
/** Hours of a day [h]; rise and set are this far apart in polar day. */
const DAY_H = 24

/** The moment that is picked, where the sun stands then, and both in words. */
export function useSunMoment(plan: () => Plan) {
  const store = useSunMomentStore()
  const sheet = useSheetStore()
  const month = computed(() => dateOf(store.dayOfYear).month)
  const arc = computed(() => sunArc(plan().site.latitudeDeg, store.dayOfYear))
  const clock = computed(() => placeClock(plan().site))

  /** First and last time of the slider [h]; none in polar night. */
  const spanH = computed(() => {
    const { riseH, setH } = arc.value
    const fromH = Math.max(0, Math.ceil(riseH / STEP_H - 1e-9) * STEP_H)
    const toH = Math.floor(setH / STEP_H + 1e-9) * STEP_H
    return toH > fromH ? { fromH, toH } : undefined
  })
  const hour = computed(() => {
    const { fromH, toH } = spanH.value ?? { fromH: DAY_H / 2, toH: DAY_H / 2 }
    return Math.min(toH, Math.max(fromH, store.wishedHour))
  })
  const stands = computed(() => arc.value.at(hour.value))
  /** Direction of the sun [°]; none below the horizon. */
  const sunDeg = computed(() => (spanH.value ? stands.value.azimuthDeg : undefined))

  const dayText = computed(() => dayWords(store.dayOfYear))
  const byClock = (hourBySun: number) => clock.value.at(hourBySun, store.dayOfYear)
  const timeText = computed(() => {
    const clockText = byClock(hour.value)
    return `${timeWords(hour.value)} by the sun${clockText ? `, ${clockText} by the clock` : ''}`
  })
  const riseText = computed(() => {
    if (!spanH.value) return `The sun does not rise on ${dayText.value}.`
    const { riseH, setH } = arc.value
    if (setH - riseH >= DAY_H) return 'The sun does not set on this day.'
    const [rise, set] = [riseH, setH].map((at) => byClock(at) ?? timeWords(at))
    return `Up from ${rise} to ${set} by the ${clock.value.known ? 'clock' : 'sun'}, over an open horizon.`
  })
  const sunText = computed(() => {
    if (!spanH.value) return `The sun does not rise on ${dayText.value}.`
    const { azimuthDeg, altitudeDeg } = stands.value
    return `The sun stands in the ${windName(azimuthDeg)}, ${Math.max(0, altitudeDeg).toFixed(0)}° up.`
  })

  // A month picked in the margin stands for its mean day.
  watch(
    () => sheet.month,
    (now) => {
      if (now !== month.value) store.dayOfYear = representativeDays[now as Month]
    },
  )

  return {
    store,
    month,
    spanH,
    hour,
    at: (hourBySun: number) => arc.value.at(hourBySun),
    stands,
    sunDeg,
    dayText,
    timeText,
    riseText,
    sunText,
    byClock,
    clock,
  }
}

export type SunMoment = ReturnType<typeof useSunMoment>
