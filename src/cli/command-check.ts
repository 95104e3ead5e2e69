import { openPlan } from '#plan'
import { complainOf, readText, type Console } from './console'
import { exitCodes, UsageError } from './exit'
import type { Arguments } from './arguments'

/** Says whether a plan can be opened, and every problem if not. */
export function check({ words }: Arguments, console: Console): number {
  const [file] = words
  if (file === undefined) throw new UsageError('check needs a file.')
  const opened = openPlan(readText(file))
  if (!opened.ok) return complainOf(opened.problems, console)
  console.print(`${opened.value.name}: a sound plan of version ${opened.value.version}.`)
  return exitCodes.done
}
