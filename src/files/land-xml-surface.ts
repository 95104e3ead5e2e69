import type { NamedPoints } from './land-xml-source'
import type { SurveyPart } from './survey-read.types'
import { numbersIn } from './written-numbers'
import { attributeOf, childrenOf, textOf, type XmlValue } from './xml-tree'

type Point = SurveyPart['points'][number]
type Face = SurveyPart['faces'][number]

/** Triangles of a surface with the points they stand on. */
export interface SurfaceFaces {
  readonly points: readonly Point[]
  readonly faces: readonly Face[]
  readonly notes: readonly string[]
}

interface Tally {
  badPoints: number
  twice: number
  invisible: number
  lost: number
  squares: number
}

/**
 * Reads the definition of a LandXML surface: faces of three or four points whose ids are local to it.
 *
 * @param definition - its Definition element
 * @param named - survey points of the file by name, for corners given by reference
 * @returns the faces that are ground and the points they use; all points where it has no faces
 */
export function surfaceFaces(definition: XmlValue, named: NamedPoints): SurfaceFaces {
  const tally: Tally = { badPoints: 0, twice: 0, invisible: 0, lost: 0, squares: 0 }
  const { points, rowOf } = pointsById(definition, named, tally)
  const written = childrenOf(definition, 'Faces').flatMap((faces) => childrenOf(faces, 'F'))
  const faces = written.flatMap((face) => trianglesOf(face, rowOf, tally))
  const used = written.length === 0 ? { points, faces, unused: 0 } : onlyUsed(points, faces)
  return { points: used.points, faces: used.faces, notes: notesOf(tally, used.unused) }
}

function pointsById(definition: XmlValue, named: NamedPoints, tally: Tally) {
  const points: Point[] = []
  const rowOf = new Map<string, number>()
  for (const list of childrenOf(definition, 'Pnts'))
    for (const element of childrenOf(list, 'P')) {
      const point = northingFirst(element) ?? referred(element, named)
      const id = attributeOf(element, 'id')
      if (point === undefined) tally.badPoints++
      else if (id !== undefined && rowOf.has(id)) tally.twice++
      else {
        if (id !== undefined) rowOf.set(id, points.length)
        points.push(point)
      }
    }
  return { points, rowOf }
}

/** LandXML writes the northing first, then the easting, then the level. */
function northingFirst(element: XmlValue): Point | undefined {
  const [northM, eastM, levelM, more] = numbersIn(textOf(element)) ?? []
  if (northM === undefined || eastM === undefined || levelM === undefined || more !== undefined)
    return undefined
  return { eastM, northM, levelM }
}

function referred(element: XmlValue, named: NamedPoints): Point | undefined {
  const { levelM, ...place } = named.get(attributeOf(element, 'pntRef') ?? '') ?? {}
  return levelM === undefined || !('eastM' in place) ? undefined : { ...place, levelM }
}

function trianglesOf(face: XmlValue, rowOf: ReadonlyMap<string, number>, tally: Tally): Face[] {
  if (/^(1|true)$/i.test(attributeOf(face, 'i') ?? '')) {
    tally.invisible++
    return []
  }
  const ids = textOf(face).trim().split(/\s+/)
  const rows = ids.flatMap((id) => rowOf.get(id) ?? [])
  const [a, b, c, d] = rows
  const whole = rows.length === ids.length && rows.length <= 4 && new Set(rows).size === rows.length
  if (!whole || a === undefined || b === undefined || c === undefined) {
    tally.lost++
    return []
  }
  if (d === undefined) return [[a, b, c]]
  tally.squares++
  return [
    [a, b, c],
    [a, c, d],
  ]
}

/** Leaves out points that no visible face stands on: they are not of the surface. */
function onlyUsed(points: readonly Point[], faces: readonly Face[]) {
  const newRow = new Map<number, number>()
  for (const face of faces) for (const row of face) if (!newRow.has(row)) newRow.set(row, 0)
  const kept: Point[] = []
  points.forEach((point, row) => {
    if (newRow.has(row)) newRow.set(row, kept.push(point) - 1)
  })
  const at = (row: number) => newRow.get(row) ?? 0
  return {
    points: kept,
    faces: faces.map(([a, b, c]): Face => [at(a), at(b), at(c)]),
    unused: points.length - kept.length,
  }
}

function notesOf(tally: Tally, unused: number): string[] {
  const said: readonly (readonly [number, string])[] = [
    [tally.badPoints, 'left out, points that do not hold a northing, an easting and a level'],
    [tally.twice, 'left out, points with an id that an earlier point has'],
    [tally.invisible, 'left out, faces marked invisible, which are no ground'],
    [tally.lost, 'left out, faces that name points which are not there or one point twice'],
    [unused, 'left out, points that no visible face stands on'],
    [tally.squares, 'cut into two triangles each, faces with four corners'],
  ]
  return said.filter(([count]) => count > 0).map(([count, what]) => `${what}: ${count}.`)
}
