import type { DarkSpell } from '#core/shade'
import { dayWords } from './day-words'
import { counted, listed } from './figures-in-words'
import type { Phrase } from './phrase'

/** Days of a year without a leap day [d]. */
const YEAR_DAYS = 365

/** When the sun stays away from a place, in one sentence. */
export function darkSentence(dark: DarkSpell, place: string): string {
  if (dark.kind === 'none') return `Some direct sun reaches ${place} on every clear day of the year.`
  if (dark.kind === 'always') return `No direct sun reaches ${place} on any day of the year.`
  const [from, to] = darkDays(dark)
  return from === to
    ? `On ${dayWords(from)} no direct sun reaches ${place}.`
    : `From ${dayWords(from)} to ${dayWords(to)} no direct sun reaches ${place}: ${counted(dark.days, 'day')}.`
}

/** First and last day without sun. */
function darkDays({ lastDay, firstDay }: Extract<DarkSpell, { kind: 'spell' }>): readonly [number, number] {
  return [(lastDay % YEAR_DAYS) + 1, firstDay === 1 ? YEAR_DAYS : firstDay - 1]
}

/** A zone with the dark spell of its middle. */
interface DarkZone {
  readonly zone: { readonly letter: string }
  readonly sun: { readonly dark: DarkSpell }
}

/** The longest winter darkness, and which other zones have one; nothing where none has. */
export function darkNote(zones: readonly DarkZone[]): Phrase[] {
  const dark = zones
    .filter(({ sun }) => sun.dark.kind !== 'none')
    .sort((one, other) => lengthOf(other.sun.dark) - lengthOf(one.sun.dark))
  const [longest, ...others] = dark
  if (!longest) return [' No zone is without direct sun in winter.']
  const letters = others.map(({ zone }) => zone.letter).sort()
  return [
    ` ${darkSentence(longest.sun.dark, `the middle of ${longest.zone.letter}`)}`,
    ...(letters.length > 0
      ? [` ${listed(letters)} ${letters.length === 1 ? 'has' : 'have'} a shorter spell without it.`]
      : []),
  ]
}

function lengthOf(dark: DarkSpell): number {
  return dark.kind === 'spell' ? dark.days : dark.kind === 'always' ? YEAR_DAYS : 0
}
