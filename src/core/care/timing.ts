import { daysInMonth, monthNames, type Month } from '#core/units'
import type { CareBrief } from './care.types'
import type { Operation } from './care.schema'
import { windowAt, type Seasons, type Window } from './seasons'

/** When a job falls, how often, and what to mind. */
export interface Turn extends Window {
  /** Stays the same wherever the turn falls, so that calendar entries keep their ids. */
  readonly key: string
  readonly times: number
  /** Why it falls here and not in its best month; empty when it does. */
  readonly note: string
  /** Water to give each time, for watering [L/m²]. */
  readonly litresPerM2: number
}

/**
 * The turns of one operation in a year.
 *
 * @param operation - the table row
 * @param seasons - the zone's seasons
 * @param brief - climate, for the rain
 * @returns its turns in the order of the table; none where nothing is to do
 * @throws RangeError when nesting leaves an operation no month
 */
export function turnsOf(operation: Operation, seasons: Seasons, brief: CareBrief): Turn[] {
  const { timing } = operation
  switch (timing.kind) {
    case 'growing':
      return growingTurns(timing.timesPerMonth, seasons)
    case 'visits':
      return timing.visits.map((choices, at) => visitTurn(operation, choices, at, seasons))
    case 'dry-weeks':
      return dryTurns(timing.months, timing.litresPerM2Week, seasons, brief)
  }
}

const monthKey = (month: Month): string => `m${String(month + 1).padStart(2, '0')}`

const wholeMonth = (month: Month): Window => ({ month, fromDay: 1, toDay: daysInMonth[month] })

function growingTurns(times: number, { growing, wet, wetDays }: Seasons): Turn[] {
  const firm = growing.filter((month) => !wet.includes(month))
  const plain = (month: Month): Turn => ({
    ...wholeMonth(month),
    key: monthKey(month),
    times,
    note: '',
    litresPerM2: 0,
  })
  if (firm.length > 0) return firm.map(plain)
  const [driest] = [...growing].sort((one, other) => wetDays[one] - wetDays[other])
  return driest === undefined
    ? []
    : [{ ...plain(driest), times: 1, note: 'Every growing month is too wet: wait here for a firm day.' }]
}

function visitTurn(operation: Operation, choices: readonly string[], at: number, seasons: Seasons): Turn {
  const wanted = choices.map((text) => windowAt(text, seasons.latitudeDeg))
  const lawful = operation.avoid.includes('birds')
    ? wanted.filter(({ month }) => !seasons.birds.includes(month))
    : wanted
  const clear = lawful.find((window) => bothers(operation, window.month, seasons).length === 0)
  const chosen = clear ?? leastBad(operation, lawful, seasons)
  const best = wanted[0]
  if (!chosen || !best)
    throw new RangeError(`careYear: ${operation.id} must have a month outside nesting, got none`)
  return {
    ...chosen,
    key: `v${at + 1}`,
    times: 1,
    note: clear ? movedNote(best, chosen) : waitNote(bothers(operation, chosen.month, seasons)),
    litresPerM2: 0,
  }
}

type Bother = 'wet' | 'frost'

function bothers(operation: Operation, month: Month, seasons: Seasons): Bother[] {
  return (['wet', 'frost'] as const).filter(
    (bother) => operation.avoid.includes(bother) && seasons[bother].includes(month),
  )
}

function leastBad(operation: Operation, windows: readonly Window[], seasons: Seasons): Window | undefined {
  const weight = ({ month }: Window): number =>
    bothers(operation, month, seasons).length * daysInMonth[month] + seasons.wetDays[month]
  return [...windows].sort((one, other) => weight(one) - weight(other))[0]
}

const movedNote = (best: Window, chosen: Window): string =>
  best.month === chosen.month
    ? ''
    : `${monthNames[best.month]} would be usual, but the zone is better left alone then.`

const waitNote = (found: readonly Bother[]): string =>
  found.includes('frost')
    ? 'No month of its season is free of frost: wait for open ground.'
    : 'No month of its season is dry: wait for a firm day.'

/** Days of a week [d]. */
const WEEK_DAYS = 7

function dryTurns(
  texts: readonly string[],
  litresPerM2Week: number,
  { latitudeDeg }: Seasons,
  brief: CareBrief,
): Turn[] {
  return texts.flatMap((text) => {
    const window = windowAt(text, latitudeDeg)
    const weeks = daysInMonth[window.month] / WEEK_DAYS
    const rainMm = brief.months[window.month]?.rainMm ?? 0
    // A millimetre of rain is a litre on each square metre.
    const litresPerM2 = litresPerM2Week - rainMm / weeks
    if (litresPerM2 <= 0) return []
    const note = `Rain gives ${(rainMm / weeks).toFixed(0)} L/m² a week here: ${litresPerM2.toFixed(0)} L/m² are missing.`
    return [{ ...window, key: monthKey(window.month), times: Math.round(weeks), note, litresPerM2 }]
  })
}
