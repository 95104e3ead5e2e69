import { loadTables } from '#io'
import { fieldSheetHtml } from '#report'
import type { Arguments } from './arguments'
import { writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'
import { columns } from './text-layout'

/** Most lines that a sheet is printed with. */
const MOST_LINES = 500
/** Lines that fill the rest of the first page and the whole of a second. */
const USUAL_LINES = 30

/** Writes the field sheet of a method, or lists the methods. */
export async function sheet(given: Arguments, console: Console): Promise<number> {
  const { survey } = loadTables()
  if (given.flag('list')) {
    const rows = survey.methods.map(({ id, name, expect }) => [id, name, expect])
    console.print(`${columns(['method', 'name', 'expect'], rows).join('\n')}\n`)
    return exitCodes.done
  }
  const [methodId] = given.words
  const known = survey.methods.map(({ id }) => id)
  if (methodId === undefined || !known.includes(methodId))
    throw new UsageError(
      `sheet needs a method: ${known.join(', ')}${methodId === undefined ? '' : `; not “${methodId}”`}.`,
    )
  if (given.text('out') === undefined) throw new UsageError('sheet needs --out F.html.')
  const lines = given.number('lines') ?? USUAL_LINES
  if (!(Number.isInteger(lines) && lines >= 1 && lines <= MOST_LINES))
    throw new UsageError(`--lines is a whole number from 1 to ${MOST_LINES}, not ${lines}.`)
  writeText(given.text('out'), await fieldSheetHtml(methodId, survey, { lines }), console)
  return exitCodes.done
}
