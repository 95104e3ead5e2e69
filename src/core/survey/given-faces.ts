import { anticlockwise, triangleOverlaps, type Tin } from '#core/geometry'
import type { Outcome, Problem } from '#core/units'
import type { LevelsSurvey } from './survey.schema'
import { rowName } from './surface-notes'
import type { SurfaceNote } from './surface.types'

/** Twice the area under which a triangle is a line, as a share of its longest side squared [m²/m²]. */
const LINE_SHARE = 1e-9

/** Overlaps are looked for until this many are found [pairs]: more say nothing new. */
const MOST_OVERLAPS = 20

/** Rows named in one note [rows]. */
const MOST_NAMES = 20

/** Triangles that came with a survey. */
export interface GivenTin {
  readonly tin: Tin
  readonly notes: readonly SurfaceNote[]
}

/**
 * The triangles that came with a survey, as they are: only those without area are left out.
 *
 * @param survey - the levels
 * @param faces - rows of the corners of each triangle, from 0
 * @returns the triangles, or the problem that keeps us from them
 */
export function givenTin(survey: LevelsSurvey, faces: NonNullable<LevelsSurvey['faces']>): Outcome<GivenTin> {
  const { points } = survey
  const strays = faces.flatMap((face, at) => (face.some((row) => row >= points.length) ? [at] : []))
  if (strays.length > 0) return { ok: false, problems: [strayProblem(points.length, faces, strays)] }
  const sound = faces.filter((face) => hasArea(points, face))
  if (sound.length === 0) return { ok: false, problems: [emptyProblem(faces.length)] }
  const tin = { points, corners: anticlockwise(points, sound.flat()) }
  return { ok: true, value: { tin, notes: [...faceNotes(survey, faces, sound), ...overlapNotes(tin)] } }
}

type Face = NonNullable<LevelsSurvey['faces']>[number]

function hasArea(points: LevelsSurvey['points'], [one, two, three]: Face): boolean {
  const [a, b, c] = [points[one]!, points[two]!, points[three]!]
  const [bx, by] = [b.eastM - a.eastM, b.northM - a.northM]
  const [cx, cy] = [c.eastM - a.eastM, c.northM - a.northM]
  const longest = Math.max(bx * bx + by * by, cx * cx + cy * cy, (bx - cx) ** 2 + (by - cy) ** 2)
  return Math.abs(bx * cy - cx * by) > LINE_SHARE * longest
}

function strayProblem(count: number, faces: readonly Face[], strays: readonly number[]): Problem {
  const first = strays[0] ?? 0
  const others = strays.length > 1 ? `, and ${strays.length - 1} more like it` : ''
  return {
    where: `survey.ground.faces[${first}]`,
    what: `Triangle ${first + 1} joins the rows ${faces[first]?.map((row) => row + 1).join(', ')}, but the survey has ${count} rows${others}.`,
    mend: 'Load the file again, or leave its triangles out so that we join the points.',
  }
}

function emptyProblem(count: number): Problem {
  return {
    where: 'survey.ground.faces',
    what: `None of the ${count} triangles that came with the survey has any area.`,
    mend: 'Leave the triangles out so that we join the points.',
  }
}

function faceNotes(
  { points, breaklines }: LevelsSurvey,
  faces: readonly Face[],
  sound: readonly Face[],
): SurfaceNote[] {
  const used = new Uint8Array(points.length)
  for (const face of sound) for (const row of face) used[row] = 1
  const unused = [...points.keys()].filter((row) => !used[row])
  const note = (what: string): SurfaceNote => ({ kind: 'left-out', what, at: undefined })
  const flat = faces.length - sound.length
  const lines = breaklines?.length ?? 0
  return [
    ...(flat > 0
      ? [note(`${flat} of the survey’s ${faces.length} triangles have no area and are left out.`)]
      : []),
    ...(unused.length > 0 ? [note(unusedText(points, unused))] : []),
    ...(lines > 0
      ? [
          note(
            `The survey came with its own triangles, which are used as they are: its ${lines} lines are drawn but bend no triangle.`,
          ),
        ]
      : []),
  ]
}

function unusedText(points: LevelsSurvey['points'], unused: readonly number[]): string {
  const named = unused.slice(0, MOST_NAMES).map((row) => rowName(points, row))
  const more = unused.length > MOST_NAMES ? ` and ${unused.length - MOST_NAMES} more` : ''
  return `No triangle of the survey uses row ${named.join(', ')}${more}; left out of the surface.`
}

function overlapNotes(tin: Tin): SurfaceNote[] {
  return triangleOverlaps(tin, MOST_OVERLAPS).map(([one, other]): SurfaceNote => {
    const { eastM, northM } = tin.points[tin.corners[one * 3]!]!
    const what = `Triangles ${cornerText(tin, one)} and ${cornerText(tin, other)} of the survey lie over one another; the first of the file holds.`
    return { kind: 'overlap', what, at: { eastM, northM } }
  })
}

function cornerText(tin: Tin, triangle: number): string {
  const rows = [...tin.corners.subarray(triangle * 3, triangle * 3 + 3)].map((row) => row + 1)
  return `${rows.slice(0, 2).join(', ')} and ${rows[2]}`
}
