import { layers, writeAsciiGrid, type Layer, type LayerOptions } from '#io'
import { daysInMonth, months } from '#core/units'
import type { Arguments } from './arguments'
import { complainOf, writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'
import { assessFile } from './read-plan'

/** Writes one grid, or lists them all. */
export function layer(given: Arguments, console: Console): number {
  if (given.flag('list')) {
    console.print(layerList())
    return exitCodes.done
  }
  const [file, name] = given.words
  if (file === undefined || name === undefined)
    throw new UsageError('layer needs a plan and the name of a layer; layer --list shows the names.')
  const found = layers.find((one) => one.name === name)
  if (!found)
    throw new UsageError(`There is no layer “${name}”. Known: ${layers.map((one) => one.name).join(', ')}.`)
  const options = optionsOf(given, found)
  const assessed = assessFile(file)
  if (!assessed.ok) return complainOf(assessed.problems, console)
  const { frame, share } = assessed.value.findings.surface
  const grid = writeAsciiGrid(frame, found.values(assessed.value, options), {
    share,
    decimals: found.decimals,
  })
  writeText(given.text('out'), grid, console)
  return exitCodes.done
}

function layerList(): string {
  const widest = Math.max(...layers.map(({ name }) => name.length))
  const unitWidest = Math.max(...layers.map(({ unit }) => unit.length))
  return layers
    .map(({ name, unit, method }) => `${name.padEnd(widest)}  ${unit.padEnd(unitWidest)}  ${method}`)
    .join('\n')
}

function optionsOf(given: Arguments, { name, needsAzimuth }: Layer): LayerOptions {
  const sky = given.text('sky')
  if (sky !== undefined && sky !== 'clear')
    throw new UsageError(`--sky is clear, the only sky that the layers of a day know; not “${sky}”.`)
  const azimuthDeg = ranged(given, 'azimuth', [0, 360])
  if (needsAzimuth && azimuthDeg === undefined)
    throw new UsageError(`${name} needs --azimuth DEG, the direction looked towards, 0 north, 90 east.`)
  const date = given.text('date')
  return known({
    azimuthDeg,
    dayOfYear: date === undefined ? undefined : dayOfYear(date),
    linke: ranged(given, 'linke', [1, 8]),
    albedo: ranged(given, 'albedo', [0, 1]),
  })
}

/** The entries that were given. */
function known(entries: Readonly<Record<keyof LayerOptions, number | undefined>>): LayerOptions {
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
