import { blockPoint } from './dxf-block'
import type { DxfEntity } from './dxf-entities'
import { addFace, count, type DxfLayer, type DxfLayers } from './dxf-layers'
import { flatCorners, placeOf, toDrawing, type DxfPlace } from './dxf-places'
import { gatherPolyline } from './dxf-polyline'
import { flagsOf, layerOf, valueOf, valuesOf, type DxfRecord } from './dxf-records'
import { levelInText, plainText } from './dxf-text'

/** Longest code or mark that a plan keeps [letters]. */
const LONGEST_NAME = 60

/** What is done with each kind of entity; others are counted and left. */
const readers = new Map<string, (entity: DxfEntity, layer: DxfLayer) => void>([
  ['POINT', gatherPoint],
  ['INSERT', gatherBlock],
  ['TEXT', gatherText],
  ['MTEXT', gatherText],
  ['LINE', gatherLine],
  ['LWPOLYLINE', gatherFlatPolyline],
  ['POLYLINE', gatherPolyline],
  ['3DFACE', gatherFace],
])

/** Puts an entity where it belongs on its layer, or counts it as not read. */
export function gather(entity: DxfEntity, layers: DxfLayers): void {
  const name = plainText(layerOf(entity.head)).slice(0, 255)
  const read = readers.get(entity.head.type)
  if (read) read(entity, layers.layer(name))
  else layers.ignore(entity.head.type, name)
}

function gatherPoint({ head }: DxfEntity, layer: DxfLayer): void {
  const place = placeOf(head, 10)
  if (place) layer.points.push({ code: layer.name.slice(0, LONGEST_NAME), ...place })
  else count(layer, 'unreadable')
}

function gatherBlock(entity: DxfEntity, layer: DxfLayer): void {
  const point = blockPoint(entity, layer)
  if (point === 'no level') count(layer, 'block without level')
  else if (point) layer.blocks.push(point)
  else count(layer, 'unreadable')
}

/** A text that is a number: a level where the text stands. */
function gatherText({ head }: DxfEntity, layer: DxfLayer): void {
  const written = [...valuesOf(head, 3), valueOf(head, 1) ?? ''].join('')
  const levelM = levelInText(written)
  if (levelM === undefined) {
    count(layer, 'other text')
    return
  }
  const place = textPlace(head)
  if (place === undefined) {
    count(layer, 'unreadable')
    return
  }
  if (!/\d[.,]\d/.test(written)) count(layer, 'whole number')
  const { eastM, northM } = place
  layer.texts.push({ code: layer.name.slice(0, LONGEST_NAME), eastM, northM, levelM })
}

/** An aligned text hangs on its second point; of the two kinds only the plain one has axes of its own. */
function textPlace(head: DxfRecord): DxfPlace | undefined {
  if (head.type !== 'TEXT') return placeOf(head, 10)
  const aligned = flagsOf(head, 72) !== 0 || flagsOf(head, 73) !== 0
  const place = (aligned ? placeOf(head, 11) : undefined) ?? placeOf(head, 10)
  return place && toDrawing(head)(place)
}

function gatherLine({ head }: DxfEntity, layer: DxfLayer): void {
  addLine(layer, [placeOf(head, 10), placeOf(head, 11)], false)
}

function gatherFlatPolyline({ head }: DxfEntity, layer: DxfLayer): void {
  if (valuesOf(head, 42).some((bulge) => Number(bulge) !== 0)) count(layer, 'bulge')
  const corners = flatCorners(head)?.map(toDrawing(head))
  addLine(layer, corners ?? [], flagsOf(head, 70) % 2 === 1)
}

function addLine(layer: DxfLayer, places: readonly (DxfPlace | undefined)[], closed: boolean): void {
  const corners = places.filter((place) => place !== undefined)
  if (corners.length < 2 || corners.length < places.length) count(layer, 'unreadable')
  else layer.lines.push({ corners, closed })
}

function gatherFace({ head }: DxfEntity, layer: DxfLayer): void {
  const three = [placeOf(head, 10), placeOf(head, 11), placeOf(head, 12)]
  const fourth = valueOf(head, 13) === undefined ? [] : [placeOf(head, 13)]
  const places = [...three, ...fourth]
  const corners = places.filter((place) => place !== undefined)
  if (corners.length < places.length) count(layer, 'unreadable')
  else addFace(layer, corners)
}
