import { ref } from 'vue'
import type { GroundSurvey } from '#core/survey'
import type { Problem } from '#core/units'
import { newPlan, planSchema, problemsOf, type Plan } from '#plan'
import { useTables } from '../stores/tables'

/** What every start asks besides the ground: a name and a place. */
export function useStartPlace(name: string) {
  const { places } = useTables()
  const planName = ref(name)
  const latitudeDeg = ref<number | undefined>(52)
  const longitudeDeg = ref<number | undefined>(0)
  const problems = ref<readonly Problem[]>([])

  function moveTo(north: number | undefined, east: number | undefined): void {
    latitudeDeg.value = north
    longitudeDeg.value = east
  }

  /** A whole plan on this ground; undefined with problems when something is missing. */
  function planOn(ground: GroundSurvey): Plan | undefined {
    if (latitudeDeg.value === undefined || longitudeDeg.value === undefined) {
      problems.value = [
        {
          where: 'place',
          what: 'The place is missing.',
          mend: 'Type latitude and longitude, or choose a place.',
        },
      ]
      return undefined
    }
    const plan = newPlan({
      name: planName.value.trim(),
      ground,
      latitudeDeg: latitudeDeg.value,
      longitudeDeg: longitudeDeg.value,
      places,
    })
    const checked = planSchema.safeParse(plan)
    problems.value = checked.success ? [] : problemsOf(checked.error.issues, 'plan')
    return checked.success ? checked.data : undefined
  }

  return { places, planName, latitudeDeg, longitudeDeg, problems, moveTo, planOn }
}
