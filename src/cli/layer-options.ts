import type { Layer, LayerOptions } from '#io'
import { daysInMonth, months } from '#core/units'
import type { Arguments } from './arguments'
import { UsageError } from './exit'

/** What the command line asks of a layer; complains when it asks for something strange. */
export function layerOptions(given: Arguments, { name, needsAzimuth, needsViewpoint }: Layer): LayerOptions {
  const sky = given.text('sky')
  if (sky !== undefined && sky !== 'clear')
    throw new UsageError(`--sky is clear, the only sky that the layers of a day know; not “${sky}”.`)
  const azimuthDeg = ranged(given, 'azimuth', [0, 360])
  if (needsAzimuth && azimuthDeg === undefined)
    throw new UsageError(`${name} needs --azimuth DEG, the direction looked towards, 0 north, 90 east.`)
  const from = given.text('from')
  if (needsViewpoint && from === undefined)
    throw new UsageError(`${name} needs --from NAME, a viewpoint of the plan.`)
  const date = given.text('date')
  return known({
    azimuthDeg,
    from,
    radiusCells: ranged(given, 'radius', [1, 1000]),
    dayOfYear: date === undefined ? undefined : dayOfYear(date),
    linke: ranged(given, 'linke', [1, 8]),
    albedo: ranged(given, 'albedo', [0, 1]),
  })
}

/** The entries that were given. */
function known(entries: Readonly<Record<keyof LayerOptions, number | string | undefined>>): LayerOptions {
  return Object.fromEntries(Object.entries(entries).filter(([, value]) => value !== undefined))
}

function ranged(
  given: Arguments,
  name: string,
  [least, most]: readonly [number, number],
): number | undefined {
  const value = given.number(name)
  if (value !== undefined && !(value >= least && value <= most))
    throw new UsageError(`--${name} runs from ${least} to ${most}, not ${value}.`)
  return value
}

/** Day of a year without a leap day, of a date written MM-DD. */
function dayOfYear(date: string): number {
  const [, monthText, dayText] = /^(\d\d)-(\d\d)$/.exec(date) ?? []
  const month = months.find((one) => one + 1 === Number(monthText))
  const day = Number(dayText)
  if (month === undefined || !(day >= 1 && day <= daysInMonth[month]))
    throw new UsageError(`--date needs a day of the year as MM-DD, such as 06-21; not “${date}”.`)
  return daysInMonth.slice(0, month).reduce<number>((sum, days) => sum + days, day)
}
