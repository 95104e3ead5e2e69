import { columnsOfOrder } from '#io'
import {
  readSurveyFile,
  readWithColumns,
  unitOfWord,
  type Doubt,
  type DoubtAbout,
  type LengthUnit,
  type SurveyRead,
} from '#files'
import type { Outcome } from '#core/units'
import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import type { Arguments } from './arguments'
import { UsageError } from './exit'

/** Options that say how a survey file is meant. */
export const surveyOptions = [
  'part',
  'unit',
  'level-unit',
  'epsg',
  'columns',
  'zero',
  'window',
  'lengths',
  'anyway',
] as const

/**
 * Reads a survey file, its table's columns as --columns says.
 *
 * @param file - its name, or "-" for standard input
 * @param given - the command line
 * @returns what was understood
 */
export async function surveyFile(file: string, given: Arguments): Promise<Outcome<SurveyRead>> {
  const read = await readSurveyFile(bytesOf(file), basename(file))
  const order = given.text('columns')
  if (!read.ok || order === undefined) return read
  const columns = columnsOfOrder(order)
  if (!columns)
    throw new UsageError(
      `--columns is one of ENZ, NEZ, ENZD, NEZD, PENZ, PNEZ, PENZD, PNEZD, not “${order}”.`,
    )
  if (!read.value.table) throw new UsageError('--columns is for tables; this file says itself what is what.')
  return readWithColumns(read.value, columns)
}

function bytesOf(file: string): Uint8Array {
  try {
    return readFileSync(file === '-' ? 0 : file)
  } catch (error) {
    throw new UsageError(
      `${file} cannot be read (${error instanceof Error ? error.message : String(error)}).`,
    )
  }
}

/**
 * A unit given as an option.
 *
 * @param given - the command line
 * @param option - its name
 * @returns the unit, undefined when it was not given
 */
export function unitGiven(given: Arguments, option: 'unit' | 'level-unit'): LengthUnit | undefined {
  const word = given.text(option)
  if (word === undefined) return undefined
  const unit = unitOfWord(word)
  if (!unit) throw new UsageError(`--${option} is one of m, cm, mm, ft, us-ft, in, not “${word}”.`)
  return unit
}

/** The option that answers each kind of doubt. */
const answers: Readonly<Record<DoubtAbout, readonly string[]>> = {
  unit: ['unit', 'level-unit'],
  columns: ['columns'],
  levels: ['zero'],
  crs: ['epsg', 'lengths'],
  decimals: [],
  places: [],
}

/**
 * Doubts that the command line leaves open.
 *
 * @param doubts - of the file
 * @param given - the command line
 * @returns doubts with the options that answer them; none when --anyway takes the file as it is
 */
export function openDoubts(doubts: readonly Doubt[], given: Arguments): Doubt[] {
  if (given.flag('anyway')) return []
  return doubts
    .filter(
      ({ about }) => about === undefined || !answers[about].some((option) => given.options.includes(option)),
    )
    .map((doubt) => {
      const options = doubt.about === undefined ? [] : answers[doubt.about]
      const named = [...options, 'anyway'].map((option) => `--${option}`).join(' or ')
      return { ...doubt, mend: `${doubt.mend} (Answer with ${named}.)` }
    })
}
