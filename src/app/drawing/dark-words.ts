import type { DarkSpell } from '#core/shade'
import { counted, dayWords } from '#report'

/** When the sun leaves in winter and comes back. */
export function darkWords(dark: DarkSpell): string {
  if (dark.kind === 'none') return 'It has some direct sun on every clear day of the year.'
  if (dark.kind === 'always') return 'No direct sun comes here on any day of the year.'
  return `The sun leaves after ${dayWords(dark.lastDay)} and is back on ${dayWords(dark.firstDay)}: ${counted(dark.days, 'day')} without direct sun.`
}
