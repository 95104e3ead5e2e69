import { booksOut, type Account } from '#core/units'
import { grouped } from '../../words/figures-in-words'

/** A line of the level book, as printed. */
interface BookRow {
  readonly id: string
  /** Letter that is pinned on the section; none for the start. */
  readonly letter: string
  readonly adds: string
  readonly takes: string
  readonly running: string
  readonly because: string
  readonly source: string
}

/** A level book, as printed. */
export interface Book {
  readonly rows: readonly BookRow[]
  readonly adds: string
  readonly takes: string
  readonly total: string
  /** The sum that proves itself. */
  readonly proof: string
  readonly booksOut: boolean
  /** Whether printed figures were rounded. */
  readonly rounded: boolean
}

/** Figures after the point tried, the fewest at which the printed sum is right. */
const DECIMALS = [0, 1, 2, 3] as const

/** Differences smaller than this print alike [account unit]. */
const SAME = 1e-9

/**
 * Books an account down the page: what adds, what takes away, and the running figure. Where the account starts from
 * a base, the base stands in the running column alone.
 */
export function bookRows(account: Account): Book {
  const base = baseOf(account)
  const rest = base ? account.lines.slice(1) : account.lines
  const adds = sum(rest.map(({ amount }) => Math.max(0, amount)))
  const takes = sum(rest.map(({ amount }) => Math.max(0, -amount)))
  const decimals = decimalsFor(account, [base?.amount ?? 0, adds, -takes])
  const print = (value: number) => printed(value, decimals)
  let running = 0
  const rows = account.lines.map((line, at): BookRow => {
    running += line.amount
    const start = line === base
    return {
      id: line.id,
      letter: start ? '' : letterAt(base ? at - 1 : at),
      adds: !start && line.amount >= -SAME ? print(settled(line.amount)) : '',
      takes: !start && line.amount < -SAME ? print(-line.amount) : '',
      running: print(settled(running)),
      because: line.because,
      source: line.source,
    }
  })
  const proved = booksOut(account)
  return {
    rows,
    adds: print(adds),
    takes: print(takes),
    total: print(account.total),
    proof: proofWords({ start: base?.amount, adds, takes, total: settled(account.total), proved }, print),
    booksOut: proved,
    rounded: account.lines.some(({ amount }) => Math.abs(amount - rounded(amount, decimals)) > SAME),
  }
}

/** A score starts from its base: a first line in points of 100, of zero or more, that its rule calls so. */
function baseOf({ lines }: Account) {
  const [first] = lines
  return first && (first.id === 'base' || first.id.endsWith('-base')) ? first : undefined
}

/** The fewest decimals at which the printed parts add up to the printed total; whole figures stay whole. */
function decimalsFor(account: Account, parts: readonly number[]): number {
  const whole = account.lines.every(({ amount }) => Number.isInteger(amount))
  // Depths of water are told in whole millimetres, volumes and hours to a tenth.
  const least = whole || account.unit.startsWith('mm') ? 0 : 1
  const holds = (decimals: number) =>
    Math.abs(sum(parts.map((part) => rounded(part, decimals))) - rounded(account.total, decimals)) < SAME
  return DECIMALS.find((decimals) => decimals >= least && holds(decimals)) ?? 3
}

interface Proof {
  readonly start: number | undefined
  readonly adds: number
  readonly takes: number
  readonly total: number
  readonly proved: boolean
}

function proofWords({ start, adds, takes, total, proved }: Proof, print: (value: number) => string): string {
  const parts = [
    start === undefined ? '' : print(start),
    start === undefined ? print(adds) : `+ ${print(adds)}`,
    takes > 0 || start !== undefined ? `− ${print(takes)}` : '',
  ].filter(Boolean)
  if (proved && start === undefined && takes === 0)
    return `The lines add up to ${print(total)}. It books out.`
  const verdict = proved ? closing(start, total) : 'It does not book out: do not rely on it.'
  return `${parts.join(' ')} = ${print(total)}. ${verdict}`
}

function closing(start: number | undefined, total: number): string {
  return start === undefined && total === 0 ? 'Nothing unaccounted for.' : 'It books out.'
}

/** a to z, then aa, ab. */
export function letterAt(index: number): string {
  const letter = String.fromCharCode(97 + (index % 26))
  return index < 26 ? letter : letterAt(Math.floor(index / 26) - 1) + letter
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}

/** Nothing is a plain 0. */
function printed(value: number, decimals: number): string {
  return rounded(value, decimals) === 0 ? '0' : grouped(value, decimals)
}

function rounded(value: number, decimals: number): number {
  return Math.round(value * 10 ** decimals) / 10 ** decimals
}

/** Sums of many parts that should be nothing are nothing. */
function settled(value: number): number {
  return Math.abs(value) < 1e-6 ? 0 : value
}
