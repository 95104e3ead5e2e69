import { placeSun, sunBodies, sunJson, type PlaceSunBody } from '#io'
import type { PlanPoint } from '#core/geometry'
import type { Arguments } from './arguments'
import { complainOf, writeText, type Console } from './console'
import { dateGiven } from './date-option'
import { exitCodes, UsageError } from './exit'
import { offThePlot, placeOf } from './place-option'
import { assessFile, type Assessed } from './read-plan'
import { placeSunLines } from './sun-place-text'
import { trialLines } from './sun-trials-text'
import { zoneSunLines } from './sun-zones-text'

/** Sun and shade: of every zone, or from one place. */
export function sun(given: Arguments, console: Console): number {
  const [file] = given.words
  if (file === undefined) throw new UsageError('sun needs a plan.')
  const at = placeAsked(given)
  const assessed = assessFile(file)
  if (!assessed.ok) return complainOf(assessed.problems, console)
  const place = at && placeSun(assessed.value.plan, assessed.value.findings, at, dateGiven(given))
  if (at && !place) return complainOf([offThePlot(at)], console)
  writeText(
    given.text('out'),
    given.flag('json')
      ? sunJson(assessed.value.plan, assessed.value.findings, place)
      : sunText(assessed.value, place),
    console,
  )
  return exitCodes.done
}

function placeAsked(given: Arguments): PlanPoint | undefined {
  const text = given.text('at')
  const at = placeOf(text)
  if (text !== undefined && !at) throw new UsageError(`--at needs EAST,NORTH in plot metres, not “${text}”.`)
  if (!at && given.options.includes('date'))
    throw new UsageError(
      '--date goes with --at, a place. Hours of zones are of all twelve months; for a day of every cell see layer sun-hours --date.',
    )
  dateGiven(given)
  return at
}

function sunText({ plan, findings }: Assessed, place: PlaceSunBody | undefined): string {
  const bodies = sunBodies(findings)
  const lines = place
    ? placeSunLines(place, plan, bodies)
    : [...zoneSunLines(bodies, plan), ...trialLines(bodies, plan)]
  return `${lines.join('\n').trimStart()}\n`
}
