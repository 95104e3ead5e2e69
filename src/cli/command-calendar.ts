import { careCalendar } from '#io'
import type { Arguments } from './arguments'
import { complainOf, writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'
import { assessFile } from './read-plan'

/** First year of a calendar when none is asked for; fixed, so that the same plan gives the same bytes. */
const FIRST_YEAR = 2027

/** Writes the year's jobs for a calendar program. */
export function calendar(given: Arguments, console: Console): number {
  const [file] = given.words
  if (file === undefined) throw new UsageError('calendar needs a plan.')
  const asked = given.number('year')
  const year = asked ?? FIRST_YEAR
  if (!(Number.isInteger(year) && year >= 1970 && year <= 9999))
    throw new UsageError(`--year needs a year of 1970 to 9999, not ${year}.`)
  const assessed = assessFile(file)
  if (!assessed.ok) return complainOf(assessed.problems, console)
  const { plan, findings } = assessed.value
  if (asked === undefined) console.complain(`The calendar begins in ${FIRST_YEAR}; --year says otherwise.`)
  writeText(given.text('out'), careCalendar(plan, findings, year), console)
  return exitCodes.done
}
