import { spareCorners, withoutSpare, type PlanPoint, type SpareCorner } from '#core/geometry'
import { lineName } from './surface-notes'
import type { SurfaceNote } from './surface.types'
import { SAME_PLACE_M } from './tolerances'

/** A line without repeated corners and spikes. */
export interface CleanLine<Corner> {
  /** The corners that are left, each with its number in the line as given, from 0. */
  readonly corners: readonly { readonly corner: Corner; readonly at: number }[]
  /** Whether the last corner is joined to the first. */
  readonly closed: boolean
  readonly notes: readonly SurfaceNote[]
}

interface NamedLine<Corner> {
  readonly id: string
  readonly name?: string | undefined
  readonly vertices: readonly Corner[]
}

/**
 * A breakline cleaned: corners that repeat the one before and places where it doubles back are taken out and told of.
 * A line that ends where it begins is closed.
 *
 * @param line - the line as given
 * @returns what is left of it; no corners when that is less than a line
 */
export function cleanLine<Corner extends PlanPoint>(line: NamedLine<Corner>): CleanLine<Corner> {
  const closed = endsMeet(line.vertices)
  const joint = closed ? line.vertices.slice(0, -1) : line.vertices
  const spare = spareCorners(joint, closed, SAME_PLACE_M)
  const corners = withoutSpare(joint, spare)
  const notes = spare.map((one): SurfaceNote => spareNote(one, joint[one.at], lineName(line)))
  if (corners.length >= 2) return { corners, closed: closed && corners.length > 2, notes }
  const at = line.vertices[0]
  const what = `The line ${lineName(line)} has no length and is left out.`
  return { corners: [], closed: false, notes: [...notes, { kind: 'left-out', what, at }] }
}

/**
 * The note on a corner that was taken out.
 *
 * @param spare - the corner
 * @param at - where it is [m]
 * @param name - the line or outline it belongs to, as it is called in a sentence
 * @returns the note
 */
export function spareNote(spare: SpareCorner, at: PlanPoint | undefined, name: string): SurfaceNote {
  const corner = `Corner ${spare.at + 1} of ${name}`
  return spare.why === 'repeat'
    ? { kind: 'merged', what: `${corner} repeats the one beside it and is taken out.`, at }
    : { kind: 'spike', what: `${corner} is a spike, where the line doubles back; it is taken out.`, at }
}

function endsMeet(vertices: readonly PlanPoint[]): boolean {
  const [first, last] = [vertices[0], vertices.at(-1)]
  if (!first || !last || vertices.length < 4) return false
  return Math.hypot(first.eastM - last.eastM, first.northM - last.northM) <= SAME_PLACE_M
}
