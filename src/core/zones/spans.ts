import type { Section } from '#core/terrain'

/** A stretch of the section that lies in one zone. */
export interface ZoneSpan {
  readonly zone: number
  /** Plan distances from the top edge [m]. */
  readonly fromM: number
  readonly toM: number
}

/**
 * Where the section crosses zones; it passes from one to the next half way between two stations.
 *
 * @param section - the cut through the ground
 * @param zoneOfCell - zone of each cell, -1 outside
 * @returns stretches from the top edge down, those outside every zone left out
 */
export function spansOf(section: Section, zoneOfCell: Int16Array): ZoneSpan[] {
  const spans: { zone: number; fromM: number; toM: number }[] = []
  section.stations.forEach((station, index) => {
    const zone = zoneOfCell[station.cell] ?? -1
    const before = section.stations[index - 1]
    const after = section.stations[index + 1]
    const fromM = before ? (before.distanceM + station.distanceM) / 2 : 0
    const toM = after ? (after.distanceM + station.distanceM) / 2 : section.lengthM
    const last = spans.at(-1)
    if (last?.zone === zone && last.toM === fromM) last.toM = toM
    else spans.push({ zone, fromM, toM })
  })
  return spans.filter((span) => span.zone >= 0 && span.toM > span.fromM)
}
