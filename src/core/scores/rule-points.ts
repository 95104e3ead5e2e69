import type { FactName, ScoreFacts } from './facts'
import type { Conditions, ScoreRule } from './score-rules.schema'

/**
 * Points that a rule gives a zone.
 *
 * @param rule - the rule
 * @param facts - the zone's facts
 * @returns whole points [points of 100]; 0 where the rule does not count
 */
export function rulePoints(rule: ScoreRule, facts: ScoreFacts): number {
  if (!allHold(rule.when, facts)) return 0
  if (typeof rule.points === 'number') return rule.points
  // Adding 0 turns a rounded -0 into 0.
  return Math.round(between(rule.points.table, facts[rule.points.fact])) + 0
}

/**
 * Whether all conditions hold.
 *
 * @param when - the conditions; none always hold
 * @param facts - the zone's facts
 * @returns true when they do
 */
export function allHold(when: Conditions | undefined, facts: ScoreFacts): boolean {
  return Object.entries(when ?? {}).every(([name, limits]) => {
    const value = facts[name as FactName]
    return value > (limits.above ?? -Infinity) && value < (limits.below ?? Infinity)
  })
}

// Straight between the rows, level beyond the first and last.
function between(table: readonly (readonly [number, number])[], at: number): number {
  const above = table.findIndex(([x]) => x >= at)
  const upper = table[above]
  const lower = table[above - 1]
  if (!upper) return table.at(-1)?.[1] ?? 0
  if (!lower) return upper[1]
  return lower[1] + ((at - lower[0]) / (upper[0] - lower[0])) * (upper[1] - lower[1])
}
