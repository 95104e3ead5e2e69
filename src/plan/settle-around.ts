import type { Around, Section } from '#core/terrain'
import type { Settlement } from './findings.types'
import type { Plan } from './plan.schema'
import { houseSettlements } from './settle-house'
import { leavingClashes } from './settle-leaving'

/** What lies around the plot and stands on it, whatever its zones are: dangers, and then clashes and gaps. */
export function settleAround(plan: Plan, section: Section, around: Around): readonly Settlement[] {
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
  return [
    ...near,
    ...houseSettlements(plan, section, around.houses),
    ...leavingClashes(around, plan.survey.beyond ?? []),
  ]
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
