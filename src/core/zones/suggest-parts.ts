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

/**
 * Share of the ground that lies lower on the slope than each cell, 0 to 1: a short steep face spans little of it,
 * however much height it takes.
 *
 * @param position - position of each cell, 0 (foot) to 1 (crest) [ratio]
 * @param share - part of each cell to be counted, 0 to 1 [ratio]
 * @returns the share, one for each cell
 */
function groundBelow(position: Float64Array, share: Float64Array): Float64Array {
  const order = Array.from(position.keys()).filter((cell) => (share[cell] ?? 0) > 0)
  order.sort((one, other) => (position[one] ?? 0) - (position[other] ?? 0))
  const whole = order.reduce((sum, cell) => sum + (share[cell] ?? 0), 0)
  const below = new Float64Array(position.length)
  let passed = 0
  for (const cell of order) {
    const part = share[cell] ?? 0
    below[cell] = (passed + part / 2) / whole
    passed += part
  }
  return below
}
