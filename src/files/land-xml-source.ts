import { lineKind, namesWall } from './line-kind'
import type { SurveyPart } from './survey-read.types'
import { numberOf, numbersIn } from './written-numbers'
import { attributeOf, childrenOf, textOf, type XmlValue } from './xml-tree'

type Point = SurveyPart['points'][number]
type Line = SurveyPart['breaklines'][number]
type PlanRing = NonNullable<SurveyPart['boundary']>

/** What a surface was made from. */
export interface SourceData {
  /** Points measured one by one. */
  readonly points: readonly Point[]
  readonly lines: readonly Line[]
  readonly boundary: PlanRing | undefined
  readonly notes: readonly string[]
}

interface ReadPlace {
  readonly eastM: number
  readonly northM: number
  readonly levelM?: number
}

/** Points by name, for places that are given by reference. */
export type NamedPoints = ReadonlyMap<string, ReadPlace>

/** Longest name of a line that a plan keeps [letters]. */
const LONGEST_NAME = 60

/**
 * Reads the source data of a LandXML surface: measured points, breaklines, contours and boundaries.
 *
 * @param surface - its Surface element
 * @param named - survey points of the file by name
 * @returns what is there, with notes on what could not be read
 */
export function sourceData(surface: XmlValue, named: NamedPoints): SourceData {
  const notes: string[] = []
  // The schema keeps them under SourceData; some programs write them beside the faces.
  const sources = [...childrenOf(surface, 'SourceData'), ...childrenOf(surface, 'Definition'), surface]
  const groups = (group: string, one: string) =>
    sources.flatMap((source) => childrenOf(source, group)).flatMap((list) => childrenOf(list, one))
  const lines = [
    ...linesOf(groups('Breaklines', 'Breakline'), named, notes),
    ...contoursOf(groups('Contours', 'Contour'), notes),
  ].map((line, row) => ({ ...line, id: `line-${row + 1}` }))
  const points = sources
    .flatMap((source) => childrenOf(source, 'DataPoints'))
    .flatMap((list) => pointsOf(list, named, notes))
  return { points, lines, boundary: boundaryOf(groups('Boundaries', 'Boundary'), named, notes), notes }
}

function linesOf(elements: readonly XmlValue[], named: NamedPoints, notes: string[]): Line[] {
  let unread = 0
  let walls = 0
  const lines = elements.flatMap((element): Line[] => {
    const vertices = placesOf(element, named)
    if (vertices === undefined || vertices.length < 2) {
      unread++
      return []
    }
    const name = attributeOf(element, 'name') ?? attributeOf(element, 'desc') ?? ''
    const type = attributeOf(element, 'brkType') ?? ''
    if (namesWall(name) || namesWall(type)) walls++
    return [
      {
        id: '',
        kind: lineKind(name),
        ...(name && { name: name.slice(0, LONGEST_NAME) }),
        vertices: [...vertices],
      },
    ]
  })
  if (unread > 0) notes.push(`left out, breaklines without two readable points: ${unread}.`)
  if (walls > 0)
    notes.push(
      `breaklines called walls that give one level along the line, read as edges: ${walls}. Draw the wall with the level of each side where it matters.`,
    )
  return lines
}

/** A contour is a line of one level. */
function contoursOf(elements: readonly XmlValue[], notes: string[]): Line[] {
  let unread = 0
  const lines = elements.flatMap((element): Line[] => {
    const elev = numberOf(attributeOf(element, 'elev') ?? '')
    const vertices = (placesOf(element, new Map()) ?? []).flatMap((at) => {
      const levelM = elev ?? at.levelM
      return levelM === undefined ? [] : [{ ...at, levelM }]
    })
    const [first] = vertices
    if (first === undefined || vertices.length < 2) {
      unread++
      return []
    }
    return [{ id: '', kind: 'edge', name: `contour ${first.levelM}`, vertices }]
  })
  if (unread > 0) notes.push(`left out, contours without a level or two readable points: ${unread}.`)
  return lines
}

