import type { Section } from '#core/terrain'
import type { Settlement } from './findings.types'
import { fallsTowardsHouse } from './house-sight'
import type { Plan } from './plan.schema'

/** Dangers of what stands or lies on the plot, whatever its zones are. */
export function dangersAround(plan: Plan, section: Section): readonly Settlement[] {
  const near = plan.survey.obstacles.flatMap((obstacle): Settlement[] => {
    const row = aroundRows.find(({ kind }) => kind === obstacle.kind)
    return row
      ? [
          {
            id: `around-${obstacle.id}`,
            kind: 'danger',
            what: `${obstacle.name} ${row.what}`,
            mend: row.mend,
            zoneId: undefined,
            atM: undefined,
            source: 'common-practice',
          },
        ]
      : []
  })
  return fallsTowardsHouse(plan, section) ? [...near, towardsHouse] : near
}

const towardsHouse: Settlement = {
  id: 'towards-house',
  kind: 'danger',
  what: 'The ground falls towards the house: its water ends at the wall.',
  mend: 'Stop it and lead it away before the house, by a drain that a drainage contractor sizes. Never send it to a neighbour; local rules say where it may go.',
  zoneId: undefined,
  atM: undefined,
  source: 'common-practice',
}

/** What stands or lies on the plot that can hurt, and whom to ask. */
const aroundRows: readonly {
  readonly kind: Plan['survey']['obstacles'][number]['kind']
  readonly what: string
  readonly mend: string
}[] = [
  {
    kind: 'wall',
    what: 'stands on the slope. Nobody has judged whether it is sound.',
    mend: 'We do not judge walls. Ask a structural engineer before you load, dig beside or drain behind it.',
  },
  {
    kind: 'services',
    what: 'may be hit when digging.',
    mend: 'Have the lines traced and marked by whoever owns them before anyone digs.',
  },
  {
    kind: 'spring',
    what: 'comes out of the ground here.',
    mend: 'Ask the water authority before you pipe it; wet ground on a bank may slip.',
  },
]
