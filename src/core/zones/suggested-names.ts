import { zoneMeans } from './zone-means'
import { cellSun } from './cell-sun'
import { bandAt, LEAST_FALL_M, type BandLimit } from './limits'
import { nameZones } from './name-zones'
import type { ZoningInput } from './zoning-input.types'

/**
 * Plain names for zones, from their band, gradient and sun.
 *
 * @param input - ground, terrain and sun
 * @param zoneOfCell - zone of each cell, from the top down; -1 outside
 * @param count - number of zones [zones], 1 or more
 * @param bands - bands of position, from the top down
 * @returns a name for each zone, each name once
 */
export function suggestedNames(
  input: ZoningInput,
  zoneOfCell: Int16Array,
  count: number,
  bands: readonly BandLimit[],
): readonly string[] {
  const { surface, terrain } = input
  const mean = (values: ArrayLike<number>) => zoneMeans(zoneOfCell, count, surface.share, values)
  const position = mean(terrain.position)
  const slopeDeg = mean(terrain.slopeDeg)
  const ratio = mean(cellSun(input).seasonRatio)
  const whole = zoneOfCell.map((zone) => Math.min(zone, 0))
  const plotSlopeDeg = zoneMeans(whole, 1, surface.share, terrain.slopeDeg)[0] ?? 0
  return nameZones(
    position.map((at, zone) => ({
      band: bandAt(at, bands),
      slopeDeg: slopeDeg[zone] ?? 0,
      plotSlopeDeg,
      level: surface.fallM < LEAST_FALL_M,
      seasonSunRatio: ratio[zone] ?? 0,
    })),
  )
}
