import { computed, watch } from 'vue'
import { sunArc } from '#core/shade'
import { representativeDays } from '#core/sun'
import type { Month } from '#core/units'
import { dateOf } from '#report'
import type { Plan } from '#plan'
import { useSheetStore } from '../stores/sheet'
import { useSunMomentStore } from '../stores/sun-moment'
import { placeClock } from './placeClock'
import { useMomentWords } from './useMomentWords'

/** Steps of the time slider in an hour [1]. */
const STEPS_PER_H = 6
/** A rise or set this close to a step is on it [steps]. */
const CLOSE = 1e-9
const NOON_H = 12

/** The moment that is picked, where the sun stands then, and both in words. */
export function useSunMoment(plan: () => Plan) {
  const store = useSunMomentStore()
  const sheet = useSheetStore()
  const dayOfYear = computed(() => store.dayOfYear)
  const month = computed(() => dateOf(store.dayOfYear).month)
  const arc = computed(() => sunArc(plan().site.latitudeDeg, store.dayOfYear))
  const clock = computed(() => placeClock(plan().site))

  /** First and last time of the slider [h]; none in polar night. */
  const spanH = computed(() => {
    const fromH = Math.max(0, Math.ceil(arc.value.riseH * STEPS_PER_H - CLOSE) / STEPS_PER_H)
    const toH = Math.floor(arc.value.setH * STEPS_PER_H + CLOSE) / STEPS_PER_H
    return toH > fromH ? { fromH, toH } : undefined
  })
  const hour = computed(() => {
    const { fromH, toH } = spanH.value ?? { fromH: NOON_H, toH: NOON_H }
    return Math.min(toH, Math.max(fromH, store.wishedHour))
  })
  const stands = computed(() => arc.value.at(hour.value))
  /** Direction of the sun [°]; none below the horizon. */
  const sunDeg = computed(() => (spanH.value ? stands.value.azimuthDeg : undefined))
  const rises = computed(() => spanH.value !== undefined)
  const words = useMomentWords({ dayOfYear, arc, rises, hour, clock })

  // A month picked in the margin stands for its mean day.
  watch(
    () => sheet.month,
    (now) => {
      if (now !== month.value) store.dayOfYear = representativeDays[now as Month]
    },
  )

  const at = (hourBySun: number) => arc.value.at(hourBySun)
  return { store, month, spanH, hour, at, stands, sunDeg, clock, ...words }
}

export type SunMoment = ReturnType<typeof useSunMoment>
