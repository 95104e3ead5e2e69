import type { DarkSpell, ZoneSun } from '#core/shade'
import { daysInMonth, eachMonth } from '#core/units'
import type { Findings } from '#plan'
import { addingUp } from './adding-up'
import { HOUR_DECIMALS } from './findings-sun.schema'
import { monthOf } from './plot-light'
import { loadShadeTables } from './shade-tables'

/** A zone's sun as exports tell it. */
export type ZoneSunBody = ReturnType<typeof zoneSunBody>

/** Sun of every zone and of every trial, as exports tell it. */
export type SunBodies = ReturnType<typeof sunBodies>

/**
 * Sun of every zone and trial, with names, dates, and accounts that add up after rounding.
 *
 * @param findings - what follows from a plan
 * @returns one body to a zone, in their order, and one to each trial
 */
export function sunBodies(findings: Findings) {
  const { zoning, zoneSun, trials } = findings
  const names = classNames()
  const zones = zoning.zones.flatMap(({ id, letter, name, seasonSunRatio }, at) => {
    const sun = zoneSun[at]
    return sun ? [{ zoneId: id, letter, name, seasonSunRatio, sun: zoneSunBody(sun, names) }] : []
  })
  return {
    zones,
    trials: trials.map((trial) => ({
      trialId: trial.trialId,
      name: trial.name,
      changes: trial.changes,
      zones: zones.flatMap(({ zoneId, letter, sun: now }, at) => {
        const then = trial.zoneSun[at]
        if (!then) return []
        const sun = zoneSunBody(then, names)
        const gainHours = eachMonth((month) => tidy(sun.sunHours[month] - now.sunHours[month]))
        return [{ zoneId, letter, gainHours, sun }]
      }),
    })),
  }
}

/** Names of the light classes by their ids. */
export function classNames(): ReadonlyMap<string, string> {
  return new Map(loadShadeTables().lightClasses.map(({ id, name }) => [id, name]))
}

function zoneSunBody(sun: ZoneSun, names: ReadonlyMap<string, string>) {
  const sunHours = eachMonth((month) => tidy(sun.sunHours[month]))
  const morningHours = eachMonth((month) => Math.min(sunHours[month], tidy(sun.morningHours[month])))
  return {
    ...sun,
    className: names.get(sun.lightClass) ?? sun.lightClass,
    sunHours,
    morningHours,
    afternoonHours: eachMonth((month) => tidy(sunHours[month] - morningHours[month])),
    account: accountOf(sun, sunHours),
    dark: darkBody(sun.dark),
  }
}

const tidy = (hours: number): number => Number(hours.toFixed(HOUR_DECIMALS)) + 0

// Rounding must not make hours out of nothing: takers are rounded to what open level ground has and the zone has not.
function accountOf({ openHours, takers }: ZoneSun, sunHours: readonly number[]) {
  const open = eachMonth((month) => tidy(openHours[month]))
  const taken = eachMonth((month) =>
    addingUp(
      open[month] - (sunHours[month] ?? 0),
      takers.map(({ hours }) => hours[month]),
      HOUR_DECIMALS,
    ),
  )
  return {
    openHours: open,
    takers: takers.map((taker, at) => ({ ...taker, hours: eachMonth((month) => taken[month][at] ?? 0) })),
  }
}

/**
 * A dark spell with its dates.
 *
 * @param dark - the spell, in days of a year without a leap day
 * @returns the same with dates, null where there are none
 */
export function darkBody(dark: DarkSpell) {
  if (dark.kind !== 'spell')
    return { kind: dark.kind, lastDay: null, lastDate: null, firstDay: null, firstDate: null, days: null }
  return { ...dark, lastDate: dateText(dark.lastDay), firstDate: dateText(dark.firstDay) }
}

/** A day of a year without a leap day, written MM-DD. */
export function dateText(dayOfYear: number): string {
  const month = monthOf(dayOfYear)
  const before = daysInMonth.slice(0, month).reduce<number>((sum, days) => sum + days, 0)
  return [month + 1, dayOfYear - before].map((part) => String(part).padStart(2, '0')).join('-')
}
