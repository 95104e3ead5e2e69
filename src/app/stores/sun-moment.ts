import type { PlanPoint } from '#core/geometry'
import { representativeDays } from '#core/sun'
import type { Month } from '#core/units'
import { dateOf } from '#report'
import { defineStore } from 'pinia'
import { ref, shallowRef } from 'vue'
import { useSheetStore } from './sheet'

/** Time that is shown to begin with [h by the sun]: shadows are long enough to tell apart. */
const FIRST_HOUR = 15

/** The moment whose shadows are on show, and the place whose sky is: kept while the page is open, never in the plan. */
export const useSunMomentStore = defineStore('sun-moment', () => {
  const sheet = useSheetStore()
  /** Day counted from 1 January without a leap day [d]; the mean day of the month on the sheet to begin with. */
  const dayOfYear = ref(representativeDays[sheet.month as Month])
  /** Time wished for [h by the sun, 12 when it is highest]; the day may be shorter. */
  const wishedHour = ref(FIRST_HOUR)
  /** The place that was touched [m]. */
  const place = shallowRef<PlanPoint>()
  /** The day is being played through. */
  const playing = ref(false)

  /** Turns to a day; the month on the sheet goes with it. */
  function turnToDay(day: number): void {
    dayOfYear.value = day
    sheet.month = dateOf(day).month
  }

  /** As when a plan is first laid out: no place of another plot. */
  function clear(): void {
    place.value = undefined
    playing.value = false
  }

  return { dayOfYear, wishedHour, place, playing, turnToDay, clear }
})