function pointsOf(list: XmlValue, named: NamedPoints, notes: string[]): Point[] {
  const places = placesOf(list, named)
  if (places === undefined) {
    notes.push('left out, a list of measured points that holds something other than numbers.')
    return []
  }
  const code = (attributeOf(list, 'code') ?? attributeOf(list, 'name'))?.slice(0, LONGEST_NAME)
  const points = places.flatMap((place): Point[] =>
    place.levelM === undefined ? [] : [{ ...place, levelM: place.levelM, ...(code && { code }) }],
  )
  if (points.length < places.length)
    notes.push(`left out, measured points without a level: ${places.length - points.length}.`)
  return points
}

/** The outer boundary; parts that are no ground inside it are told, for the person to draw. */
function boundaryOf(
  elements: readonly XmlValue[],
  named: NamedPoints,
  notes: string[],
): PlanRing | undefined {
  const kindOf = (element: XmlValue) => (attributeOf(element, 'bndType') ?? 'outer').toLowerCase()
  const rings = elements.map((element) => ({ kind: kindOf(element), ring: placesOf(element, named) ?? [] }))
  const unread = rings.filter(({ ring }) => ring.length < 3).length
  if (unread > 0) notes.push(`left out, boundaries without three readable points: ${unread}.`)
  const whole = rings.filter(({ ring }) => ring.length >= 3)
  const outer = whole.filter(({ kind }) => kind === 'outer')
  if (outer.length > 1) notes.push(`of ${outer.length} outer boundaries the first is taken.`)
  const others = whole.length - outer.length
  if (others > 0)
    notes.push(
      `not read, inner boundaries (parts that are hidden or no ground): ${others}. Draw them as holes of the plot.`,
    )
  return outer[0] && opened(outer[0].ring)
}

/** A ring without its first corner repeated at the end. */
function opened(ring: readonly ReadPlace[]): PlanRing {
  const corners = ring.map(({ eastM, northM }) => ({ eastM, northM }))
  const [first, last] = [corners[0], corners.at(-1)]
  const closed = first && last && first.eastM === last.eastM && first.northM === last.northM
  return closed && corners.length > 3 ? corners.slice(0, -1) : corners
}

/** Places of an element: lists of two or three numbers a place, or points given by name. */
function placesOf(element: XmlValue, named: NamedPoints): readonly ReadPlace[] | undefined {
  const lists = [
    ...childrenOf(element, 'PntList3D').map((list) => placesInList(list, 3)),
    ...childrenOf(element, 'PntList2D').map((list) => placesInList(list, 2)),
    ...['PntRef', 'P', 'CgPoint']
      .flatMap((tag) => childrenOf(element, tag))
      .map((one) => placeOf(one, named)),
  ]
  const places: ReadPlace[] = []
  for (const list of lists) {
    if (list === undefined) return undefined
    for (const place of list) places.push(place)
  }
  return places
}

function placesInList(list: XmlValue, size: 2 | 3): readonly ReadPlace[] | undefined {
  const numbers = numbersIn(textOf(list))
  if (numbers === undefined || numbers.length % size !== 0) return undefined
  return Array.from({ length: numbers.length / size }, (_, at) => placeAt(numbers, at * size, size))
}

function placeAt(numbers: readonly number[], from: number, size: 2 | 3): ReadPlace {
  const [northM = 0, eastM = 0, levelM] = numbers.slice(from, from + size)
  return levelM === undefined ? { eastM, northM } : { eastM, northM, levelM }
}

function placeOf(element: XmlValue, named: NamedPoints): readonly ReadPlace[] | undefined {
  const reference = attributeOf(element, 'pntRef')
  const found = reference === undefined ? undefined : named.get(reference)
  if (found) return [found]
  const numbers = numbersIn(textOf(element)) ?? []
  return numbers.length === 2 || numbers.length === 3 ? [placeAt(numbers, 0, numbers.length)] : undefined
}
