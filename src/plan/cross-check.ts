import type { Problem } from '#core/units'
import { climateProblems } from './climate-check'
import type { Plan } from './plan.schema'
import { surveyProblems } from './survey-check'
import { thingsProblems } from './things-check'
import { timeZoneProblems } from './time-zone-check'
import { twice } from './used-twice'

/** What one schema entry cannot see alone: entries that point at others, and names used twice. */
export function crossProblems(plan: Plan): Problem[] {
  return [
    ...twice(plan.zones, 'zones', 'zone'),
    ...twice(plan.soil, 'soil', 'soil sample'),
    ...lostZones(plan),
    ...surveyProblems(plan.survey),
    ...thingsProblems(plan),
    ...timeZoneProblems(plan),
    ...climateProblems(plan),
  ]
}

/** Choices and overrides of drawn zones that are no longer there. Suggested zones have ids of their own. */
function lostZones(plan: Plan): Problem[] {
  if (plan.zones.length === 0) return []
  const known = new Set(plan.zones.map((zone) => zone.id))
  const check = (path: string) => (entry: { readonly zoneId: string }, index: number) =>
    known.has(entry.zoneId)
      ? []
      : [
          {
            where: `plan › ${path}, row ${index + 1}`,
            what: `There is no zone “${entry.zoneId}”.`,
            mend: `Use one of ${[...known].join(', ')}, or take the entry out.`,
          },
        ]
  return [...plan.choices.flatMap(check('choices')), ...plan.overrides.flatMap(check('overrides'))]
}
