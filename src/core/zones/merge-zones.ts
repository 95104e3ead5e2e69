import type { Ring } from '#core/geometry'
import type { Outcome } from '#core/units'
import { refuse, unknownZone } from './edit-zones'
import { mergeRings } from './merge-rings'
import { problemsOfZone } from './zone-problems'
import type { Zone } from './zone.schema'

/**
 * Joins zones that touch or overlap into one. The first keeps its id, its name and the choices made for it.
 *
 * @param zones - the drawn zones
 * @param ids - ids of the zones to join, two or more
 * @returns the zones, or what is wrong
 */
export function mergeZones(zones: readonly Zone[], ids: readonly string[]): Outcome<Zone[]> {
  const wanted = [...new Set(ids)]
  const unknown = wanted.find((id) => !zones.some((zone) => zone.id === id))
  if (unknown !== undefined) return unknownZone(unknown)
  const [first, ...others] = wanted.flatMap((id) => zones.filter((zone) => zone.id === id))
  if (!first || others.length === 0)
    return refuse('zones', 'It takes two zones to join.', 'Pick at least two zones that touch.')
  const ring = joined(first, others)
  if (!ring)
    return refuse(
      `zone “${first.name}”`,
      'These zones do not join into one outline: they lie apart, touch only at a corner, or close a ring about a gap.',
      'Pick zones that share a side, or draw a single outline about them.',
    )
  const merged = { ...first, ring: [...ring] }
  const problems = problemsOfZone(merged)
  if (problems.length > 0) return { ok: false, problems }
  const gone = new Set(others)
  return {
    ok: true,
    value: zones.flatMap((zone) => (gone.has(zone) ? [] : [zone === first ? merged : zone])),
  }
}

// Takes in the others in whatever order they touch; undefined when one is left over.
function joined(first: Zone, others: readonly Zone[]): Ring | undefined {
  let ring: Ring = first.ring
  let waiting = others
  while (waiting.length > 0) {
    const next = waiting
      .map((zone) => ({ zone, rings: mergeRings(ring, zone.ring) }))
      .find(({ rings }) => rings.length === 1)
    if (!next?.rings[0]) return undefined
    ring = next.rings[0]
    waiting = waiting.filter((zone) => zone !== next.zone)
  }
  return ring
}
