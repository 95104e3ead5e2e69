import type { Book } from '#core/booking'
import { headingParts } from './level-columns'

/** What a column of a field book holds. */
export type BookColumn =
  | 'mark'
  | 'back'
  | 'inter'
  | 'fore'
  | 'hand'
  | 'distance'
  | 'east'
  | 'north'
  | 'length'
  | 'angle'
  | 'run'
  | 'drop'
  | 'remark'

/** One column that was understood. */
export interface FoundColumn {
  readonly holds: BookColumn
  readonly at: number
  readonly heading: string
  /** Unit in the heading, as written. */
  readonly unit: string | undefined
}

const mark = /^(marks?|points?|pts?|stations?|stn|no|nr|names?|id)$/i
const remark = /^(remarks?|notes?|comments?|desc(ription)?|what)$/i
const distance = /^(dist(ance)?s?|chainage)$/i

/** Words that head the columns of each kind of book, full stops and lines between words taken out. */
const headings: Readonly<Record<Book['kind'], Partial<Record<BookColumn, RegExp>>>> = {
  'level-book': {
    mark,
    back: /^(back ?sights?|bs|back)$/i,
    inter: /^(inter(mediates?)?( ?sights?)?|is|int)$/i,
    fore: /^(fore ?sights?|fs|fore)$/i,
    hand: /^((reduced )?levels?|rl|level by hand)$/i,
    distance,
    east: /^(east(ing)?s?|e|x)$/i,
    north: /^(north(ing)?s?|n|y)$/i,
    remark,
  },
  chain: {
    mark,
    length: /^(lengths?|slope (length|distance)|taped?|l|dist(ance)?)$/i,
    angle: /^(angles?|slope|clino(meter)?|gradient|inclination|a)$/i,
    remark,
  },
  steps: { mark, drop: /^(drops?|falls?|d)$/i, remark },
  string: { mark, run: /^(runs?|level distance|dist(ance)?)$/i, drop: /^(drops?|falls?|d)$/i, remark },
}

/** Columns that a book cannot do without. */
export const neededColumns: Readonly<Record<Book['kind'], readonly BookColumn[]>> = {
  'level-book': ['back', 'fore'],
  chain: ['length', 'angle'],
  steps: ['drop'],
  string: ['run', 'drop'],
}

/** What the columns are called in a sentence. */
export const columnNames: Readonly<Record<BookColumn, string>> = {
  mark: 'mark',
  back: 'back sight',
  inter: 'intermediate sight',
  fore: 'fore sight',
  hand: 'level worked out by hand',
  distance: 'distance',
  east: 'east',
  north: 'north',
  length: 'length',
  angle: 'angle',
  run: 'run',
  drop: 'drop',
  remark: 'remark',
}

/**
 * The columns that a row of headings names.
 *
 * @param cells - the headings
 * @param kind - kind of field book
 * @returns every column understood, in the order of the file
 */
export function bookColumns(cells: readonly string[], kind: Book['kind']): FoundColumn[] {
  return cells.flatMap((heading, at) => {
    const { word, unit } = headingParts(heading)
    const plain = word.replace(/\./g, '').replace(/[_-]/g, ' ').trim()
    const found = Object.entries(headings[kind]).find(([, words]) => words.test(plain))
    return found ? [{ holds: found[0] as BookColumn, at, heading, unit }] : []
  })
}
