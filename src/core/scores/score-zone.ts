import { book, type AccountLine } from '#core/units'
import { factInWords, factNames, type FactName, type ScoreFacts } from './facts'
import { rulePoints } from './rule-points'
import type { ScoreRule, ScoreRules } from './score-rules.schema'
import type { Override, Score, ScoreName, Scores } from './score.types'

/** Ends of every score [points]. */
const LEAST = 0
const MOST = 100

/**
 * Scores a zone for wetness, sun, erosion, frost and difficulty of working, each with its level book: whole points
 * that add up to the score exactly.
 *
 * @param facts - the zone's facts, all finite
 * @param rules - the tables of data/rules
 * @param overrides - the person's own scores, whole, 0 to 100
 * @param subject - what is scored, such as "zone B"
 * @returns the five scores
 * @throws RangeError when a fact is not finite or an override is not a whole number of 0 to 100
 */
export function scoreZone(
  facts: ScoreFacts,
  rules: ScoreRules,
  overrides: Partial<Record<ScoreName, Override>>,
  subject: string,
): Scores {
  checkFacts(facts)
  const score = (name: ScoreName): Score => {
    const lines = ledger(name, facts, rules)
    const account = book(`${titles[name]} of ${subject}`, 'points of 100', lines)
    const override = checked(overrides[name])
    const value = override?.score ?? account.total
    return { name, value, class: classOf(name, value, rules), ours: account.total, account, override }
  }
  return {
    wetness: score('wetness'),
    sun: score('sun'),
    erosion: score('erosion'),
    frost: score('frost'),
    working: score('working'),
  }
}

const titles: Readonly<Record<ScoreName, string>> = {
  wetness: 'Wetness',
  sun: 'Sun',
  erosion: 'Erosion',
  frost: 'Frost',
  working: 'Difficulty of working',
}

/**
 * Our score by itself, without the book.
 *
 * @param name - which score
 * @param facts - the zone's facts
 * @param rules - the tables of data/rules
 * @returns whole points [points of 100], 0 to 100
 */
export function pointsOf(name: ScoreName, facts: ScoreFacts, rules: ScoreRules): number {
  return ledger(name, facts, rules).reduce((sum, line) => sum + line.amount, 0)
}

/**
 * The named class of a score.
 *
 * @param name - which score
 * @param value - the score [points of 100], 0 to 100
 * @param rules - the tables of data/rules
 * @returns the class, such as "dry"
 */
export function classOf(name: ScoreName, value: number, rules: ScoreRules): string {
  const reached = rules.classes.filter(({ score, from }) => score === name && from <= value)
  return reached.reduce((best, each) => (each.from > best.from ? each : best), { from: -1, name: '' }).name
}

// The base, every rule that gives points, and what limits the sum.
function ledger(name: ScoreName, facts: ScoreFacts, rules: ScoreRules): AccountLine[] {
  const lines = [
    ...rules.bases
      .filter(({ score }) => score === name)
      .map(({ id, points, because, source }) => ({ id, amount: points, because, source })),
    ...rules[name].flatMap((rule) => {
      const amount = rulePoints(rule, facts)
      return amount === 0
        ? []
        : [{ id: rule.id, amount, because: sentence(rule, amount, facts), source: rule.source }]
    }),
  ]
  const sum = lines.reduce((so, { amount }) => so + amount, 0)
  const limited = Math.min(MOST, Math.max(LEAST, sum))
  return limited === sum ? lines : [...lines, limitLine(sum, limited)]
}

function limitLine(sum: number, limited: number): AccountLine {
  return {
    id: 'limit',
    amount: limited - sum,
    because: `The reasons come to ${sum}; a score ends at ${limited}.`,
    source: 'own-judgement',
  }
}

function sentence(rule: ScoreRule, amount: number, facts: ScoreFacts): string {
  const words = amount < 0 ? (rule.becauseLess ?? rule.because) : rule.because
  return words.replace(/\{(\w+)\}/g, (_, name: string) =>
    factInWords(name as FactName, facts[name as FactName]),
  )
}

function checkFacts(facts: ScoreFacts): void {
  for (const name of factNames)
    if (!Number.isFinite(facts[name]))
      throw new RangeError(`scoreZone: ${name} must be finite, got ${facts[name]}`)
}

function checked(override: Override | undefined): Override | undefined {
  if (!override) return undefined
  const { score } = override
  if (!Number.isInteger(score) || score < LEAST || score > MOST)
    throw new RangeError(`scoreZone: an override must be a whole number of 0 to 100, got ${score}`)
  return override
}
