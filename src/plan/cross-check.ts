import type { Problem } from '#core/units'
import type { Plan } from './plan.schema'

/** What one schema entry cannot see alone: entries that point at others, and names used twice. */
export function crossProblems(plan: Plan): Problem[] {
  return [
    ...twice(plan.zones, 'zones', 'zone'),
    ...twice(plan.soil, 'soil', 'soil sample'),
    ...twice(plan.survey.obstacles, 'survey › obstacles', 'obstacle'),
    ...lostZones(plan),
    ...profileOrder(plan),
  ]
}

function twice(rows: readonly { readonly id: string }[], path: string, kind: string): Problem[] {
  const seen = new Set<string>()
  return rows.flatMap(({ id }, index) => {
    const again = seen.has(id)
    seen.add(id)
    return again
      ? [
          {
            where: `plan › ${path}, row ${index + 1}`,
            what: `The id “${id}” is used by another ${kind}.`,
            mend: 'Give each its own id.',
          },
        ]
      : []
  })
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

function profileOrder(plan: Plan): Problem[] {
  const ground = plan.survey.ground
  if (ground.kind !== 'profile') return []
  return ground.stations.flatMap((station, index) => {
    const before = ground.stations[index - 1]
    return before && station.distanceM <= before.distanceM
      ? [
          {
            where: `plan › survey › ground › stations, row ${index + 1}`,
            what: `The distance ${station.distanceM} m does not go on from ${before.distanceM} m.`,
            mend: 'Order the stations from the top edge down, each further than the last.',
          },
        ]
      : []
  })
}
