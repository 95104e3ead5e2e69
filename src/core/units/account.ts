/** One entry of a level book of reasons: an amount, why it stands there, and where the reason comes from. */
export interface AccountLine {
  /** Short key of the rule or formula behind the entry, unique within its account. */
  readonly id: string
  /** What the entry adds (or, when negative, takes away), in the account's unit. */
  readonly amount: number
  /** The reason, in a gardener's words, figures and units included. */
  readonly because: string
  /** A key of data/sources.json, or `yours` for what the person measured or decided. */
  readonly source: string
}

/** A number with every entry it is made of. The entries always add up to the total. */
export interface Account {
  /** What is being counted, such as "Wetness of zone B". */
  readonly subject: string
  /** Unit of every amount and of the total, such as "points of 100", "h a year", "mm a year". */
  readonly unit: string
  readonly lines: readonly AccountLine[]
  /** Sum of the lines, in the account's unit. */
  readonly total: number
}

/** Amounts closer than this are the same entry [account unit]. */
const BOOKING_TOLERANCE = 1e-6

/**
 * Books entries into an account whose total is their sum.
 *
 * @param subject - what is counted
 * @param unit - unit of all amounts
 * @param lines - the entries, each amount finite [account unit]
 * @returns the account; its total is the exact sum of its lines
 * @throws RangeError when an amount is not finite
 */
export function book(subject: string, unit: string, lines: readonly AccountLine[]): Account {
  let total = 0
  for (const line of lines) {
    if (!Number.isFinite(line.amount))
      throw new RangeError(`book: the amount of ${line.id} must be finite, got ${line.amount}`)
    total += line.amount
  }
  return { subject, unit, lines, total }
}

/**
 * Whether an account's entries add up to its total.
 *
 * @param account - the account to prove
 * @returns true when it books out
 */
export function booksOut(account: Account): boolean {
  const sum = account.lines.reduce((running, line) => running + line.amount, 0)
  return Math.abs(sum - account.total) < BOOKING_TOLERANCE
}
