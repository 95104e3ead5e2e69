import type { Outcome } from '#core/units'
import { surveyPoints, type PointGroup } from './land-xml-points'
import { sourceData, type NamedPoints, type SourceData } from './land-xml-source'
import { surfaceFaces, type SurfaceFaces } from './land-xml-surface'
import { crsUnitDoubt, landXmlCrs } from './land-xml-crs'
import { landXmlUnits } from './land-xml-units'
import { fewEnough, partIds, withinCaps } from './part-caps'
import { refusal } from './refusal'
import type { Doubt, SurveyPart, SurveyRead } from './survey-read.types'
import { attributeOf, childrenOf, readXmlTree, type XmlValue } from './xml-tree'
import { zeroLevelDoubt } from './zero-levels'

/** Longest file that is taken apart [letters]: about ten times a surface of 50,000 points. */
const MOST_LETTERS = 64 * 1024 * 1024

/** Longest name of a surface that is kept [letters]. */
const LONGEST_NAME = 200

/** What else LandXML files hold that is no ground, with the element that holds one. */
const notGround: readonly (readonly [string, string, string])[] = [
  ['Alignments', 'Alignment', 'alignments'],
  ['Parcels', 'Parcel', 'parcels'],
  ['PlanFeatures', 'PlanFeature', 'plan features'],
  ['PipeNetworks', 'PipeNetwork', 'pipe networks'],
  ['Roadways', 'Roadway', 'roadways'],
  ['GradeModel', 'GradeSurface', 'grade surfaces'],
]

interface ReadPart {
  readonly part: SurveyPart | undefined
  readonly notes: readonly string[]
  readonly doubt: Doubt | undefined
}

/**
 * Reads a LandXML file: surfaces with their breaklines and boundary, and survey points.
 *
 * @param text - the file
 * @returns its parts in its own coordinates and unit, or why nothing can be read
 */
export function readLandXml(text: string): Outcome<SurveyRead> {
  if (text.length > MOST_LETTERS)
    return refusal('file', 'The file is longer than 64 million letters.', 'Export only the surface you need.')
  const tree = readXmlTree(text)
  if (!tree.ok) return tree
  const root = childrenOf(tree.value, 'LandXML')[0]
  if (root === undefined)
    return refusal('file', 'This is XML but not LandXML.', 'Export the survey as LandXML 1.x.')
  return readRoot(root)
}

function readRoot(root: XmlValue): Outcome<SurveyRead> {
  const points = surveyPoints(root)
  const surfaces = fewEnough(
    childrenOf(root, 'Surfaces').flatMap((list) => childrenOf(list, 'Surface')),
    'surfaces',
  )
  const groups = fewEnough(points.groups, 'groups of survey points')
  const read = [
    ...surfaces.few.map((surface, row) => surfacePart(surface, row, points.named)),
    ...groupParts(groups.few),
  ]
  const parts = partIds(read.flatMap(({ part }) => part ?? []))
  const notes = [...surfaces.notes, ...groups.notes, ...read.flatMap((one) => one.notes), ...leftOut(root)]
  if (parts.length === 0) return nothingUsable(notes)
  const { unit, levelUnit, doubts } = landXmlUnits(root)
  const crs = landXmlCrs(root)
  const asked = [...doubts, crsUnitDoubt(crs, unit), ...read.map(({ doubt }) => doubt)].filter(
    (doubt) => doubt !== undefined,
  )
  return {
    ok: true,
    value: { format: 'landxml', parts, unit, levelUnit, crs, notes, doubts: asked },
  }
}

function surfacePart(surface: XmlValue, row: number, named: NamedPoints): ReadPart {
  const written = attributeOf(surface, 'name') ?? attributeOf(surface, 'desc') ?? `Surface ${row + 1}`
  const name = written.slice(0, LONGEST_NAME)
  const drawn = childrenOf(surface, 'Definition').map((definition) => surfaceFaces(definition, named))
  const source = sourceData(surface, named)
  const notes = [...drawn.flatMap((one) => one.notes), ...source.notes].map(
    (note) => `Surface "${name}": ${note}`,
  )
  const ground = groundOf(drawn, source)
  if (ground.points.length === 0) {
    const empty = `Surface "${name}" holds no ground and is left out.`
    return { part: undefined, notes: [...notes, empty], doubt: undefined }
  }
  const { lines, boundary } = source
  const part = { id: `surface:${name}`, name, ...ground, breaklines: [...lines], boundary, grid: undefined }
  return capped(part, notes)
}

/** The faces of a surface; where it has none its points, and where it has none of those the corners of its lines. */
function groundOf(
  drawn: readonly SurfaceFaces[],
  source: SourceData,
): Pick<SurveyPart, 'kind' | 'points' | 'faces'> {
  const faced = drawn.find(({ faces }) => faces.length > 0)
  if (faced) return { kind: 'surface', points: [...faced.points], faces: [...faced.faces] }
  const defined = drawn.find(({ points }) => points.length > 0)?.points ?? []
  const lists = [defined, source.points, pointsOfLines(source.lines)]
  return { kind: 'points', points: [...(lists.find((list) => list.length > 0) ?? [])], faces: [] }
}

/** Where a surface is given by lines only, their corners are its points. */
const pointsOfLines = (lines: SourceData['lines']): SurveyPart['points'] =>
  lines.flatMap((line) =>
    line.kind === 'wall'
      ? []
      : line.vertices.flatMap(({ eastM, northM, levelM }) =>
          levelM === undefined ? [] : [{ eastM, northM, levelM }],
        ),
  )

function groupParts(groups: readonly PointGroup[]): ReadPart[] {
  return groups.map((group): ReadPart => {
    const notes = group.notes.map((note) => `${group.name}: ${note}`)
    if (group.points.length === 0) return { part: undefined, notes, doubt: undefined }
    return capped(
      {
        id: `points:${group.name}`,
        name: group.name,
        kind: 'points',
        points: group.points.slice(),
        faces: [],
        breaklines: [],
        boundary: undefined,
        grid: undefined,
      },
      notes,
    )
  })
}

function capped(part: SurveyPart, notes: readonly string[]): ReadPart {
  const within = withinCaps(part)
  const doubt =
    within.part &&
    zeroLevelDoubt(
      part.name,
      part.points.map(({ levelM }) => levelM),
    )
  return { part: within.part, notes: [...notes, ...within.notes], doubt }
}

function leftOut(root: XmlValue): string[] {
  return notGround.flatMap(([list, one, words]) => {
    const count = childrenOf(root, list).flatMap((parent) => childrenOf(parent, one)).length
    return count > 0 ? [`Not read: ${count} ${words}.`] : []
  })
}

const nothingUsable = (notes: readonly string[]): Outcome<SurveyRead> => ({
  ok: false,
  problems: [
    {
      where: 'file',
      what: ['The file holds no surface and no survey points with levels.', ...notes.slice(0, 8)].join(' '),
      mend: 'Export the surface itself (points and faces) or the points with their levels as LandXML 1.x.',
    },
  ],
})
