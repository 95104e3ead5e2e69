import { plantSchedule, zoneSchedule } from '#io'
import type { Findings, Plan } from '#plan'
import type { Arguments } from './arguments'
import { complainOf, writeText, type Console } from './console'
import { exitCodes, UsageError } from './exit'
import { assessFile } from './read-plan'

const schedules: ReadonlyMap<string, (plan: Plan, findings: Findings) => string> = new Map([
  ['plants', plantSchedule],
  ['zones', zoneSchedule],
])

/** Writes the plants to order, or the zones, as CSV. */
export function schedule(given: Arguments, console: Console): number {
  const [file, kind] = given.words
  const write = kind === undefined ? undefined : schedules.get(kind)
  if (file === undefined || !write) throw new UsageError('schedule needs a plan, and plants or zones.')
  const assessed = assessFile(file)
  if (!assessed.ok) return complainOf(assessed.problems, console)
  const { plan, findings } = assessed.value
  writeText(given.text('out'), write(plan, findings), console)
  return exitCodes.done
}
