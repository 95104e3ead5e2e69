import { placeDay, type PlaceSky } from '#core/shade'
import { windName, type Month } from '#core/units'
import { degrees, hours } from '../../drawing/measures'
import { spellWords, type Clock } from '../../words/day-words'
import { listed } from '../../words/figures-in-words'
import type { TableTwin } from '../../figures/strips/table-twin.types'
import { dayOfMonth, pathDays } from './sun-days'
import { skyTakers } from './sky-takers'

/** What the figure of the sun's path is drawn from. */
export interface SkyAsked {
  readonly sky: PlaceSky
  readonly latitudeDeg: number
  readonly month: Month
  /** The day drawn strongest, where it is not the one that stands for the month. */
  readonly dayOfYear?: number | undefined
  readonly clock?: Clock | undefined
}

/** Through leaves, as said in a table. */
const CLEAR = 0.995

/** A thing that hides the sun for less is not named [h]. */
const LEAST_H = 0.05

/** The sun's path over a place in figures: hours, when it comes, and what hides it. */
export function sunPathTable(asked: SkyAsked): TableTwin {
  const { sky, latitudeDeg, month, clock } = asked
  const days = pathDays(latitudeDeg, asked.dayOfYear ?? dayOfMonth(month))
  return {
    caption: 'The sun over this place on clear days',
    columns: ['Day', 'Direct sun', clock ? 'When, by the clock' : 'When, by the sun', 'Hidden by'],
    rows: days.map((day) => {
      const light = placeDay(sky, latitudeDeg, day.dayOfYear)
      const spells = light.spells.map(({ fromH, toH, through }) => {
        const leaves = through >= CLEAR ? '' : ` (${Math.round(through * 100)} % comes through)`
        return `${spellWords(fromH, toH, { dayOfYear: day.dayOfYear, clock })}${leaves}`
      })
      const takers = skyTakers(sky, latitudeDeg, light).filter(({ hours: time }) => time >= LEAST_H)
      return [
        day.words,
        hours(light.sunHours),
        spells.length > 0 ? spells.join(', ') : 'never',
        takers.length > 0
          ? takers.map(({ name, hours: time }) => `${name} ${hours(time)}`).join(', ')
          : 'nothing',
      ]
    }),
    ...(sky.things.length > 0 && { note: thingsNote(asked) }),
  }
}

/** Where each thing stands highest, and what comes through it. */
function thingsNote({ sky, month }: SkyAsked): string {
  const said = sky.things.flatMap(({ name, highDeg, through }) => {
    const azimuthDeg = highDeg.reduce(
      (best, high, at) => (high > (highDeg[best] ?? -Infinity) || Number.isNaN(highDeg[best]) ? at : best),
      0,
    )
    const top = highDeg[azimuthDeg] ?? NaN
    if (!(top > 0)) return []
    const light =
      through[month] > 0 ? `, ${Math.round(through[month] * 100)} % of the light comes through` : ''
    return [`${name} ${degrees(top)} high in the ${windName(azimuthDeg)}${light}`]
  })
  return said.length > 0 ? `Against the sky: ${listed(said)}.` : ''
}
