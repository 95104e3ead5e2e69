import { hours } from '../../drawing/measures'
import type { TableTwin } from '../../figures/strips/table-twin.types'
import { takerRows } from './taker-rows'
import type { TakersAsked } from './takers-asked.types'

/** The account of a zone's sun in figures. */
export function sunTakersTable({ zoneSun, letter, name, time }: TakersAsked): TableTwin {
  const rows = takerRows(zoneSun, time)
  return {
    caption: `What becomes of the sun on ${letter} ${name}, ${time.name}`,
    columns: ['Line', 'Takes', 'Left'],
    rows: rows.map((row) => [
      row.name,
      row.what === 'open' || row.what === 'sun' ? '' : takes(row.hours),
      hours(row.left),
    ]),
    note: 'Hours of direct sun on a clear day, the mean of the zone. What two or more hide together is booked to several at once.',
  }
}

/** What a line takes, with its sign. */
export function takes(time: number): string {
  return time < 0 ? `+${hours(-time)}` : `−${hours(time)}`
}
