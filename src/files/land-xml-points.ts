import type { NamedPoints } from './land-xml-source'
import type { SurveyPart } from './survey-read.types'
import { numbersIn } from './written-numbers'
import { attributeOf, childrenOf, textOf, type XmlValue } from './xml-tree'

type Point = SurveyPart['points'][number]

/** A group of survey points. */
export interface PointGroup {
  readonly name: string
  readonly points: readonly Point[]
  readonly notes: readonly string[]
}

/** Survey points of a file: its groups, and every point by name. */
export interface SurveyPoints {
  readonly groups: readonly PointGroup[]
  readonly named: NamedPoints
}

interface Named {
  readonly eastM: number
  readonly northM: number
  readonly levelM?: number
}

/** Longest name of a group that is kept [letters]. */
const LONGEST_GROUP = 200
/** Longest mark or code that a plan keeps [letters]. */
const LONGEST_NAME = 60

/**
 * Reads the survey points (CgPoints) of a LandXML file.
 *
 * @param root - its LandXML element
 * @returns the groups that hold levels, and all points by name
 */
export function surveyPoints(root: XmlValue): SurveyPoints {
  const lists = [root, ...childrenOf(root, 'Survey')].flatMap((parent) => childrenOf(parent, 'CgPoints'))
  const named = new Map<string, Named>()
  for (const list of lists)
    for (const element of childrenOf(list, 'CgPoint')) {
      const name = attributeOf(element, 'name') ?? attributeOf(element, 'oID')
      const place = placeOf(element)
      if (name !== undefined && place && !named.has(name)) named.set(name, place)
    }
  return { groups: lists.map((list, row) => groupOf(list, row, named)), named }
}

function groupOf(list: XmlValue, row: number, named: NamedPoints): PointGroup {
  const elements = childrenOf(list, 'CgPoint')
  const read = elements.map((element) => ({ element, place: placeOf(element) ?? referred(element, named) }))
  const placed = read.flatMap(({ element, place }) => (place ? [pointOf(element, place)] : []))
  const levelled = placed.filter((point) => point.levelM !== undefined)
  const raised = levelled.filter((point) => point.levelM !== 0)
  // Where every level is zero the person is asked; else zero stands for "not measured".
  const kept = raised.length > 0 ? raised : levelled
  const unnamed = row > 0 ? `Survey points ${row + 1}` : 'Survey points'
  const name = attributeOf(list, 'name') ?? attributeOf(list, 'desc') ?? unnamed
  const said: readonly (readonly [number, string])[] = [
    [elements.length - placed.length, 'left out, survey points without a readable place'],
    [placed.length - levelled.length, 'left out, survey points without a level'],
    [levelled.length - kept.length, 'left out, survey points with a level of exactly 0, which are no ground'],
  ]
  return {
    name: name.slice(0, LONGEST_GROUP),
    points: kept.map((point) => ({ ...point, levelM: point.levelM ?? 0 })),
    notes: said.filter(([count]) => count > 0).map(([count, what]) => `${what}: ${count}.`),
  }
}

/** LandXML writes the northing first, then the easting, then perhaps the level. */
function placeOf(element: XmlValue): Named | undefined {
  const [northM, eastM, levelM, more] = numbersIn(textOf(element)) ?? []
  if (northM === undefined || eastM === undefined || more !== undefined) return undefined
  return levelM === undefined ? { eastM, northM } : { eastM, northM, levelM }
}

const referred = (element: XmlValue, named: NamedPoints) => named.get(attributeOf(element, 'pntRef') ?? '')

function pointOf(element: XmlValue, place: Named) {
  const mark = attributeOf(element, 'name') ?? attributeOf(element, 'oID') ?? attributeOf(element, 'pntRef')
  const code = attributeOf(element, 'code') ?? attributeOf(element, 'desc')
  return {
    ...(mark && { mark: mark.slice(0, LONGEST_NAME) }),
    ...(code && { code: code.slice(0, LONGEST_NAME) }),
    ...place,
  }
}
