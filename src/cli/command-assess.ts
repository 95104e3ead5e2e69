import { findingsJson } from '#io'
import type { Arguments } from './arguments'
import { assessText } from './assess-text'
import { complainOf, writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'
import { assessFile } from './read-plan'

/** Works a plan out, as text to read or as the complete findings. */
export function assess(given: Arguments, console: Console): number {
  const [file] = given.words
  if (file === undefined) throw new UsageError('assess needs a plan.')
  const assessed = assessFile(file)
  if (!assessed.ok) return complainOf(assessed.problems, console)
  const { plan, findings } = assessed.value
  const text = given.flag('json')
    ? findingsJson(plan, findings, { layers: !given.flag('without-layers') })
    : assessText(plan, findings)
  writeText(given.text('out'), text, console)
  return exitCodes.done
}
