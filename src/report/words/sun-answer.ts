import type { ZoneSun } from '#core/shade'
import { northernTwin, type Month } from '#core/units'
import type { ZoneFacts } from '#core/zones'
import type { Findings } from '#plan'
import { darkNote } from './dark-words'
import { grouped, withUnit } from './figures-in-words'
import { lightWords } from './light-words'
import type { Answer, Phrase } from './phrase'

/** A zone with its sun. */
interface SunnedZone {
  readonly zone: ZoneFacts
  readonly sun: ZoneSun
}

/** Midsummer and midwinter of the north. */
const JUNE: Month = 5
const DECEMBER: Month = 11

/** A thing that takes less than this is not named [h]. */
const LEAST_TAKEN_H = 0.25

/** Hours that differ by less are told as one figure [h]. */
const ALIKE_H = 0.25

/**
 * Who gets the sun?
 *
 * @param findings - what was derived from the plan
 * @param latitudeDeg - latitude, north positive [°]
 * @returns the sunniest and the shadiest zone, what takes most of it, and where the sun stays away in winter
 */
export function sunAnswer({ zoning, zoneSun }: Findings, latitudeDeg: number): Answer {
  const midsummer = northernTwin(JUNE, latitudeDeg)
  const zones = zoning.zones
    .flatMap((zone, at) => {
      const sun = zoneSun[at]
      return sun ? [{ zone, sun }] : []
    })
    .sort((one, other) => other.sun.sunHours[midsummer] - one.sun.sunHours[midsummer])
  const [most, least] = [zones[0], zones.at(-1)]
  if (!most || !least) return { says: ['No zone to count the sun in.'], note: [] }
  return {
    says: [...lightPhrases(zones, midsummer), ...takerPhrases(zones, midsummer)],
    note: [
      `At midwinter ${hoursRange(zones, northernTwin(DECEMBER, latitudeDeg))}, all under a clear sky. `,
      ...seasonPhrases(zones),
      ...darkNote(zones),
    ],
  }
}

/** "C is in full sun: 8.4 h a day at midsummer." */
function lightPhrases(zones: readonly SunnedZone[], month: Month): Phrase[] {
  const [most, least] = [zones[0], zones.at(-1)]
  if (!most || !least) return []
  if (most === least)
    return [
      `${most.zone.letter} is in ${lightWords[most.sun.lightClass]}: `,
      hoursOf(most, month),
      ' at midsummer.',
    ]
  if (zones.every(({ sun }) => sun.lightClass === most.sun.lightClass))
    return [
      `Every zone is in ${lightWords[most.sun.lightClass]}: `,
      { figure: hoursRange(zones, month), ask: { zoneId: least.zone.id, about: 'sun' } },
      ' at midsummer.',
    ]
  return [
    `${most.zone.letter} is in ${lightWords[most.sun.lightClass]}, `,
    hoursOf(most, month),
    ` at midsummer; ${least.zone.letter} in ${lightWords[least.sun.lightClass]}, `,
    hoursOf(least, month),
    '.',
  ]
}

function hoursOf({ zone, sun }: SunnedZone, month: Month): Phrase {
  return { figure: withUnit(sun.sunHours[month], 'h', 1), ask: { zoneId: zone.id, about: 'sun' } }
}

/** "The cherry takes most: 2.1 h of B." */
function takerPhrases(zones: readonly SunnedZone[], month: Month): Phrase[] {
  const things = zones.flatMap(({ zone, sun }) =>
    sun.takers
      .filter(({ what }) => what === 'thing')
      .map(({ name, hours }) => ({ zone, name, hours: hours[month] })),
  )
  const most = things.sort((one, other) => other.hours - one.hours)[0]
  if (!most || most.hours < LEAST_TAKEN_H)
    return things.length > 0 ? [' Nothing that stands here takes much of it.'] : []
  return [
    ` The ${lowered(most.name)} takes most: `,
    { figure: withUnit(most.hours, 'h', 1), ask: { zoneId: most.zone.id, about: 'sun' } },
    ` of ${most.zone.letter}.`,
  ]
}

/** A thing's name within a sentence. */
function lowered(name: string): string {
  return name.slice(0, 1).toLowerCase() + name.slice(1)
}

function seasonPhrases(zones: readonly SunnedZone[]): Phrase[] {
  const ranked = [...zones].sort((one, other) => other.zone.seasonSunRatio - one.zone.seasonSunRatio)
  const [most, least] = [ranked[0], ranked.at(-1)]
  if (!most || !least) return []
  const share = ({ zone }: SunnedZone): Phrase => ({
    figure: withUnit(zone.seasonSunRatio * 100, '%', 0),
    ask: { zoneId: zone.id, about: 'sun' },
  })
  const ends: Phrase[] = most === least ? ['.'] : [`, ${least.zone.letter} `, share(least), '.']
  return [
    `Of the sun of open level ground in the growing season ${most.zone.letter} gets `,
    share(most),
    ...ends,
  ]
}

function hoursRange(zones: readonly SunnedZone[], month: Month): string {
  const hours = zones.map(({ sun }) => sun.sunHours[month])
  const [low, high] = [Math.min(...hours), Math.max(...hours)]
  return high - low < ALIKE_H ? withUnit(high, 'h', 1) : `${grouped(low, 1)} to ${withUnit(high, 'h', 1)}`
}
