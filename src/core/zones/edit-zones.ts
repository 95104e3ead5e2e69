import type { Outcome, Problem } from '#core/units'
import type { Ring } from '#core/geometry'
import { problemsOfZone } from './zone-problems'
import type { Zone } from './zone.schema'
import type { Zoning } from './zone.types'

/**
 * Takes suggested zones over as drawn ones, to be edited. The smallest come first, so that a zone inside another
 * keeps its ground.
 *
 * @param zoning - zones as suggested
 * @returns drawn zones, or the problem that there is nothing to take over
 */
export function zonesFromSuggestion(zoning: Zoning): Outcome<Zone[]> {
  const zones = zoning.zones
    .filter(({ ring }) => ring.length > 2)
    .toSorted((one, other) => one.planAreaM2 - other.planAreaM2)
    .map(({ id, name, ring }) => ({ id, name, ring: [...ring] }))
  return zones.length > 0
    ? { ok: true, value: zones }
    : refuse(
        'zones',
        'There are no suggested zones to take over.',
        'Draw a zone, or give the plot a boundary.',
      )
}

/**
 * Gives a zone another name.
 *
 * @param zones - the drawn zones
 * @param id - id of the zone
 * @param name - its new name, 1 to 60 letters
 * @returns the zones, or what is wrong
 */
export function renameZone(zones: readonly Zone[], id: string, name: string): Outcome<Zone[]> {
  const plain = name.trim()
  if (zones.some((zone) => zone.id !== id && zone.name === plain))
    return refuse(`zone “${plain}”`, 'Another zone already has this name.', 'Choose a name of its own.')
  return change(zones, id, (zone) => ({ ...zone, name: plain }))
}

/**
 * Gives a zone another outline.
 *
 * @param zones - the drawn zones
 * @param id - id of the zone
 * @param ring - its new outline in plan [m]
 * @returns the zones, or what is wrong
 */
export function reshapeZone(zones: readonly Zone[], id: string, ring: Ring): Outcome<Zone[]> {
  return change(zones, id, (zone) => ({ ...zone, ring: [...ring] }))
}

/**
 * Adds a drawn zone. It comes first, so that it holds its ground where it overlaps others.
 *
 * @param zones - the drawn zones
 * @param zone - the new zone
 * @returns the zones, or what is wrong
 */
export function addZone(zones: readonly Zone[], zone: Zone): Outcome<Zone[]> {
  if (zones.some(({ id, name }) => id === zone.id || name === zone.name))
    return refuse(
      `zone “${zone.name}”`,
      'There already is a zone with this name or id.',
      'Choose a name of its own.',
    )
  const problems = problemsOfZone(zone)
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: [zone, ...zones] }
}

/**
 * Takes a zone out. Its ground goes to neighbours within reach, the remainder to a zone named "Rest".
 *
 * @param zones - the drawn zones
 * @param id - id of the zone
 * @returns the zones, or what is wrong
 */
export function removeZone(zones: readonly Zone[], id: string): Outcome<Zone[]> {
  return zones.some((zone) => zone.id === id)
    ? { ok: true, value: zones.filter((zone) => zone.id !== id) }
    : unknownZone(id)
}

/**
 * The problem that no zone has an id.
 *
 * @param id - the id that was asked for
 * @returns the refusal
 */
export function unknownZone(id: string): { ok: false; problems: Problem[] } {
  return refuse(`zone “${id}”`, 'There is no such zone.', 'Pick a zone on the drawing and try again.')
}

/**
 * A refusal with one problem.
 *
 * @param where - where it stands
 * @param what - what is wrong
 * @param mend - how to mend it
 * @returns the refusal
 */
export function refuse(where: string, what: string, mend: string): { ok: false; problems: Problem[] } {
  return { ok: false, problems: [{ where, what, mend }] }
}

function change(zones: readonly Zone[], id: string, anew: (zone: Zone) => Zone): Outcome<Zone[]> {
  const zone = zones.find((each) => each.id === id)
  if (!zone) return unknownZone(id)
  const changed = anew(zone)
  const problems = problemsOfZone(changed)
  return problems.length > 0
    ? { ok: false, problems }
    : { ok: true, value: zones.map((each) => (each === zone ? changed : each)) }
}
