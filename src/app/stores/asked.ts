import type { CoverKind } from '#core/cover'
import {
  scoreNames,
  whatWouldChange,
  type Score,
  type ScoreName,
  type ScoreRules,
  type WouldChange,
} from '#core/scores'
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
  /** Letter of the zone, when it is of one. */
  readonly letter: string | undefined
  readonly account: Account
  /** The score that stands, when the account is one. */
  readonly score: Score | undefined
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
  if (zoneId === undefined)
    return about === 'water' ? plain('The year’s water', findings.water.account) : plotHours(findings)
  const zone = findings.zoning.zones.find(({ id }) => id === zoneId)
  const own = findings.zones.find((each) => each.zoneId === zoneId)
  if (!zone || !own) return undefined
  const booked = isScore(about)
    ? bookedScore(own, about, { name: zone.name, rules })
    : bookedZone(asked, { own, findings, name: zone.name })
  return booked && { ...booked, letter: zone.letter }
}

const isScore = (about: Asked['about']): about is ScoreName => scoreNames.some((name) => name === about)

function bookedScore(
  own: ZoneFindings,
  name: ScoreName,
  of: { readonly name: string; readonly rules: ScoreRules },
): Booked {
  const score = own.scores[name]
  return {
    title: `${scoreTitles[name]} ${of.name}?`,
    letter: undefined,
    account: score.account,
    score,
    wouldChange: whatWouldChange(own.facts, of.rules, name),
  }
}

interface Of {
  readonly own: ZoneFindings
  readonly findings: Findings
  readonly name: string
}

function bookedZone({ about, cover }: Asked, { own, findings, name }: Of): Booked | undefined {
  const { zoneId } = own
  if (about === 'water')
    return plain(`The year’s water of ${name}`, findings.water.units.find(({ id }) => id === zoneId)?.account)
  if (about === 'hours')
    return plain(
      `Hours of care for ${name}`,
      findings.care.zones.find((zone) => zone.zoneId === zoneId)?.account,
    )
  const kind = cover ?? own.cover.chosen
  return plain(
    `${name} as ${coverTitles[kind]}`,
    own.cover.options.find((option) => option.kind === kind)?.fitness,
  )
}

function plain(title: string, account: Account | undefined): Booked | undefined {
  return account && { title, letter: undefined, account, score: undefined, wouldChange: [] }
}

/** Zone by zone, as care books them. */
function plotHours({ care, zoning }: Findings): Booked | undefined {
  const lines = care.zones.map(({ zoneId, account }) => {
    const zone = zoning.zones.find(({ id }) => id === zoneId)
    return {
      id: zoneId,
      amount: account.total,
      because: `${zone?.letter ?? ''}, ${zone?.name ?? zoneId}: its own book has the jobs`,
      source: 'yours',
    }
  })
  return plain('Where the hours go', {
    subject: 'Hours of care in an established year, zone by zone',
    unit: 'h a year',
    lines,
    total: care.hoursTotal,
  })
}
