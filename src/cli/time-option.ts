import type { Arguments } from './arguments'
import { UsageError } from './exit'

const MINUTES_PER_H = 60

/** Time by the sun [h] that --time gives, 12 when it is highest. */
export function sunTime(given: Arguments): number | undefined {
  const text = written(given, 'time')
  if (text === undefined) return undefined
  if (given.options.includes('clock')) throw new UsageError('Give --time or --clock, not both.')
  const [hours = NaN, minutes = NaN] = text.split(':').map(Number)
  return hours + minutes / MINUTES_PER_H
}

/** Time by the clock that --clock gives, as HH:MM. */
export function clockTime(given: Arguments): string | undefined {
  return written(given, 'clock')
}

function written(given: Arguments, name: 'time' | 'clock'): string | undefined {
  const text = given.text(name)
  if (text !== undefined && !/^([01]?\d|2[0-3]):[0-5]\d$|^24:00$/.test(text))
    throw new UsageError(`--${name} needs hours and minutes as HH:MM, 00:00 to 24:00; not “${text}”.`)
  return text
}
