import { loadShadeTables, loadSources } from '#io'
import { reportHtml } from '#report'
import type { Arguments } from './arguments'
import { complainOf, writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'
import { assessFile } from './read-plan'

/** Writes the report to print or hand over. */
export async function report(given: Arguments, console: Console): Promise<number> {
  const [file] = given.words
  if (file === undefined) throw new UsageError('report needs a plan.')
  const assessed = assessFile(file)
  if (!assessed.ok) return complainOf(assessed.problems, console)
  const { plan, findings } = assessed.value
  writeText(
    given.text('out'),
    await reportHtml(plan, findings, { shade: loadShadeTables(), sources: loadSources() }),
    console,
  )
  return exitCodes.done
}
