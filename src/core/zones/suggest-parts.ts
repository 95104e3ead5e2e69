import { groundBelow } from './ground-below'
import { cellSun } from './cell-sun'
import { classesOfCells } from './cell-classes'
import { connectedParts, type Parts } from './connected-parts'
import { STEPS, type BandLimit } from './limits'
import { mergeParts } from './merge-parts'
import { smoothClasses } from './smooth-classes'
import type { ZoningInput } from './zoning-input.types'

/**
 * Divides ground into parts that behave alike: by position on the slope, gradient and sun, smoothed and merged.
 *
 * @param input - ground, terrain and sun
 * @param bands - bands of position, from the top down
 * @param share - part of each cell to be divided, 0 to 1; 0 leaves the cell out [ratio]
 * @returns the parts
 */
export function suggestParts(input: ZoningInput, bands: readonly BandLimit[], share: Float64Array): Parts {
  const { frame } = input.surface
  const sun = cellSun(input)
  const ground = { ...input, surface: { ...input.surface, share } }
  const classes = smoothClasses(classesOfCells(ground, sun, bands), frame)
  const positionStep = bands.length > 1 ? STEPS.position : Infinity
  return mergeParts(connectedParts(classes, frame), {
    share,
    frame,
    traits: [
      { measures: [input.terrain.position, groundBelow(input.terrain.position, share)], step: positionStep },
      { measures: [input.terrain.slopeDeg], step: STEPS.slopeDeg },
      { measures: [sun.seasonRatio], step: STEPS.sunRatio },
      { measures: [sun.midsummerHours], step: STEPS.sunHours },
    ],
  })
}
