import { splitRing, type PlanPoint } from '#core/geometry'
import type { Outcome } from '#core/units'
import { refuse, unknownZone } from './edit-zones'
import { problemsOfZone } from './zone-problems'
import type { Zone } from './zone.schema'

/**
 * Cuts a zone along a straight line, extended to both sides. The piece that comes first keeps the id, and with it
 * the choices made for the zone; the others get ids and names of their own.
 *
 * @param zones - the drawn zones
 * @param id - id of the zone
 * @param line - two places on the line, in plan [m]
 * @returns the zones, or what is wrong
 */
export function splitZone(
  zones: readonly Zone[],
  id: string,
  line: readonly [PlanPoint, PlanPoint],
): Outcome<Zone[]> {
  const zone = zones.find((each) => each.id === id)
  if (!zone) return unknownZone(id)
  const where = `zone “${zone.name}”`
  const [from, to] = line
  if (from.eastM === to.eastM && from.northM === to.northM)
    return refuse(
      where,
      'The line is a single point.',
      'Draw the line from one side of the zone to the other.',
    )
  const rings = splitRing(zone.ring, from, to)
  if (rings.length < 2)
    return refuse(
      where,
      'The line does not cross the zone.',
      'Draw it from one side of the zone to the other.',
    )
  const pieces = piecesOf(zones, zone, rings.length).map((piece, at) => ({
    ...piece,
    ring: [...(rings[at] ?? [])],
  }))
  const problems = pieces.flatMap(problemsOfZone)
  return problems.length > 0
    ? { ok: false, problems }
    : { ok: true, value: zones.flatMap((each) => (each === zone ? pieces : [each])) }
}

// Ids and names for the pieces: the first keeps its own.
function piecesOf(zones: readonly Zone[], zone: Zone, count: number): Zone[] {
  const ids = new Set(zones.map((each) => each.id))
  const names = new Set(zones.map((each) => each.name))
  return Array.from({ length: count }, (_, at) => {
    if (at === 0) return zone
    const id = free(ids, (number) => `${zone.id}-${number}`)
    const name = free(names, (number) => `${zone.name} ${number}`)
    return { ...zone, id, name }
  })
}

// The first numbered word not yet taken, which then is taken.
function free(taken: Set<string>, word: (number: number) => string): string {
  for (let number = 2; ; number++) {
    const candidate = word(number)
    if (taken.has(candidate)) continue
    taken.add(candidate)
    return candidate
  }
}
