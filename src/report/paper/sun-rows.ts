import { northernTwin, type Month } from '#core/units'
import type { Findings } from '#plan'
import { takerRows } from '../figures/sun/taker-rows'
import { takes } from '../figures/sun/takers-table'
import { steeringMonths } from '../figures/sun/trial-rows'
import { hours } from '../drawing/measures'
import { lightWords } from '../words/light-words'
import { withUnit } from '../words/figures-in-words'

/** A table of the paper. */
export interface PaperTable {
  readonly columns: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

const JUNE: Month = 5
const PERCENT = 100

/** Every zone's sun in a row: class, hours of three seasons, before noon, season and sky. */
export function zoneSunTable({ zoning, zoneSun }: Findings, latitudeDeg: number): PaperTable {
  const seasons = steeringMonths(latitudeDeg)
  const midsummer = northernTwin(JUNE, latitudeDeg)
  return {
    columns: [
      'Zone',
      'Light',
      ...seasons.map(({ name }) => name),
      'Before, after noon',
      'Season',
      'Sky seen',
    ],
    rows: zoning.zones.flatMap((zone, at) => {
      const sun = zoneSun[at]
      if (!sun) return []
      const morning = sun.morningHours[midsummer]
      return [
        [
          `${zone.letter} ${zone.name}`,
          lightWords[sun.lightClass],
          ...seasons.map(({ month }) => hours(sun.sunHours[month])),
          `${hours(morning)}, ${hours(sun.sunHours[midsummer] - morning)}`,
          withUnit(zone.seasonSunRatio * PERCENT, '%', 0),
          withUnit(sun.skyView * PERCENT, '%', 0),
        ],
      ]
    }),
  }
}

/** Who takes how much of every zone's sun in one month; the figures of each row add up. */
export function takersTable({ zoning, zoneSun }: Findings, month: Month): PaperTable {
  const books = zoning.zones.flatMap((zone, at) => {
    const sun = zoneSun[at]
    return sun ? [{ zone, rows: takerRows(sun, { months: [month] }) }] : []
  })
  const takers = new Map(
    books.flatMap(({ rows }) =>
      rows
        .filter(({ what }) => what !== 'open' && what !== 'sun')
        .map(({ key, name }) => [key, name] as const),
    ),
  )
  const order = [...takers.keys()].sort((one, other) => rank(one) - rank(other))
  return {
    columns: ['Zone', 'Open level ground', ...order.map((key) => takers.get(key) ?? ''), 'Direct sun'],
    rows: books.map(({ zone, rows }) => {
      const of = (key: string) => rows.find((row) => row.key === key)
      return [
        `${zone.letter} ${zone.name}`,
        hours(of('open')?.hours ?? 0),
        ...order.map((key) => {
          const row = of(key)
          return row ? takes(row.hours) : ''
        }),
        hours(of('sun')?.hours ?? 0),
      ]
    }),
  }
}

/** Ground first, things in the order found, what several hide last. */
function rank(key: string): number {
  const first = ['own-slope', 'ground', 'far'].indexOf(key)
  if (first >= 0) return first
  return key === 'several' ? 9 : 5
}
