import type { SurveyPart } from './survey-read.types'
import { numbersIn } from './xml-numbers'
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
 * @returns the faces that are ground and the points they use; all points where it has no faces
 */
export function surfaceFaces(definition: XmlValue): SurfaceFaces {
  const tally: Tally = { badPoints: 0, twice: 0, invisible: 0, lost: 0, squares: 0 }
  const { points, rowOf } = pointsById(definition, tally)
  const written = childrenOf(definition, 'Faces').flatMap((faces) => childrenOf(faces, 'F'))
  const faces = written.flatMap((face) => trianglesOf(face, rowOf, tally))
  const used = written.length === 0 ? { points, faces, unused: 0 } : onlyUsed(points, faces)
  return { points: used.points, faces: used.faces, notes: notesOf(tally, used.unused) }
}

function pointsById(definition: XmlValue, tally: Tally) {
  const points: Point[] = []
  const rowOf = new Map<string, number>()
  for (const list of childrenOf(definition, 'Pnts'))
    for (const element of childrenOf(list, 'P')) {
      const point = northingFirst(element)
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

function trianglesOf(face: XmlValue, rowOf: ReadonlyMap<string, number>, tally: Tally): Face[] {
  if (attributeOf(face, 'i') === '1') {
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
    [tally.badPoints, 'points that do not hold a northing, an easting and a level are left out'],
    [tally.twice, 'points with an id that an earlier point has are left out'],
    [tally.invisible, 'faces marked invisible are no ground and left out'],
    [tally.lost, 'faces that name points which are not there, or one point twice, are left out'],
    [unused, 'points that no visible face stands on are left out'],
    [tally.squares, 'faces with four corners are cut into two triangles each'],
  ]
  return said.filter(([count]) => count > 0).map(([count, what]) => `${count} ${what}.`)
}
