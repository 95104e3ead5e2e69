import type { DxfPlace } from './dxf-places'
import type { SurveyPart } from './survey-read.types'

export type DxfPoint = SurveyPart['points'][number]

export interface DxfLine {
  readonly corners: readonly DxfPlace[]
  readonly closed: boolean
}

/** What one layer holds that may be ground. */
export interface DxfLayer {
  readonly name: string
  /** Whether the drawing shows it: switched off and frozen layers may hold old work. */
  readonly hidden: boolean
  readonly points: DxfPoint[]
  readonly blocks: DxfPoint[]
  readonly texts: DxfPoint[]
  readonly lines: DxfLine[]
  /** Corners of faces, each place once. */
  readonly corners: DxfPlace[]
  readonly cornerRow: Map<string, number>
  readonly faces: (readonly [number, number, number])[]
  /** Things that are told or asked, counted. */
  readonly counts: Map<DxfCount, number>
}

export type DxfCount =
  | 'unreadable'
  | 'other text'
  | 'bulge'
  | 'flat face'
  | 'level from attribute'
  | 'attribute differs'
  | 'block without level'
  | 'whole number'

/** The layers of a drawing; names that differ only in capitals are one layer. */
export class DxfLayers {
  private readonly hidden: ReadonlySet<string>
  readonly all = new Map<string, DxfLayer>()
  /** Entities that are not read, by type and layer. */
  readonly ignored = new Map<string, number>()

  /** Takes the names of hidden layers, in capitals. */
  constructor(hidden: ReadonlySet<string>) {
    this.hidden = hidden
  }

  layer(name: string): DxfLayer {
    const key = name.toUpperCase()
    const known = this.all.get(key)
    if (known) return known
    const layer: DxfLayer = {
      name,
      hidden: this.hidden.has(key),
      points: [],
      blocks: [],
      texts: [],
      lines: [],
      corners: [],
      cornerRow: new Map(),
      faces: [],
      counts: new Map(),
    }
    this.all.set(key, layer)
    return layer
  }

  ignore(type: string, layer: string): void {
    const key = `${type.slice(0, 40)} on layer "${layer}"`
    this.ignored.set(key, (this.ignored.get(key) ?? 0) + 1)
  }
}

export function count(layer: DxfLayer, what: DxfCount): void {
  layer.counts.set(what, (layer.counts.get(what) ?? 0) + 1)
}

/** Adds a face of three or more corners as triangles around its first; corners at one place are one. */
export function addFace(layer: DxfLayer, corners: readonly DxfPlace[]): void {
  const rows = [...new Set(corners.map((corner) => cornerRow(layer, corner)))]
  const [first] = rows
  if (first === undefined || rows.length < 3) {
    count(layer, 'flat face')
    return
  }
  for (let at = 1; at + 1 < rows.length; at++)
    layer.faces.push([first, rows[at] ?? first, rows[at + 1] ?? first])
}

function cornerRow(layer: DxfLayer, corner: DxfPlace): number {
  const key = `${corner.eastM} ${corner.northM} ${corner.levelM}`
  const known = layer.cornerRow.get(key)
  if (known !== undefined) return known
  layer.cornerRow.set(key, layer.corners.length)
  return layer.corners.push(corner) - 1
}
