import type { CoverKind } from '#core/cover'
import { scoreNames, whatWouldChange, type ScoreName, type ScoreRules, type WouldChange } from '#core/scores'
import type { Account } from '#core/units'
import type { Findings, ZoneFindings } from '#plan'

/** An account that can be asked for: of one zone, or of the whole plot. */
export interface Asked {
  readonly zoneId: string | undefined
  readonly about: ScoreName | 'water' | 'hours' | 'cover'
  /** The cover whose fitness is asked for; what stands when left out. */
  readonly cover?: CoverKind
}

/** A level book, ready to be shown. */
export interface Booked {
  readonly title: string
  readonly account: Account
  /** The score that stands and its class, when the account is a score. */
  readonly stands: { readonly name: ScoreName; readonly value: number; readonly class: string } | undefined
  readonly override: { readonly score: number; readonly reason: string } | undefined
  readonly wouldChange: readonly WouldChange[]
}

const scoreTitles: Readonly<Record<ScoreName, string>> = {
  wetness: 'How wet is',
  sun: 'How sunny is',
  erosion: 'How readily would soil wash off',
  frost: 'How frosty is',
  working: 'How hard to work is',
}

const coverTitles: Readonly<Record<CoverKind, string>> = {
  mown: 'mown grass',
  meadow: 'meadow',
  'ground-cover': 'ground cover',
  shrubs: 'shrubs',
  trees: 'trees',
  terrace: 'a terrace',
  leave: 'being left alone',
}

/** The account that was asked for; undefined when the findings hold none like it. */
export function bookedFor(asked: Asked, findings: Findings, rules: ScoreRules): Booked | undefined {
  const { zoneId, about } = asked
  if (zoneId === undefined) return about === 'water' ? plotWater(findings) : plotHours(findings)
  const zone = findings.zoning.zones.find(({ id }) => id === zoneId)
  const found = findings.zones.find((each) => each.zoneId === zoneId)
  if (!zone || !found) return undefined
  const name = `${zone.letter}, ${zone.name}`
  if (isScore(about)) return bookedScore(found, about, { name, rules })
  if (about === 'water') return plain(`The year’s water of ${name}`, waterOf(findings, zoneId))
  if (about === 'hours') return plain(`Hours of care for ${name}`, hoursOf(findings, zoneId))
  const kind = asked.cover ?? found.cover.chosen
  return plain(
    `${name} as ${coverTitles[kind]}`,
    found.cover.options.find((option) => option.kind === kind)?.fitness,
  )
}

const isScore = (about: Asked['about']): about is ScoreName => scoreNames.some((name) => name === about)

function bookedScore(
  found: ZoneFindings,
  score: ScoreName,
  { name, rules }: { readonly name: string; readonly rules: ScoreRules },
): Booked {
  const { value, class: named, account, override } = found.scores[score]
  return {
    title: `${scoreTitles[score]} ${name}?`,
    account,
    stands: { name: score, value, class: named },
    override,
    wouldChange: whatWouldChange(found.facts, rules, score),
  }
}

function plain(title: string, account: Account | undefined): Booked | undefined {
  return account && { title, account, stands: undefined, override: undefined, wouldChange: [] }
}

const plotWater = ({ water }: Findings): Booked | undefined => plain('The year’s water', water.account)

const waterOf = ({ water }: Findings, zoneId: string): Account | undefined =>
  water.units.find(({ id }) => id === zoneId)?.account

const hoursOf = ({ care }: Findings, zoneId: string): Account | undefined =>
  care.zones.find((zone) => zone.zoneId === zoneId)?.account

/** Zone by zone, as care books them. */
function plotHours({ care, zoning }: Findings): Booked | undefined {
  const lines = care.zones.map(({ zoneId, account }) => ({
    id: zoneId,
    amount: account.total,
    because: zoning.zones.find(({ id }) => id === zoneId)?.name ?? zoneId,
    source: 'care-hours',
  }))
  return plain('Hours of care in a year', {
    subject: 'Hours of care, all zones',
    unit: 'h a year',
    lines,
    total: care.hoursTotal,
  })
}
