import type { DxfEntity } from './dxf-entities'
import { addFace, count, type DxfLayer } from './dxf-layers'
import { placeOf, toDrawing, type DxfPlace } from './dxf-places'
import { flagsOf, valueOf, type DxfRecord } from './dxf-records'

/** Flags of a polyline (group code 70), by the DXF reference. */
const CLOSED = 1
const IN_SPACE = 8
const MESH = 16
const POLYFACE = 64

/** Flags of a vertex (group code 70). */
const SPLINE_FRAME = 16
const FACE = 128
const FACE_CORNER = 64

/** Puts an old-style polyline on its layer: a line flat or in space, a mesh, or a set of faces. */
export function gatherPolyline(entity: DxfEntity, layer: DxfLayer): void {
  const flags = flagsOf(entity.head, 70)
  if (flags & POLYFACE) gatherPolyface(entity, layer)
  else if (flags & MESH) gatherMesh(entity, layer)
  else gatherVertices(entity, layer, flags)
}

function gatherVertices({ head, children }: DxfEntity, layer: DxfLayer, flags: number): void {
  const vertices = children.filter((vertex) => !(flagsOf(vertex, 70) & SPLINE_FRAME))
  const places = placesOf(vertices)
  if (places === undefined || places.length < 2) {
    count(layer, 'unreadable')
    return
  }
  if (vertices.some((vertex) => Number(valueOf(vertex, 42) ?? 0) !== 0)) count(layer, 'bulge')
  const closed = (flags & CLOSED) !== 0
  if (flags & IN_SPACE) {
    layer.lines.push({ corners: places, closed })
    return
  }
  const level = placeOf(head, 10)?.levelM ?? 0
  const turned = toDrawing(head)
  const corners = places.map((place) => turned({ ...place, levelM: level === 0 ? place.levelM : level }))
  layer.lines.push({ corners, closed })
}

/** Corners first, then faces that name up to four of them from 1 on, negative where a side is not drawn. */
function gatherPolyface({ children }: DxfEntity, layer: DxfLayer): void {
  const isFace = (vertex: DxfRecord) => {
    const flags = flagsOf(vertex, 70)
    return (flags & FACE) !== 0 && (flags & FACE_CORNER) === 0
  }
  const corners = placesOf(children.filter((vertex) => !isFace(vertex)))
  if (corners === undefined) {
    count(layer, 'unreadable')
    return
  }
  for (const face of children.filter(isFace)) {
    const named = [71, 72, 73, 74].map((code) => Math.abs(flagsOf(face, code))).filter((row) => row > 0)
    const found = named.flatMap((row) => corners[row - 1] ?? [])
    if (found.length < named.length) count(layer, 'unreadable')
    else addFace(layer, found)
  }
}

/** Rows of corners with a four-sided face between each four neighbours. */
function gatherMesh({ head, children }: DxfEntity, layer: DxfLayer): void {
  const rows = flagsOf(head, 71)
  const columns = flagsOf(head, 72)
  const vertices = children.filter((vertex) => !(flagsOf(vertex, 70) & SPLINE_FRAME))
  const corners = placesOf(vertices)
  if (corners === undefined || rows < 2 || columns < 2 || corners.length !== rows * columns) {
    count(layer, 'unreadable')
    return
  }
  for (let row = 0; row + 1 < rows; row++)
    for (let column = 0; column + 1 < columns; column++) {
      const at = row * columns + column
      const four = [at, at + 1, at + columns + 1, at + columns]
      addFace(
        layer,
        four.flatMap((one) => corners[one] ?? []),
      )
    }
}

function placesOf(vertices: readonly DxfRecord[]): DxfPlace[] | undefined {
  const places = vertices.flatMap((vertex) => placeOf(vertex, 10) ?? [])
  return places.length === vertices.length ? places : undefined
}
