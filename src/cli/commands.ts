import type { Arguments } from './arguments'
import { bookOptions } from './book-from-file'
import { assess } from './command-assess'
import { bearing } from './command-bearing'
import { book } from './command-book'
import { calendar } from './command-calendar'
import { check } from './command-check'
import { contours } from './command-contours'
import { layer } from './command-layer'
import { start } from './command-new'
import { read } from './command-read'
import { report } from './command-report'
import { schedule } from './command-schedule'
import { schema } from './command-schema'
import { sheet } from './command-sheet'
import { spot } from './command-spot'
import { sun } from './command-sun'
import { trace } from './command-trace'
import type { Console } from './console'
import { layerOptionNames } from './layer-options'
import { surveyOptions } from './survey-file'

/** A command, the options it takes, and how many words stand after its name at most. */
export interface Command {
  /** Does the work and gives the exit code. */
  readonly run: (given: Arguments, console: Console) => number | Promise<number>
  readonly takes: readonly string[]
  readonly words: number
}

const spotOptions = ['json', 'plants', 'plant', 'region', 'law', 'out']
const starts = [
  'bank',
  'profile',
  'levels',
  'grid',
  'book',
  'survey',
  'faces',
  'width',
  'taped',
  'feet',
  'compass',
]

/** Every command by its name. */
export const commands: ReadonlyMap<string, Command> = new Map<string, Command>([
  ['assess', { run: assess, takes: ['json', 'without-layers', 'out'], words: 1 }],
  ['spot', { run: spot, takes: spotOptions, words: 1 }],
  ['layer', { run: layer, takes: ['list', 'out', ...layerOptionNames], words: 2 }],
  ['sun', { run: sun, takes: ['at', 'date', 'json', 'out'], words: 1 }],
  ['trace', { run: trace, takes: ['at', 'json'], words: 1 }],
  ['contours', { run: contours, takes: ['interval', 'out'], words: 1 }],
  ['report', { run: report, takes: ['out'], words: 1 }],
  ['calendar', { run: calendar, takes: ['year', 'out'], words: 1 }],
  ['schedule', { run: schedule, takes: ['out'], words: 2 }],
  ['check', { run: check, takes: [], words: 1 }],
  [
    'new',
    {
      run: start,
      takes: [
        ...starts,
        ...bookOptions,
        ...surveyOptions,
        'latitude',
        'longitude',
        'elevation',
        'name',
        'time-zone',
        'place',
        'out',
      ],
      words: 0,
    },
  ],
  ['book', { run: book, takes: [...bookOptions, 'name', 'json', 'out'], words: 1 }],
  ['sheet', { run: sheet, takes: ['list', 'lines', 'out'], words: 1 }],
  ['bearing', { run: bearing, takes: ['latitude', 'longitude', 'elevation', 'on'], words: 1 }],
  ['read', { run: read, takes: ['json', 'columns', 'out'], words: 1 }],
  ['schema', { run: schema, takes: ['out'], words: 0 }],
])

/** What keeps a command line from being carried out; nothing when all is well. */
export function misfit(name: string, { takes, words }: Command, given: Arguments): string | undefined {
  const strange = given.options.find((option) => !takes.includes(option))
  if (strange !== undefined) return `${name} does not take --${strange}.`
  return given.words.length > words
    ? `${name} does not know what to do with “${given.words[words] ?? ''}”.`
    : undefined
}
