import { isCodeWord, isLevelWord, isMarkWord } from '#io'
import { lineKind } from './line-kind'
import type { Place, Shape } from './geojson-shapes'
import type { SurveyPart } from './survey-read.types'

type Points = SurveyPart['points']
type Lines = SurveyPart['breaklines']

/** Letters kept of a mark, a code or a name. */
const LONGEST_WORD = 60

/**
 * Points with levels: the third coordinate, or a property where that is missing or always zero.
 *
 * @param shapes - of the file
 * @returns points and what was left out
 */
export function pointsOf(shapes: readonly Shape[]): { points: Points; notes: string[] } {
  const spots = shapes.filter(({ kind }) => kind === 'point')
  const byProperty = levelsByProperty(spots)
  const points = spots.flatMap(({ places, properties }): Points => {
    const [place] = places
    const levelM = byProperty ? levelOf(properties) : place?.[2]
    if (!place || levelM === undefined) return []
    const mark = wordOf(properties, isMarkWord)
    const code = wordOf(properties, isCodeWord)
    return [
      { ...(mark ? { mark } : {}), ...(code ? { code } : {}), eastM: place[0], northM: place[1], levelM },
    ]
  })
  const left = spots.length - points.length
  return {
    points,
    notes: [
      ...(byProperty && points.length > 0 ? ['Levels were read from a property of the points.'] : []),
      ...(left > 0 ? [`Points without a level were left out: ${left}.`] : []),
    ],
  }
}

/** Whether the properties tell levels that the third coordinates do not. */
function levelsByProperty(spots: readonly Shape[]): boolean {
  const third = spots.some(({ places }) => (places[0]?.[2] ?? 0) !== 0)
  return !third && spots.some(({ properties }) => levelOf(properties) !== undefined)
}

function levelOf(properties: Shape['properties']): number | undefined {
  for (const [name, value] of properties) {
    if (!isLevelWord(name)) continue
    const level = typeof value === 'string' && value.trim() !== '' ? Number(value) : value
    if (typeof level === 'number' && Number.isFinite(level)) return level
  }
  return undefined
}

function wordOf(properties: Shape['properties'], wanted: (name: string) => boolean): string {
  for (const [name, value] of properties) {
    if (!wanted(name)) continue
    if (typeof value === 'string' || typeof value === 'number') return String(value).slice(0, LONGEST_WORD)
  }
  return ''
}

/**
 * Lines as breaklines; a line whose level is a property has it all along, as a contour does.
 *
 * @param shapes - of the file
 * @returns breaklines, and their corners that have a level as points
 */
export function linesOf(shapes: readonly Shape[]): { breaklines: Lines; points: Points; notes: string[] } {
  const drawn = shapes.filter(({ kind, places }) => kind === 'line' && places.length >= 2)
  const levelled = drawn.map((shape) => ({ ...shape, places: withLevels(shape) }))
  const breaklines = levelled.map(({ places, properties }, at): Lines[number] => {
    const name = lineName(properties)
    return {
      id: `line-${at + 1}`,
      kind: lineKind(name),
      ...(name === '' ? {} : { name }),
      vertices: places.map(([eastM, northM, levelM]) => ({
        eastM,
        northM,
        ...(levelM === undefined ? {} : { levelM }),
      })),
    }
  })
  const points = levelled.flatMap(({ places }) =>
    places.flatMap(([eastM, northM, levelM]): Points =>
      levelM === undefined ? [] : [{ eastM, northM, levelM }],
    ),
  )
  return {
    breaklines,
    points,
    notes:
      breaklines.length > 0 ? [`${breaklines.length} lines are taken as lines where the ground bends.`] : [],
  }
}

const lineName = (properties: Shape['properties']): string =>
  wordOf(properties, (name) => /^(name|kind|type|layer|code|desc(ription)?|feature)$/i.test(name))

function withLevels({ places, properties }: Shape): readonly Place[] {
  const level = levelOf(properties)
  const own = places.some(([, , third]) => third !== undefined && third !== 0)
  return own || level === undefined ? places : places.map(([east, north]): Place => [east, north, level])
}

/**
 * The largest polygon as the boundary.
 *
 * @param shapes - of the file
 * @returns the ring, its first corner not repeated; undefined when there is none
 */
export function ringsOf(shapes: readonly Shape[]): { boundary: SurveyPart['boundary']; notes: string[] } {
  const rings = shapes
    .filter(({ kind }) => kind === 'ring')
    .map(({ places }) => opened(places))
    .filter((ring) => ring.length >= 3)
  const [largest] = [...rings].sort((one, other) => areaOf(other) - areaOf(one))
  if (!largest) return { boundary: undefined, notes: [] }
  const holes = shapes.filter(({ kind }) => kind === 'hole').length
  return {
    boundary: largest.map(([eastM, northM]) => ({ eastM, northM })),
    notes: [
      rings.length > 1
        ? `The largest of ${rings.length} polygons is taken as the boundary; the others were left out.`
        : 'The polygon is taken as the boundary.',
      ...(holes > 0
        ? [`Holes of polygons were left out, ${holes} of them; draw them again under “Outline and holes”.`]
        : []),
    ],
  }
}

/** A ring of GeoJSON ends where it began; ours does not. */
function opened(places: readonly Place[]): readonly Place[] {
  const [first] = places
  const last = places.at(-1)
  const closes = places.length > 1 && first?.[0] === last?.[0] && first?.[1] === last?.[1]
  return closes ? places.slice(0, -1) : places
}

function areaOf(ring: readonly Place[]): number {
  const twice = ring.reduce((sum, [x, y], at) => {
    const [nextX, nextY] = ring[(at + 1) % ring.length] ?? [0, 0]
    return sum + x * nextY - nextX * y
  }, 0)
  return Math.abs(twice) / 2
}
