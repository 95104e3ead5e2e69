import { schemaPages } from '#io'
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import type { Arguments } from './arguments'
import { writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'

/** Writes the format pages and JSON Schemas into a folder. */
export function schema(given: Arguments, console: Console): number {
  const folder = given.text('out')
  if (folder === undefined) throw new UsageError('schema needs --out FOLDER.')
  mkdirSync(folder, { recursive: true })
  for (const { file, text } of schemaPages()) writeText(join(folder, file), text, console)
  return exitCodes.done
}
