import type { SunTaker, ZoneSun } from '#core/shade'
import { tenth } from '../../drawing/measures'
import { meanOf, type TimeRow } from '../../figures/strips/season-rows'

/** A line of the account of sun. */
export interface TakerRow {
  readonly key: string
  readonly what: SunTaker['what'] | 'open' | 'sun'
  readonly thingId: string | undefined
  readonly name: string
  /** What it takes, so that the figures add up [h]; of the first and the last line what there is. */
  readonly hours: number
  /** What is left after it [h]. */
  readonly left: number
}

/** Names of what takes the sun besides things. */
const names: Readonly<Record<Exclude<SunTaker['what'], 'thing'>, string>> = {
  'own-slope': 'its own slope',
  ground: 'other ground of the plot',
  far: 'far hills',
  several: 'several things at once',
}

/**
 * The account of one zone's sun: hours on open level ground, less what each takes, are its hours. What is left is
 * rounded line by line and each line takes the difference, so that the figures add up.
 *
 * @param zoneSun - sun of the zone
 * @param time - the months that it is the mean of
 * @returns lines from open level ground to the sun that arrives; takers of less than half a tenth of an hour left out
 */
export function takerRows(zoneSun: ZoneSun, time: Pick<TimeRow, 'months'>): readonly TakerRow[] {
  const mean = (values: ZoneSun['openHours']) => meanOf(values, { key: '', name: '', short: '', ...time })
  const open = mean(zoneSun.openHours)
  const rows: TakerRow[] = [
    { key: 'open', what: 'open', thingId: undefined, name: 'open level ground', ...both(open) },
  ]
  let left = open
  let shown = tenth(open)
  for (const taker of inTurn(zoneSun.takers, mean)) {
    left -= mean(taker.hours)
    const next = tenth(left)
    const hours = tenth(shown - next)
    shown = next
    if (hours !== 0)
      rows.push({
        ...{ key: taker.thingId ?? taker.what, what: taker.what, thingId: taker.thingId, hours, left: next },
        name: taker.what === 'thing' ? taker.name : names[taker.what],
      })
  }
  return [
    ...rows,
    { key: 'sun', what: 'sun', thingId: undefined, name: 'direct sun', hours: shown, left: shown },
  ]
}

const both = (time: number) => ({ hours: tenth(time), left: tenth(time) })

const order: readonly SunTaker['what'][] = ['own-slope', 'ground', 'far', 'thing', 'several']

/** Ground first, then things, the greediest first. */
function inTurn(takers: readonly SunTaker[], mean: (values: SunTaker['hours']) => number): SunTaker[] {
  return [...takers].sort(
    (one, other) =>
      order.indexOf(one.what) - order.indexOf(other.what) || mean(other.hours) - mean(one.hours),
  )
}
