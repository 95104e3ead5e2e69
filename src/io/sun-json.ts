import type { Findings, Plan } from '#plan'
import type { PlaceSunBody } from './place-sun'
import { shaped } from './shaped'
import { sunBodies } from './sun-body'
import { sunSchema } from './sun.schema'

/**
 * Sun and shade of a plan as JSON (docs/schema/sun.md): the same plan gives the same bytes.
 *
 * @param plan - the plan
 * @param findings - what follows from it
 * @param place - the sun from one place, where one is asked for
 * @returns the file's text
 */
export function sunJson(plan: Plan, findings: Findings, place: PlaceSunBody | undefined): string {
  const body = {
    format: 'lynchet-sun',
    version: 1,
    plan: plan.name,
    timeZone: plan.site.timeZone,
    ...sunBodies(findings),
    place,
  }
  return `${JSON.stringify(shaped(sunSchema, body), null, 1)}\n`
}
