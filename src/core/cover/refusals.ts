import type { AccountLine } from '#core/units'
import type { CoverFacts, CoverKind, CoverOption } from './cover.types'
import type { CoverLimits, CoverTables, Measured } from './cover.schema'
import type { JudgedMachine } from './machines'

/** Why a cover is refused, and where that comes from. */
export type Refusal = Pick<AccountLine, 'because' | 'source'>

/** Key of the account line that takes the points of a refused cover. */
export const REFUSED = 'refused'

/** A zone with everything a refusal may rest on. */
export interface Case {
  readonly zone: CoverFacts
  readonly facts: Measured
  readonly machines: readonly JudgedMachine[]
  readonly tables: CoverTables
}

/**
 * Whether a cover is refused outright: by a limit of the table, or because nothing can cut it.
 *
 * @param kind - the cover
 * @param given - the zone, its machines and the tables
 * @returns the first refusal; undefined when there is none
 */
export function refusalFor(kind: CoverKind, given: Case): Refusal | undefined {
  const row = given.tables.limits.covers.find((limit) => limit.cover === kind && broken(limit, given.facts))
  if (row) return { because: `${row.because} ${figure(row, given)}`.trim(), source: row.source }
  if (kind === 'mown') return nothingMows(given)
  if (kind === 'meadow') return nothingCuts(given)
  return undefined
}

/**
 * Why an option was refused, in words.
 *
 * @param option - one cover of a zone
 * @returns the reason; undefined when the option is not refused
 */
export function refusalOf(option: CoverOption): string | undefined {
  return option.fitness.lines.find((line) => line.id === REFUSED)?.because
}

type LimitRow = CoverLimits['covers'][number]

function broken(row: LimitRow, facts: Measured): boolean {
  const value = facts[row.measure]
  return row.side === 'above' ? value > row.limit : value < row.limit
}

/** How each measure is spoken of; yes-or-no measures need no figure. */
const figures: Partial<Record<LimitRow['measure'], (value: number) => string>> = {
  steepDeg: (value) => `is ${value.toFixed(1)}° in its steep part`,
  wetDays: (value) => `is too wet on ${value.toFixed(0)} days a year`,
  wetness: (value) => `has a wetness of ${value.toFixed(0)} of 100`,
  sunHours: (value) => `has ${value.toFixed(1)} h of midsummer sun`,
  areaM2: (value) => `has ${value.toFixed(1)} m² of slope`,
  soilDepthM: (value) => `has ${value.toFixed(2)} m of soil`,
}

function figure(row: LimitRow, { zone, facts }: Case): string {
  const words = figures[row.measure]
  return words ? `Zone ${zone.letter} ${words(facts[row.measure])}.` : ''
}

function nothingMows({ machines }: Case): Refusal | undefined {
  const mowers = machines.filter(({ machine }) => machine.sward.includes('short'))
  if (mowers.length === 0) return { because: 'No machine of the plan keeps turf short.', source: 'yours' }
  if (mowers.some(({ verdict }) => verdict.allowed)) return undefined
  return {
    because: mowers.map(({ verdict }) => verdict.because).join(' '),
    source: mowers.map(({ verdict }) => verdict.source)[0] ?? 'own-judgement',
  }
}

// Cutting on foot is always open, in the plan or borrowed, up to its limit.
function nothingCuts({ zone, machines, tables }: Case): Refusal | undefined {
  const limit = workLimit('cut-on-foot', tables)
  const tall = machines.some(({ machine, verdict }) => verdict.allowed && machine.sward.includes('tall'))
  if (tall || zone.slopeDegSteep <= limit.value) return undefined
  return {
    because: `${limit.because} Zone ${zone.letter} is ${zone.slopeDegSteep.toFixed(1)}° in its steep part.`,
    source: limit.source,
  }
}

/**
 * One limit of work.
 *
 * @param id - key of the limit
 * @param tables - machines and limits
 * @returns its row
 * @throws RangeError when the table lacks it
 */
export function workLimit(
  id: CoverLimits['work'][number]['id'],
  tables: CoverTables,
): CoverLimits['work'][number] {
  const row = tables.limits.work.find((limit) => limit.id === id)
  if (!row) throw new RangeError(`workLimit: data/cover/limits.json must hold ${id}, got none`)
  return row
}
