import { eachMonth, months, slopeAreaFactor } from '#core/units'
import type { Ring } from '#core/geometry'
import { groundBelow } from './ground-below'
import { areaFromAboveM2, handsOnOf, type FlowGround } from './hands-on'
import { bandAt, type BandLimit } from './limits'
import { spansOf } from './spans'
import type { ZoneFacts } from './zone.types'
import { zoneMeans } from './zone-means'
import { zoneSlope } from './zone-slope'
import type { ZoningInput } from './zoning-input.types'

/** A zone as far as it is known before it is measured. */
export interface NamedZone {
  readonly id: string
  readonly letter: string
  readonly name: string
  readonly ring: Ring
}

/**
 * Measures zones: area, steepness, form, sun, and where their water comes from and goes.
 *
 * @param input - ground, terrain and sun
 * @param zoneOfCell - zone of each cell as a place in `named`, -1 outside
 * @param named - ids, letters, names and outlines
 * @param bands - bands of position, from the top down
 * @returns the facts of each zone, in the order given
 */
export function factsOfZones(
  input: ZoningInput,
  zoneOfCell: Int16Array,
  named: readonly NamedZone[],
  bands: readonly BandLimit[],
): readonly ZoneFacts[] {
  const { surface, terrain } = input
  const ids = named.map(({ id }) => id)
  const cells = cellsByZone(zoneOfCell, named.length)
  const mean = (values: ArrayLike<number>) => zoneMeans(zoneOfCell, named.length, surface.share, values)
  const position = mean(terrain.position)
  const below = mean(groundBelow(terrain.position, surface.share))
  const formDown = mean(terrain.formDown)
  const formAcross = mean(terrain.formAcross)
  const sunHours = input.sunHours.map(mean)
  const sunRatio = input.sunRatio.map(mean)
  const cellM2 = surface.frame.cellM ** 2
  const ground: FlowGround = {
    flow: terrain.flow,
    zoneOfCell,
    areaM2: surface.share.map((share) => share * cellM2),
    inflowM2: terrain.inflowM2,
  }
  const handsOn = handsOnOf(ground, named.length)
  const spans = spansOf(terrain.section, zoneOfCell)
  return named.map((zone, index) => {
    const own = cells[index] ?? []
    return {
      ...zone,
      ...zoneSlope({ ...surface, ...terrain, cells: own }),
      band: bandAt(((position[index] ?? 0) + (below[index] ?? 0)) / 2, bands),
      position: position[index] ?? 0,
      formDown: formDown[index] ?? 0,
      formAcross: formAcross[index] ?? 0,
      upslopeAreaM2: areaFromAboveM2(ground, index),
      levelM: levelsOf(surface.levelM, own),
      sunHours: eachMonth((month) => sunHours[month]?.[index] ?? 0),
      sunRatio: eachMonth((month) => sunRatio[month]?.[index] ?? 0),
      seasonSunRatio: seasonRatio(input, own),
      spans: spans.filter((span) => span.zone === index).map(({ fromM, toM }) => ({ fromM, toM })),
      handsOn: (handsOn[index] ?? []).map(({ zone: to, share }) => ({ to: ids[to] ?? '', share })),
    }
  })
}

function cellsByZone(zoneOfCell: Int16Array, count: number): number[][] {
  const cells: number[][] = Array.from({ length: count }, () => [])
  zoneOfCell.forEach((zone, cell) => cells[zone]?.push(cell))
  return cells
}

function levelsOf(levelM: Float64Array, cells: readonly number[]) {
  let highest = -Infinity
  let lowest = Infinity
  for (const cell of cells) {
    highest = Math.max(highest, levelM[cell] ?? -Infinity)
    lowest = Math.min(lowest, levelM[cell] ?? Infinity)
  }
  return { highest, lowest }
}

// Radiation of the growing months per m² of slope: per m² of plan, spread over the longer ground.
function seasonRatio({ surface, terrain, sunRatio, season }: ZoningInput, cells: readonly number[]): number {
  let radiation = 0
  let slopeArea = 0
  for (const cell of cells) {
    const share = surface.share[cell] ?? 0
    for (const month of months) radiation += share * season[month] * (sunRatio[month][cell] ?? 0)
    slopeArea += share * slopeAreaFactor(terrain.slopeDeg[cell] ?? 0)
  }
  return radiation / slopeArea
}
