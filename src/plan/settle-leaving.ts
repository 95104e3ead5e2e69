import type { Around, Leaving } from '#core/terrain'
import type { Settlement } from './findings.types'
import type { Beyond } from './plan-survey.schema'

/** Share of the plot's water that is worth a word when it leaves over one stretch [ratio]; own judgement. */
const NOTICED_SHARE = 0.1

/** What is said of water that leaves to each kind of neighbour that has a say. */
const leavingRows: Partial<
  Readonly<Record<Beyond['what'], { readonly what: string; readonly mend: string }>>
> = {
  neighbour: {
    what: 'a neighbour',
    mend: 'Water must not be gathered and sent to a neighbour: let it soak in or lead it elsewhere, as local law allows. Ask a drainage contractor before you change where it goes.',
  },
  road: {
    what: 'a road',
    mend: 'Water on a road freezes and carries soil: keep it back with planting or a drain that a drainage contractor sizes, and ask whoever looks after the road.',
  },
}

/** Clashes where a good part of the plot's water runs to a neighbour or a road. */
export function leavingClashes({ leaving }: Around, beyond: readonly Beyond[]): readonly Settlement[] {
  const bySide = new Map<string, Leaving[]>()
  for (const one of leaving)
    if (one.beyondId !== undefined) bySide.set(one.beyondId, [...(bySide.get(one.beyondId) ?? []), one])
  return beyond.flatMap(({ id, name, what }): Settlement[] => {
    const row = leavingRows[what]
    const runs = bySide.get(id) ?? []
    const share = runs.reduce((sum, run) => sum + run.share, 0)
    const [most] = runs
    if (!row || !most || share < NOTICED_SHARE) return []
    return [
      {
        id: `leaving-${id}`,
        kind: 'clash',
        what: `The water of ${Math.round(share * 100)} % of the plot runs off to ${name}, ${row.what}.`,
        mend: row.mend,
        zoneId: undefined,
        atM: undefined,
        at: most.at,
        source: 'common-practice',
      },
    ]
  })
}
