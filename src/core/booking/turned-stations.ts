import type { BookStation } from './reduced-book.types'

/**
 * Stations counted from the upper end, as a profile is.
 *
 * @param stations - points along a line, by distance
 * @returns the same points from the top, and whether they were turned round
 */
export function fromTheTop(stations: readonly BookStation[]): {
  readonly stations: readonly BookStation[]
  readonly turned: boolean
} {
  const [first, last] = [stations[0], stations.at(-1)]
  if (!first || !last || last.levelM <= first.levelM) return { stations, turned: false }
  const turned = stations.map((station) => ({ ...station, distanceM: last.distanceM - station.distanceM }))
  return { stations: turned.reverse(), turned: true }
}
