import type { DarkSpell, PlaceDay } from '#core/shade'
import { counted } from '#report'
import { dayWords, hourWords } from './year-days'

/** Turns a time by the sun into a time by the clock; none where no clock is known. */
export type ByClock = (hourBySun: number) => string | undefined

/** A time without anything in the sun's way, 0 to 1. */
const CLEAR = 0.995

/** The times with sun, one after the other: "6:10 to 9:40 by the sun". */
export function spellsOf({ spells }: PlaceDay, byClock: ByClock) {
  return spells.map(({ fromH, toH, through }) => {
    const [from, to] = [byClock(fromH), byClock(toH)]
    return {
      bySun: `${hourWords(fromH)} to ${hourWords(toH)}`,
      byClock: from !== undefined && to !== undefined ? `${from} to ${to}` : undefined,
      light: through >= CLEAR ? 'full sun' : `${Math.round(through * 100)} % comes through`,
    }
  })
}

/** When the sun leaves in winter and comes back. */
export function darkWords(dark: DarkSpell): string {
  if (dark.kind === 'none') return 'It has some direct sun on every clear day of the year.'
  if (dark.kind === 'always') return 'No direct sun comes here on any day of the year.'
  return `The sun leaves after ${dayWords(dark.lastDay)} and is back on ${dayWords(dark.firstDay)}: ${counted(dark.days, 'day')} without direct sun.`
}
