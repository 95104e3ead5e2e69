import { dayAsked, type Layer, type LayerOption, type LayerOptions } from '#io'
import { solarHourOf, type Plan } from '#plan'
import type { Outcome } from '#core/units'
import type { Arguments } from './arguments'
import { dateGiven } from './date-option'
import { UsageError } from './exit'
import { clockTime, sunTime } from './time-option'

/** The option of the command line that gives each entry; a time may come from two. */
const optionOf: Readonly<Record<LayerOption, readonly string[]>> = {
  azimuthDeg: ['azimuth'],
  withThings: ['with'],
  radiusCells: ['radius'],
  from: ['from'],
  dayOfYear: ['date'],
  sky: ['sky'],
  linke: ['linke'],
  albedo: ['albedo'],
  stepHours: ['step'],
  castShadows: ['shadows'],
  skyline: ['sky-seen'],
  perPlan: ['per'],
  solarHour: ['time', 'clock'],
  trial: ['trial'],
}

/** What to type where a layer cannot be drawn without an option. */
const needWords: Partial<Record<LayerOption, string>> = {
  azimuthDeg: '--azimuth DEG, the direction looked towards, 0 north, 90 east',
  from: '--from NAME, a viewpoint of the plan',
  solarHour: '--time HH:MM, a time by the sun, or --clock HH:MM',
  trial: '--trial NAME, a trial of the plan',
}

/** Names of all options that some layer takes. */
export const layerOptionNames: readonly string[] = Object.values(optionOf).flat()

/** What the command line asks of a layer; complains when it asks for something strange. */
export function layerOptions(given: Arguments, layer: Layer): LayerOptions {
  refuseStrange(given, layer)
  const shadows = oneOf(given, 'shadows', ['all', 'none'])
  const seen = oneOf(given, 'sky-seen', ['skyline', 'tilt'])
  const per = oneOf(given, 'per', ['slope', 'plan'])
  const options = known({
    azimuthDeg: ranged(given, 'azimuth', [0, 360]),
    withThings: oneOf(given, 'with', ['things']) && true,
    radiusCells: ranged(given, 'radius', [1, 1000]),
    from: given.text('from'),
    dayOfYear: dateGiven(given)?.dayOfYear,
    sky: oneOf(given, 'sky', ['usual', 'clear']),
    linke: ranged(given, 'linke', [1, 8]),
    albedo: ranged(given, 'albedo', [0, 1]),
    stepHours: ranged(given, 'step', [0.01, 2]),
    castShadows: shadows && shadows === 'all',
    skyline: seen && seen === 'skyline',
    perPlan: per && per === 'plan',
    solarHour: sunTime(given),
    trial: given.text('trial'),
  })
  if (options.linke !== undefined && options.sky !== 'clear')
    throw new UsageError(
      '--linke is the haze of a clear sky. Add --sky clear, or leave --linke out to have the usual sky of the plan’s climate.',
    )
  return options
}

/**
 * The time by the sun that a time by the clock stands for, where one was given.
 *
 * @param given - the command line
 * @param plan - whose place and time zone count
 * @param options - what is asked of the layer
 * @returns the options with the time by the sun
 */
export function withClock(given: Arguments, plan: Plan, options: LayerOptions): Outcome<LayerOptions> {
  const clock = clockTime(given)
  if (clock === undefined) return { ok: true, value: options }
  const { site } = plan
  const solarHour = solarHourOf(clock, dayAsked(plan, options), site, dateGiven(given)?.year)
  if (solarHour !== undefined) return { ok: true, value: { ...options, solarHour } }
  return {
    ok: false,
    problems: [
      site.timeZone === undefined
        ? {
            where: 'plan › site › timeZone',
            what: 'The plan has no time zone, so its clocks are not known.',
            mend: 'Give the plan a time zone such as Europe/London, or give the time by the sun with --time.',
          }
        : {
            where: '--clock',
            what: `The clocks of ${site.timeZone} skip ${clock} on that day.`,
            mend: 'Give a time an hour earlier or later.',
          },
    ],
  }
}

function refuseStrange(given: Arguments, { name, takes, needs }: Layer): void {
  const taken = takes.flatMap((entry) => optionOf[entry])
  const strange = given.options.find((option) => layerOptionNames.includes(option) && !taken.includes(option))
  if (strange !== undefined)
    throw new UsageError(
      `The layer ${name} does not take --${strange}. ${taken.length > 0 ? `It takes --${taken.join(', --')}.` : 'It takes none of the sort.'}`,
    )
  const missing = needs.find((entry) => !optionOf[entry].some((option) => given.options.includes(option)))
  if (missing !== undefined) throw new UsageError(`${name} needs ${needWords[missing] ?? missing}.`)
}

type Entries = { readonly [Key in LayerOption]: LayerOptions[Key] | undefined }

/** The entries that were given. */
function known(entries: Entries): LayerOptions {
  return Object.fromEntries(Object.entries(entries).filter(([, value]) => value !== undefined))
}

function oneOf<T extends string>(given: Arguments, name: string, words: readonly T[]): T | undefined {
  const text = given.text(name)
  if (text === undefined) return undefined
  const word = words.find((one) => one === text)
  if (word === undefined) throw new UsageError(`--${name} is ${words.join(' or ')}, not “${text}”.`)
  return word
}

function ranged(
  given: Arguments,
  name: string,
  [least, most]: readonly [number, number],
): number | undefined {
  const value = given.number(name)
  if (value !== undefined && !(value >= least && value <= most))
    throw new UsageError(`--${name} runs from ${least} to ${most}, not ${value}.`)
  return value
}
