import type { Outcome } from '#core/units'
import { readDrawing, type Drawing } from './dxf-entities'
import { gather } from './dxf-gather'
import { DxfLayers } from './dxf-layers'
import { layerParts } from './dxf-parts'
import { dxfUnit } from './dxf-units'
import { fewEnough, partIds, withinCaps } from './part-caps'
import { refusal } from './refusal'
import type { SurveyRead } from './survey-read.types'
import { zeroLevelDoubt } from './zero-levels'

/** Longest file that is read [letters]. */
const MOST_LETTERS = 64 * 1024 * 1024
/** Kinds of entities left out that are named one by one; the rest is summed up. */
const MOST_NAMED = 20

/**
 * Reads a text DXF: points, blocks with levels, levels written as text, lines and faces, layer by layer.
 *
 * @param text - the file
 * @returns its parts in the drawing's own coordinates and unit, or why nothing can be read
 */
export function readDxf(text: string): Outcome<SurveyRead> {
  if (text.startsWith('AutoCAD Binary DXF'))
    return refusal('file', 'This is a binary DXF.', 'Save it as a text (ASCII) DXF.')
  if (text.length > MOST_LETTERS)
    return refusal(
      'file',
      'The drawing is longer than 64 million letters.',
      'Save only the layers of the ground.',
    )
  const drawing = readDrawing(text)
  return 'what' in drawing ? { ok: false, problems: [drawing] } : readEntities(drawing)
}

function readEntities(drawing: Drawing): Outcome<SurveyRead> {
  const layers = new DxfLayers(drawing.hiddenLayers)
  for (const entity of drawing.entities) gather(entity, layers)
  const { few, notes: cut } = fewEnough([...layers.all.values()], 'layers')
  const read = few.map(layerParts)
  const capped = read.flatMap(({ parts }) => parts).map(withinCaps)
  const parts = partIds(capped.flatMap(({ part }) => part ?? []))
  const notes = [
    ...cut,
    ...read.flatMap((one) => one.notes),
    ...capped.flatMap((one) => one.notes),
    ...notRead(layers.ignored, drawing.onPaper),
  ]
  if (parts.length === 0) return nothingUsable(notes)
  const { unit, doubts } = dxfUnit(drawing.unitCode)
  const zeros = parts.flatMap(
    (part) =>
      zeroLevelDoubt(
        part.name,
        part.points.map(({ levelM }) => levelM),
      ) ?? [],
  )
  const asked = [...doubts, ...read.flatMap((one) => one.doubts), ...zeros]
  return { ok: true, value: { format: 'dxf', parts, unit, crs: undefined, notes, doubts: asked } }
}

function notRead(ignored: ReadonlyMap<string, number>, onPaper: number): string[] {
  const kinds = [...ignored].map(([what, count]) => `Not read: ${count} ${what}.`)
  const rest = kinds.length - MOST_NAMED
  return [
    ...kinds.slice(0, MOST_NAMED),
    ...(rest > 0 ? [`Not read: ${rest} more kinds of entities.`] : []),
    ...(onPaper > 0 ? [`${onPaper} entities on sheets of paper (paper space) are left out.`] : []),
  ]
}

const nothingUsable = (notes: readonly string[]): Outcome<SurveyRead> => ({
  ok: false,
  problems: [
    {
      where: 'file',
      what: ['The drawing holds no points, lines, faces or level texts.', ...notes.slice(0, 8)].join(' '),
      mend: 'Save the ground as 3D faces, points or 3D polylines; objects of special programs must be taken apart first.',
    },
  ],
})
