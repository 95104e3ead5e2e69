import { tinNeighbours, type LevelPoint } from '#core/geometry'
import { leaveOneOutM } from './leave-one-out'
import type { LineNet } from './line-net'
import { modifiedZ, robustScale } from './modified-z'
import type { LevelsSurvey } from './survey.schema'
import { rowName } from './surface-notes'
import type { SurfaceNote } from './surface.types'

/** A modified z-score beyond this marks an outlier [1]. Source: Iglewicz and Hoaglin 1993. */
const LIMIT_Z = 3.5

/** Levels nearer than this to the ground around are never called outliers [m]; own judgement: ground itself is that rough. */
const LEAST_OUTLIER_M = 0.1

/** With fewer points than this nothing can be said of what is usual [points]; own judgement. */
const LEAST_POINTS = 8

/** Codes of points at which the ground bends, in the words of surveyors' code lists; own judgement. */
const BREAK_CODE = /\b(top|crest|toe|foot|bot|bottom|ridge|edge|brk|break|kerb|wall|bank|ditch|channel)/i

/**
 * Levels that stand out from the ground around them.
 *
 * Each is compared with what its neighbours in the triangles say of its place without it. Nothing is removed.
 *
 * @param rows - the rows of the survey
 * @param net - the triangles made of them
 * @returns a note for each level that stands out, the farthest first
 * @see Iglewicz and Hoaglin 1993, How to Detect and Handle Outliers, ASQC Quality Press
 */
export function outlierNotes(rows: LevelsSurvey['points'], net: LineNet): SurfaceNote[] {
  const { points } = net.tin
  const gapOf = gapsWithout(rows, net)
  const found = new Set<number>()
  const judged = net.places.flatMap(({ rows: own }, point): Judged[] => {
    const gapM = own.length > 0 ? gapOf(point, found) : undefined
    return gapM === undefined ? [] : [{ point, gapM }]
  })
  if (judged.length < LEAST_POINTS) return []
  const scale = robustScale(Float64Array.from(judged, ({ gapM }) => gapM))
  const standsOut = (gapM: number | undefined): gapM is number =>
    gapM !== undefined && Math.abs(gapM) >= LEAST_OUTLIER_M && Math.abs(modifiedZ(gapM, scale)) > LIMIT_Z
  const suspects = judged
    .filter(({ gapM }) => standsOut(gapM))
    .sort((one, other) => Math.abs(other.gapM) - Math.abs(one.gapM) || one.point - other.point)
  // A wrong level makes its neighbours look wrong: the worst is taken first and the rest judged again without it.
  return suspects.flatMap(({ point }) => {
    const gapM = gapOf(point, found)
    if (!standsOut(gapM)) return []
    found.add(point)
    return [outlierNote(rows, net.places[point]!.rows, points[point]!, gapM)]
  })
}

interface Judged {
  readonly point: number
  readonly gapM: number
}

// How far a point stands above its neighbours, some of them not asked.
function gapsWithout(rows: LevelsSurvey['points'], net: LineNet) {
  const { of, beyond } = tinNeighbours(net.tin)
  const along = alongOf(rows, net)
  return (point: number, without: ReadonlySet<number>): number | undefined => {
    const asked = (other: number) => !without.has(other)
    const all = of(point)
    const fellows = { neighbours: all, along: along(point, all), beyond: beyond(point) }
    if (without.size === 0) return leaveOneOutM(net.tin.points, point, fellows)
    return leaveOneOutM(net.tin.points, point, {
      neighbours: Array.from(all).filter(asked),
      along: fellows.along?.filter(asked),
      beyond: fellows.beyond.filter((corners) => corners.every(asked)),
    })
  }
}

function outlierNote(
  rows: LevelsSurvey['points'],
  own: readonly number[],
  at: LevelPoint,
  gapM: number,
): SurfaceNote {
  const names = own.map((row) => rowName(rows, row)).join(', ')
  const what = `Row ${names} stands ${Math.abs(gapM).toFixed(2)} m ${gapM > 0 ? 'above' : 'below'} the ground around it. Look at it again; it is used as it is.`
  return { kind: 'outlier', what, at: { eastM: at.eastM, northM: at.northM } }
}

// Points on a line are compared along it, and coded edges with neighbours of the same code: across it the ground bends.
function alongOf(rows: LevelsSurvey['points'], { pieces, places }: LineNet) {
  const onLine = new Map<number, number[]>()
  const add = (from: number, to: number) => {
    const held = onLine.get(from)
    if (held) held.push(to)
    else onLine.set(from, [to])
  }
  for (const { from, to } of pieces) {
    add(from, to)
    add(to, from)
  }
  const codes = rows.some(({ code }) => code !== undefined)
    ? places.map(({ rows: own }) => breakCode(rows, own))
    : undefined
  return (point: number, neighbours: ArrayLike<number>): readonly number[] | undefined => {
    const code = codes?.[point]
    if (code === undefined) return onLine.get(point)
    return onLine.get(point) ?? Array.from(neighbours).filter((other) => codes?.[other] === code)
  }
}

function breakCode(rows: LevelsSurvey['points'], own: readonly number[]): string | undefined {
  return own.flatMap((row) => rows[row]?.code ?? []).find((code) => BREAK_CODE.test(code))
}
