import { clipRing } from './clip-ring'
import type { PlanPoint, Ring } from './geometry.types'
import { ringAreaM2, sides, signedAreaM2 } from './ring-measures'

/**
 * Plan area that two outlines have in common, exact for bent outlines too.
 *
 * Each outline is the sum of the triangles that its sides make with its first corner, those that run backwards taken off;
 * the common area is then the sum of what the triangles of both have in common.
 *
 * @param one - outline in plan [m] that does not cross itself
 * @param other - likewise
 * @returns plan area [m²], 0 or more
 */
export function sharedAreaM2(one: Ring, other: Ring): number {
  const second = fan(other)
  let totalM2 = 0
  for (const triangle of fan(one))
    for (const against of second)
      totalM2 += triangle.turn * against.turn * ringAreaM2(clipRing(triangle.ring, against.ring))
  return Math.abs(totalM2)
}

interface SignedTriangle {
  readonly ring: Ring
  readonly turn: number
}

function fan(ring: Ring): SignedTriangle[] {
  const first: PlanPoint | undefined = ring[0]
  if (!first) return []
  return sides(ring).flatMap(([from, to]) => {
    const triangle = [first, from, to]
    const turn = Math.sign(signedAreaM2(triangle))
    return turn === 0 ? [] : [{ ring: triangle, turn }]
  })
}
