import { parseArgs } from 'node:util'
import { UsageError } from './exit'

/** A command line, taken apart: words in order, and options by name. */
export interface Arguments {
  readonly words: readonly string[]
  /** Names of the options that were given. */
  readonly options: readonly string[]
  /** Text of an option, or undefined. */
  text(name: string): string | undefined
  /** Number of an option, or undefined; complains when it is not one. */
  number(name: string): number | undefined
  flag(name: string): boolean
}

const textOptions = [
  'out',
  'at',
  'from',
  'interval',
  'plants',
  'plant',
  'region',
  'law',
  'date',
  'sky',
  'linke',
  'albedo',
  'step',
  'shadows',
  'sky-seen',
  'per',
  'time',
  'clock',
  'with',
  'trial',
  'azimuth',
  'radius',
  'year',
  'bank',
  'profile',
  'levels',
  'grid',
  'faces',
  'width',
  'latitude',
  'longitude',
  'elevation',
  'name',
  'time-zone',
  'place',
  'book',
  'kind',
  'start',
  'end',
  'km',
  'allowable',
  'reduction',
  'unit',
  'span',
  'tool',
  'on',
  'lines',
  'survey',
  'part',
  'level-unit',
  'epsg',
  'columns',
  'zero',
  'window',
] as const

const flags = [
  'json',
  'without-layers',
  'list',
  'taped',
  'feet',
  'adjust',
  'compass',
  'lengths',
  'anyway',
  'help',
  'version',
] as const

/** Takes a command line apart; anything unknown is refused. */
export function readArguments(line: readonly string[]): Arguments {
  const options = {
    ...Object.fromEntries(textOptions.map((name) => [name, { type: 'string' as const }])),
    ...Object.fromEntries(flags.map((name) => [name, { type: 'boolean' as const }])),
  }
  try {
    const { values, positionals } = parseArgs({ args: negatives(line), options, allowPositionals: true })
    const text = (name: string) => {
      const value = values[name]
      return typeof value === 'string' ? value : undefined
    }
    return {
      words: positionals,
      options: Object.keys(values),
      text,
      number: (name) => numberOf(name, text(name)),
      flag: (name) => values[name] === true,
    }
  } catch (error) {
    throw new UsageError(error instanceof Error ? error.message : String(error))
  }
}

/** "--longitude -1.5" is an option with a negative value, not two options. */
function negatives(line: readonly string[]): string[] {
  return line.reduce<string[]>((sofar, word) => {
    const before = sofar.at(-1)
    if (/^-[\d.]/.test(word) && before?.startsWith('--') && !before.includes('='))
      return [...sofar.slice(0, -1), `${before}=${word}`]
    return [...sofar, word]
  }, [])
}

function numberOf(name: string, text: string | undefined): number | undefined {
  if (text === undefined) return undefined
  const value = Number(text)
  if (text.trim() === '' || !Number.isFinite(value))
    throw new UsageError(`--${name} needs a number, not “${text}”.`)
  return value
}
