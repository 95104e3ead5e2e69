import { directLight, sunArc } from '#core/shade'
import type { Month } from '#core/units'
import { shadingOf, type Findings, type Plan } from '#plan'
import { steeringDays } from '../figures/sun/sun-days'
import { lightPicture } from '../light-picture'
import type { PlanShade } from '../plan-shade.types'
import { dateOf } from '../words/day-words'

/** Times of a day whose shadows are printed [h by the sun]. */
const HOURS = [9, 12, 15] as const

/** The equinox printed is that of spring, before the leaves. */
const MARCH_DAY = 79

/** Shadows of one day at three times. */
export interface PaperShadows {
  readonly key: string
  readonly words: string
  readonly plans: readonly { readonly head: string; readonly shade: PlanShade }[]
}

/** Shadows on the plan at the equinox and at midwinter. */
export function paperShadows(plan: Plan, findings: Findings): readonly PaperShadows[] {
  const { latitudeDeg } = plan.site
  const shading = shadingOf(plan, findings)
  return steeringDays(latitudeDeg, MARCH_DAY)
    .filter(({ key }) => key !== 'midsummer')
    .sort((one, other) => one.key.localeCompare(other.key))
    .map(({ key, dayOfYear, words }) => {
      const { at } = sunArc(latitudeDeg, dayOfYear)
      const month: Month = dateOf(dayOfYear).month
      return {
        key,
        words,
        plans: HOURS.map((hour) => {
          const { sun } = at(hour)
          const name = `${words}, ${hour} h by the sun`
          const head = `${hour === 12 ? 'noon' : `${hour} h`}, ${sun.up > 0 ? key : 'the sun is down'}`
          return { head, shade: lightPicture(findings, directLight(shading, sun, month), sun, name) }
        }),
      }
    })
}
