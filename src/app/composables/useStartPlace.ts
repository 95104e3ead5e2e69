import { ref } from 'vue'
import type { GroundSurvey } from '#core/survey'
import type { Problem } from '#core/units'
import { newPlan, planSchema, problemsOf, type Plan } from '#plan'
import { useTables } from '../stores/tables'

/** Where a plan begins until the person says otherwise [°]; it stands in the fields for all to see. */
const FIRST_PLACE = { latitudeDeg: 52, longitudeDeg: 0 }

/** What was measured besides the ground. */
type Measured = Pick<Plan['survey'], 'books' | 'accuracy' | 'compass' | 'boundary'>

/**
 * What every start asks besides the ground: a name and a place.
 *
 * @param name - what the plan is called until the person says otherwise
 * @param empty - the place is left open, for a survey that may bring its own
 */
export function useStartPlace(name: string, empty = false) {
  const { places } = useTables()
  const planName = ref(name)
  const latitudeDeg = ref(empty ? undefined : FIRST_PLACE.latitudeDeg)
  const longitudeDeg = ref(empty ? undefined : FIRST_PLACE.longitudeDeg)
  const problems = ref<readonly Problem[]>([])

  function moveTo(north: number | undefined, east: number | undefined): void {
    latitudeDeg.value = north
    longitudeDeg.value = east
  }

  /** A whole plan on this ground; undefined with problems when something is missing. */
  function planOn(ground: GroundSurvey, { boundary, ...measured }: Measured = {}): Plan | undefined {
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
      measured,
    })
    const checked = planSchema.safeParse(boundary ? { ...plan, survey: { ...plan.survey, boundary } } : plan)
    problems.value = checked.success ? [] : problemsOf(checked.error.issues, 'plan')
    return checked.success ? checked.data : undefined
  }

  return { places, planName, latitudeDeg, longitudeDeg, problems, moveTo, planOn }
}
