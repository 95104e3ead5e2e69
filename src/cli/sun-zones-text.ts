import type { SunBodies, ZoneSunBody } from '#io'
import { monthNames, months, type Month } from '#core/units'
import { grouped, withUnit } from '#report'
import type { Plan } from '#plan'
import { darkWords, steeringMonths } from './sun-words'
import { columns, heading, plain, wrapped } from './text-layout'

type Zone = SunBodies['zones'][number]

/** The sun of every zone: class and season, hours by month, and what takes the rest. */
export function zoneSunLines({ zones }: SunBodies, plan: Plan): readonly string[] {
  return [
    ...heading('Sun of the zones'),
    ...measures(zones),
    ...wrapped(
      'Light goes by the hours of direct sun at midsummer. Season is the radiation of the growing months, of that of open level ground, per m² of slope. Heat load is that of McCune and Keon in MJ/cm² a year: more where the afternoon sun falls; shaded is what the things and hills around leave of it.',
    ),
    ...heading('Hours of direct sun on a clear day'),
    ...hoursByMonth(zones),
    ...wrapped(
      'On the mean day of each month, every hour counted by the share of light that gets through. Morning is before the sun is highest. Leaves are hours on the clock in which sun comes through leaves or branches.',
    ),
    ...heading('Hours that are taken'),
    ...zones.flatMap((zone, at) => [...(at > 0 ? [''] : []), ...accountLines(zone, plan)]),
  ]
}

function measures(zones: readonly Zone[]): readonly string[] {
  const heat = (value: number | undefined) => (value === undefined ? 'not known' : value.toFixed(2))
  return columns(
    ['Zone', 'Name', 'Light', 'Season', 'Sky seen', 'Heat load', 'Shaded'],
    zones.map(({ letter, name, seasonSunRatio, sun }) => [
      letter,
      name,
      sun.className,
      withUnit(seasonSunRatio * 100, '%', 0),
      withUnit(sun.skyView * 100, '%', 0),
      heat(sun.heatLoad),
      heat(sun.heatLoadShaded),
    ]),
  )
}

function hoursByMonth(zones: readonly Zone[]): readonly string[] {
  const row = (letter: string, what: string, hours: readonly number[]) => [
    letter,
    what,
    ...hours.map((one) => one.toFixed(1)),
  ]
  return columns(
    ['Zone', '', ...monthNames.map((name) => name.slice(0, 3))],
    zones.flatMap(({ letter, sun }) => [
      row(letter, 'direct sun', sun.sunHours),
      row('', 'morning', sun.morningHours),
      row('', 'afternoon', sun.afternoonHours),
      ...(months.some((month) => sun.dappledHours[month] > 0) ? [row('', 'leaves', sun.dappledHours)] : []),
    ]),
  )
}

/** The account of a zone in the months that gardeners steer by. */
function accountLines({ letter, name, sun }: Zone, plan: Plan): readonly string[] {
  const asked = steeringMonths(plan.site.latitudeDeg)
  return [
    `${letter}  ${name}: ${sun.className}`,
    ...accountTable(sun, asked).map((line) => `   ${line}`),
    ...wrapped(darkWords(sun.dark, 'Its middle'), '   '),
  ]
}

/**
 * Who takes how much of the sun of open level ground in some months.
 *
 * @param sun - of a zone
 * @param asked - the months
 * @returns a table that adds up
 */
export function accountTable({ account, sunHours }: ZoneSunBody, asked: readonly Month[]): readonly string[] {
  const row = (what: string, hours: readonly number[], sign: 1 | -1) => [
    what,
    ...asked.map((month) => grouped(sign * (hours[month] ?? 0), 2)),
  ]
  const takers = account.takers.filter(({ hours }) => asked.some((month) => hours[month] !== 0))
  return columns(
    ['', ...asked.map((month) => monthNames[month])],
    [
      row('open level ground', account.openHours, 1),
      ...takers.map((taker) => row(taker.name, taker.hours, -1)),
      row('direct sun', sunHours, 1),
    ],
  ).map(plain)
}
