import { trueBearing } from '#core/booking'
import { declinationAt } from '#io'
import type { Arguments } from './arguments'
import { complainOf, type Console } from './console'
import { exitCodes, UsageError } from './exit'

/** Turns a compass bearing to true north. */
export function bearing(given: Arguments, console: Console): number {
  const [text = ''] = given.words
  const magneticDeg = Number(text)
  if (text.trim() === '' || !(magneticDeg >= 0 && magneticDeg <= 360))
    throw new UsageError('bearing needs a compass bearing of 0 to 360.')
  const on = given.text('on')
  if (on === undefined) throw new UsageError('bearing needs --on, the day it was taken.')
  const found = declinationAt(
    needed(given, 'latitude'),
    needed(given, 'longitude'),
    given.number('elevation') ?? 0,
    on,
  )
  if (!found.ok) return complainOf(found.problems, console)
  const { declinationDeg, model } = found.value
  console.print(
    `${trueBearing(magneticDeg, declinationDeg).toFixed(2)}° from true north: ${magneticDeg}° by the compass, declination ${Math.abs(declinationDeg).toFixed(2)}° ${declinationDeg < 0 ? 'west' : 'east'} (${model}, ${on}).`,
  )
  return exitCodes.done
}

function needed(given: Arguments, name: string): number {
  const value = given.number(name)
  if (value === undefined) throw new UsageError(`bearing needs --${name}.`)
  return value
}
