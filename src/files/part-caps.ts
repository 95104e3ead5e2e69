import type { SurveyPart } from './survey-read.types'

/** What a plan can hold of one survey; the same bounds as its schema. */
const MOST_POINTS = 100_000
const MOST_FACES = 250_000
const MOST_LINES = 5000
const MOST_VERTICES = 20_000

/**
 * A part as far as a plan can hold it.
 *
 * @param part - as read from the file
 * @returns the part, without its lines when those are too many; undefined when it has too many points or faces
 */
export function withinCaps(part: SurveyPart): { part: SurveyPart | undefined; notes: string[] } {
  const { points, faces, breaklines, name } = part
  if (points.length > MOST_POINTS || faces.length > MOST_FACES)
    return {
      part: undefined,
      notes: [
        `"${name}" holds ${points.length} points and ${faces.length} faces; a plan takes ${MOST_POINTS} and ${MOST_FACES}. It is left out: export only the ground of the plot and its surroundings.`,
      ],
    }
  const tooMany =
    breaklines.length > MOST_LINES || breaklines.some((line) => line.vertices.length > MOST_VERTICES)
  if (!tooMany) return { part, notes: [] }
  return {
    part: { ...part, breaklines: [] },
    notes: [
      `"${name}" holds ${breaklines.length} lines; a plan takes ${MOST_LINES} of up to ${MOST_VERTICES} points. Its points are kept, its lines are not.`,
    ],
  }
}

/** More surfaces or layers than a person can choose among. */
const MOST_TO_CHOOSE = 500

/**
 * The first of the surfaces, groups or layers of a file, as many as can be chosen among.
 *
 * @param all - in the order of the file
 * @param what - what they are called
 * @returns those that are read, and a note when there are more
 */
export function fewEnough<T>(
  all: readonly T[],
  what: string,
): { few: readonly T[]; notes: readonly string[] } {
  if (all.length <= MOST_TO_CHOOSE) return { few: all, notes: [] }
  return {
    few: all.slice(0, MOST_TO_CHOOSE),
    notes: [`The file holds ${all.length} ${what}; the first ${MOST_TO_CHOOSE} are read.`],
  }
}

/** Parts with ids used once: later ones of a name get a number. */
export function partIds(parts: readonly SurveyPart[]): SurveyPart[] {
  const used = new Set<string>()
  const copies = new Map<string, number>()
  return parts.map((part) => {
    let copy = copies.get(part.id) ?? 0
    const numbered = () => (++copy === 1 ? part.id : `${part.id}#${copy}`)
    let id = numbered()
    while (used.has(id)) id = numbered()
    copies.set(part.id, copy)
    used.add(id)
    return { ...part, id }
  })
}
