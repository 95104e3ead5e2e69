import type { Obstacle, Plan } from '#plan'
import type { Trial } from './trials-of-things'

type Kind = Obstacle['kind']

const rows: readonly { readonly kinds: readonly Kind[]; readonly says: string }[] = [
  {
    kinds: ['tree', 'hedge'],
    says: 'Before anything is cut: trees and hedges may be protected by law, and may hold nests or bats. Ask your local authority first, and leave nesting birds in peace.',
  },
  {
    kinds: ['tree'],
    says: 'Work in a tree is no work for a ladder. Have an arborist look at it and do it. Roots hold the bank: ask also what becomes of them.',
  },
  {
    kinds: ['hedge', 'fence', 'wall'],
    says: 'What stands on a boundary may be your neighbour’s, or both of yours: talk first, and ask what local rules say of its height.',
  },
  {
    kinds: ['wall'],
    says: 'A wall may hold up the ground behind it. We do not judge walls: ask a structural engineer before any of it comes down.',
  },
  {
    kinds: ['house', 'building'],
    says: 'Buildings need leave and a builder; old roofs and walls may hold asbestos. Ask your local authority.',
  },
]

/** What to see to before a trial is made so, by what it changes. */
export function trialCautions({ survey }: Plan, { changes }: Trial): string[] {
  const changed = new Set(changes.map(({ thingId }) => thingId))
  const kinds = survey.obstacles.filter(({ id }) => changed.has(id)).map(({ kind }) => kind)
  return rows.filter((row) => kinds.some((kind) => row.kinds.includes(kind))).map(({ says }) => says)
}
