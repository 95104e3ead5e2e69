import type { SurfaceNote } from './surface.types'

/** More notes of one kind than this are counted, not listed [notes]; own judgement: nobody reads more. */
const MOST_OF_A_KIND = 100

/** What the kinds of note are about, when some are only counted. */
const kindWords: Readonly<Record<SurfaceNote['kind'], string>> = {
  merged: 'places were joined',
  'left-out': 'things were left out',
  snapped: 'points were taken into a line',
  split: 'crossings were split',
  spike: 'corners were taken out',
  outlier: 'levels stand out',
  disagreement: 'levels disagree',
  overlap: 'triangles overlap',
}

/**
 * Notes short enough to read: of each kind the first hundred, and how many more there are.
 *
 * @param notes - every note
 * @returns the notes in their order, with a count at the end of each kind that was cut short
 */
export function readableNotes(notes: readonly SurfaceNote[]): SurfaceNote[] {
  const seen = new Map<SurfaceNote['kind'], number>()
  const kept = notes.filter(({ kind }) => {
    const count = (seen.get(kind) ?? 0) + 1
    seen.set(kind, count)
    return count <= MOST_OF_A_KIND
  })
  const counts = [...seen].flatMap(([kind, count]): SurfaceNote[] =>
    count > MOST_OF_A_KIND
      ? [{ kind, what: `${count - MOST_OF_A_KIND} more ${kindWords[kind]}.`, at: undefined }]
      : [],
  )
  return [...kept, ...counts]
}

/**
 * A level as notes and problems write it.
 *
 * @param levelM - the level [m]
 * @returns the level to the millimetre, with its unit
 */
export function levelText(levelM: number): string {
  return `${Number(levelM.toFixed(3))} m`
}

/**
 * A row of the survey as notes and problems name it.
 *
 * @param points - the rows
 * @param row - which one, from 0 [count]
 * @returns its number from 1, with its mark when it has one
 */
export function rowName(points: readonly { readonly mark?: string | undefined }[], row: number): string {
  const mark = points[row]?.mark
  return mark ? `${row + 1} (${mark})` : `${row + 1}`
}

/**
 * A line as notes name it.
 *
 * @param line - the line
 * @param line.id - its id
 * @param line.name - what it is called, if anything
 * @returns its name in quotes; the id when it has none
 */
export function lineName(line: { readonly id: string; readonly name?: string | undefined }): string {
  return `“${line.name ?? line.id}”`
}
