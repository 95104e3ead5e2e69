import { book, type AccountLine } from '#core/units'
import type { CoverBrief, CoverFacts, CoverKind, CoverOption, MowingVerdict, ZoneCover } from './cover.types'
import { coverKinds } from './cover.types'
import type { CoverTables, Machine } from './cover.schema'
import { closeCall, steepestFor } from './close-call'
import { judgeMachines } from './machines'
import { holds, measured } from './measured'
import { REFUSED, refusalFor, workLimit, type Case } from './refusals'
import { terracesOn } from './terrace'

/**
 * What one zone can carry: every machine and every cover judged, the best suggested. A person's choice stands even where
 * it is refused; the option keeps its refusal so that the plan can warn.
 *
 * @param zone - the zone's facts
 * @param brief - machines with their plate figures, and the lie of the ground
 * @param tables - machines, limits, rules and cautions
 * @param choice - the person's own decision, if any
 * @returns verdicts, accounts, suggestion and what stands
 * @throws RangeError when a fact is out of range, or a machine is not in the table
 */
export function coverOf(
  zone: CoverFacts,
  brief: CoverBrief,
  tables: CoverTables,
  choice?: CoverKind,
): ZoneCover {
  const facts = measured(zone, brief)
  const given: Case = { zone, facts, machines: judgeMachines(zone, brief.machines, tables), tables }
  const options = coverKinds.map((kind) => optionOf(kind, given))
  const suggested = best(options)
  return {
    zoneId: zone.zoneId,
    mowing: mowingOf(given, options),
    machines: given.machines.map(({ verdict }) => verdict),
    options,
    suggested,
    chosen: choice ?? suggested,
    chosenByPerson: choice !== undefined,
    terraces: openTo('terrace', options) ? terracesOn(zone, tables.limits.terraces) : [],
  }
}

function optionOf(kind: CoverKind, given: Case): CoverOption {
  const { zone, facts, tables } = given
  const lines = pointLines(kind, given)
  const points = lines.reduce((sum, line) => sum + line.amount, 0)
  const refusal = refusalFor(kind, given)
  const closing = refusal ? [{ id: REFUSED, amount: -points, ...refusal }] : withinScale(points)
  const fitness = book(`Fitness of zone ${zone.letter} for ${coverNames[kind]}`, 'points of 100', [
    ...lines,
    ...closing,
  ])
  return {
    kind,
    verdict: refusal
      ? 'refused'
      : fitness.total >= workLimit('good-from', tables).value
        ? 'good'
        : 'possible',
    fitness,
    cautions: tables.cautions
      .filter((row) => row.covers.includes(kind) && holds(row.when, facts))
      .map(({ id, text, source }) => ({ id, text, source })),
    closeCall: closeCallFor(kind, refusal !== undefined, given),
  }
}

/** How covers are called in a sentence. */
const coverNames: Readonly<Record<CoverKind, string>> = {
  mown: 'mown grass',
  meadow: 'a meadow',
  'ground-cover': 'ground cover',
  shrubs: 'shrubs',
  trees: 'trees',
  terrace: 'terraces',
  leave: 'leaving it alone',
}

// A cover that something else refuses is not a close call, however near the limit of steepness lies.
function closeCallFor(kind: CoverKind, refused: boolean, given: Case): string | undefined {
  const limitDeg = steepestFor(kind, given)
  if (limitDeg === undefined || (refused && given.zone.slopeDegSteep <= limitDeg)) return undefined
  return closeCall(given.zone, limitDeg, `for ${coverNames[kind]}`)
}

function openTo(cover: CoverKind, options: readonly CoverOption[]): boolean {
  return options.some(({ kind, verdict }) => kind === cover && verdict !== 'refused')
}

function pointLines(kind: CoverKind, { facts, tables }: Case): AccountLine[] {
  return tables.rules
    .filter((rule) => rule.covers.includes(kind) && holds(rule.when, facts))
    .map(({ id, points, because, source }) => ({ id, amount: points, because, source }))
}

/** Highest fitness [points of 100]. */
const FULL_POINTS = 100

// Books what lies outside the scale, so that the account still adds up.
function withinScale(points: number): AccountLine[] {
  if (points >= 0 && points <= FULL_POINTS) return []
  const because = points < 0 ? 'Fitness ends at 0 points.' : 'Fitness ends at 100 points.'
  const amount = Math.min(FULL_POINTS, Math.max(0, points)) - points
  return [{ id: 'scale', amount, because, source: 'own-judgement' }]
}

/** Where two covers are equally fit, the one that binds the ground better goes first. */
const bindingOrder: readonly CoverKind[] = [
  'ground-cover',
  'shrubs',
  'trees',
  'meadow',
  'mown',
  'leave',
  'terrace',
]

function best(options: readonly CoverOption[]): CoverKind {
  const open = options.filter(({ verdict }) => verdict !== 'refused')
  const ranked = [...open].sort(
    (one, other) =>
      other.fitness.total - one.fitness.total ||
      bindingOrder.indexOf(one.kind) - bindingOrder.indexOf(other.kind),
  )
  return ranked[0]?.kind ?? 'leave'
}

// Machines that carry or replace the person count as mowing; the rest is work on foot.
function mowingOf({ zone, machines, tables }: Case, options: readonly CoverOption[]): MowingVerdict {
  if (zone.slopeDegSteep > workLimit('advice', tables).value) return 'never'
  const open = options.filter(({ verdict }) => verdict !== 'refused').map(({ kind }) => kind)
  if (open.includes('mown'))
    return machines.some(({ machine, verdict }) => verdict.allowed && carries(machine))
      ? 'mow'
      : 'mow-on-foot'
  const cutOnFoot = zone.slopeDegSteep <= workLimit('cut-on-foot', tables).value
  return cutOnFoot || open.includes('meadow') ? 'cut-once' : 'leave'
}

const carries = ({ guide, sward }: Machine): boolean => guide !== 'walked' && sward.includes('short')
