import type { FactName, ScoreFacts } from './facts'
import { allHold } from './rule-points'
import { classOf, pointsOf } from './score-zone'
import type { ScoreChange, ScoreRules } from './score-rules.schema'
import type { ScoreName } from './score.types'

/** What a score would come to if something were done. */
export interface WouldChange {
  readonly id: string
  /** What would be done, such as "7 cm of mulch, kept topped up". */
  readonly what: string
  /** Our score then, and how far it moves [points of 100]. */
  readonly score: number
  readonly moves: number
  /** Class of the score then. */
  readonly class: string
  readonly because: string
  readonly source: string
}

/** Most changes that are told. */
const MOST_TOLD = 3

/**
 * What would change a score, found by changing the facts and running the rules again.
 *
 * @param facts - the zone's facts
 * @param rules - the tables of data/rules
 * @param name - which score
 * @returns up to three changes that move the score, the strongest first
 */
export function whatWouldChange(
  facts: ScoreFacts,
  rules: ScoreRules,
  name: ScoreName,
): readonly WouldChange[] {
  const now = pointsOf(name, facts, rules)
  return rules.changes
    .filter((change) => change.scores.includes(name) && allHold(change.when, facts))
    .map((change) => {
      const score = pointsOf(name, changed(facts, change), rules)
      const { id, what, because, source } = change
      return { id, what, score, moves: score - now, class: classOf(name, score, rules), because, source }
    })
    .filter(({ moves }) => moves !== 0)
    .sort((one, other) => Math.abs(other.moves) - Math.abs(one.moves))
    .slice(0, MOST_TOLD)
}

function changed(facts: ScoreFacts, { set }: ScoreChange): ScoreFacts {
  const anew = { ...facts }
  for (const [name, { times = 1, plus = 0, atMost }] of Object.entries(set)) {
    const before = facts[name as FactName]
    const after = before * times + plus
    anew[name as FactName] = atMost === undefined ? after : Math.min(after, Math.max(before, atMost))
  }
  return anew
}
