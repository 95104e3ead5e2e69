import type { DxfLayer, DxfLine, DxfPoint } from './dxf-layers'
import type { DxfPlace } from './dxf-places'
import { lineKind, namesWall } from './line-kind'
import type { Doubt, SurveyPart } from './survey-read.types'

/** Longest name of a line that a plan keeps [letters]. */
const LONGEST_NAME = 60

export interface LayerParts {
  readonly parts: readonly SurveyPart[]
  readonly notes: readonly string[]
  readonly doubts: readonly Doubt[]
}

/**
 * What of a layer may be ground: its points, blocks, level texts, lines and faces, each a part by itself.
 *
 * @param layer - as gathered
 * @returns the parts, and what is told and asked about them
 */
export function layerParts(layer: DxfLayer): LayerParts {
  const lines = linePart(layer)
  const parts = [
    pointPart('points', `${layer.name}: points`, layer.points),
    pointPart('blocks', `${layer.name}: levels of blocks`, layer.blocks),
    pointPart('texts', `${layer.name}: levels written as text`, layer.texts),
    lines.part,
    facePart(layer),
  ].flatMap((part) => (part ? [{ ...part, id: `${part.id}:${layer.name}` }] : []))
  const notes = [...noteHidden(layer), ...notesOf(layer), ...lines.notes]
  return { parts, notes, doubts: [...doubtsOf(layer), ...lines.doubts] }
}

function pointPart(id: string, name: string, points: readonly DxfPoint[]): SurveyPart | undefined {
  if (points.length === 0) return undefined
  return { ...nothing, id, name, kind: 'points', points: [...points] }
}

const nothing = { points: [], faces: [], breaklines: [], boundary: undefined, grid: undefined }

function facePart(layer: DxfLayer): SurveyPart | undefined {
  if (layer.faces.length === 0) return undefined
  return {
    ...nothing,
    id: 'faces',
    name: `${layer.name}: faces`,
    kind: 'surface',
    points: [...layer.corners],
    faces: layer.faces.map(([a, b, c]): [number, number, number] => [a, b, c]),
  }
}

/** Lines with their corners as points; a layer drawn flat at 0 gives lines without levels. */
function linePart(layer: DxfLayer): LayerParts & { readonly part: SurveyPart | undefined } {
  if (layer.lines.length === 0) return { part: undefined, parts: [], notes: [], doubts: [] }
  const flat = layer.lines.every(({ corners }) => corners.every(({ levelM }) => levelM === 0))
  const part: SurveyPart = {
    ...nothing,
    id: 'lines',
    name: `${layer.name}: lines`,
    kind: 'points',
    points: flat ? [] : distinct(layer.lines),
    breaklines: layer.lines.map((line, row) => breakline(line, row, { name: layer.name, flat })),
    boundary: boundaryOf(layer),
  }
  const notes = namesWall(layer.name)
    ? [
        `Layer "${layer.name}" is called a wall, but its lines have one level along them: they are read as edges.`,
      ]
    : []
  return { part, parts: [], notes, doubts: flat ? [flatDoubt(layer)] : [] }
}

function breakline(
  line: DxfLine,
  row: number,
  { name, flat }: { name: string; flat: boolean },
): SurveyPart['breaklines'][number] {
  const [first] = line.corners
  const corners = line.closed && first ? [...line.corners, first] : line.corners
  const vertices = corners.map(({ eastM, northM, levelM }) =>
    flat ? { eastM, northM } : { eastM, northM, levelM },
  )
  return { id: `line-${row + 1}`, kind: lineKind(name), name: name.slice(0, LONGEST_NAME), vertices }
}

function distinct(lines: readonly DxfLine[]): DxfPlace[] {
  const places = new Map<string, DxfPlace>()
  for (const { corners } of lines)
    for (const corner of corners) {
      const key = `${corner.eastM} ${corner.northM} ${corner.levelM}`
      if (!places.has(key)) places.set(key, corner)
    }
  return [...places.values()]
}

/** The one closed line of a layer whose name says boundary. */
function boundaryOf({ name, lines }: DxfLayer): SurveyPart['boundary'] {
  const [only] = lines
  if (lines.length !== 1 || !only?.closed || only.corners.length < 3) return undefined
  if (!/boundary|outline|perimeter/i.test(name)) return undefined
  return only.corners.map(({ eastM, northM }) => ({ eastM, northM }))
}

function notesOf(layer: DxfLayer): string[] {
  const of = (what: Parameters<typeof layer.counts.get>[0]) => layer.counts.get(what) ?? 0
  const said: readonly (readonly [number, string])[] = [
    [of('unreadable'), 'left out, entities whose coordinates cannot be read'],
    [of('other text'), 'left out, texts that are no level'],
    [of('block without level'), 'left out, blocks without a level'],
    [of('bulge'), 'read as straight from corner to corner, polylines with arcs'],
    [of('flat face'), 'left out, faces with fewer than three corners apart'],
    [of('level from attribute'), 'given the level that their attribute states, blocks drawn at 0'],
  ]
  return said
    .filter(([count]) => count > 0)
    .map(([count, what]) => `Layer "${layer.name}": ${what}: ${count}.`)
}

function doubtsOf(layer: DxfLayer): Doubt[] {
  const doubts: Doubt[] = []
  const differs = layer.counts.get('attribute differs') ?? 0
  if (differs > 0)
    doubts.push({
      about: 'levels',
      where: `layer ${layer.name}`,
      what: `${differs} blocks state a level in their attribute that is not the one they are drawn at; the drawn one is taken.`,
      mend: 'Compare some of them with the drawing before using this layer.',
    })
  if (layer.texts.length > 0) doubts.push(textDoubt(layer))
  return doubts
}

function textDoubt(layer: DxfLayer): Doubt {
  const whole = layer.counts.get('whole number') ?? 0
  const numbers =
    whole === layer.texts.length ? ' All are whole numbers and may be point numbers instead.' : ''
  return {
    about: 'levels',
    where: `layer ${layer.name}`,
    what: `${layer.texts.length} texts are numbers, read as levels where each text stands, which may be beside its point.${numbers}`,
    mend: 'Use them only if these numbers are levels and no layer of points has them.',
  }
}

const noteHidden = (layer: DxfLayer) =>
  layer.hidden ? [`Layer "${layer.name}" is switched off or frozen in the drawing, but read.`] : []

const flatDoubt = (layer: DxfLayer): Doubt => ({
  about: 'levels',
  where: `layer ${layer.name}`,
  what: 'All its lines are drawn at level 0, as in a flat drawing: they are read as lines without levels.',
  mend: 'Take them together with points that have levels, or leave them out.',
})
