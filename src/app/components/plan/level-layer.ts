import L from 'leaflet'
import type { LevelPoint } from '#core/geometry'
import { onMap } from './map-places'

/** Half a cross [px], and the room that a figure takes [px]. */
const ARM_PX = 3
const ROOM = { widthPx: 46, heightPx: 14, gapPx: 6 } as const
/** Figures are written from this scale on [px for a metre]. */
const FIGURES_FROM_PX = 12
/** Levels drawn outside the window, so that a short drag shows no gap [share of it]. */
const PADDING = 0.2

/** Spot levels as crosses with their figure, on one canvas, so that thousands of them stay quick. */
export class LevelLayer extends L.Layer {
  private canvas: HTMLCanvasElement | undefined
  private theme: MutationObserver | undefined
  private points: readonly LevelPoint[]

  constructor(points: readonly LevelPoint[]) {
    super()
    this.points = points
  }

  override onAdd(map: L.Map): this {
    this.canvas = L.DomUtil.create('canvas', 'map-levels leaflet-zoom-hide', map.getPane('levels'))
    this.canvas.setAttribute('aria-hidden', 'true')
    map.on('moveend zoomend viewreset resize', this.draw)
    this.theme = new MutationObserver(this.draw)
    this.theme.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] })
    this.draw()
    return this
  }

  override onRemove(map: L.Map): this {
    map.off('moveend zoomend viewreset resize', this.draw)
    this.theme?.disconnect()
    this.canvas?.remove()
    this.canvas = undefined
    return this
  }

  /** Other levels in place of those drawn. */
  show(points: readonly LevelPoint[]): void {
    this.points = points
    this.draw()
  }

  private readonly draw = (): void => {
    const map = this._map as L.Map | undefined
    const pen = this.canvas?.getContext('2d')
    if (!map || !this.canvas || !pen) return
    const size = map.getSize().multiplyBy(1 + 2 * PADDING)
    const corner = map.containerPointToLayerPoint(map.getSize().multiplyBy(-PADDING)).round()
    const sharp = devicePixelRatio
    this.canvas.width = size.x * sharp
    this.canvas.height = size.y * sharp
    this.canvas.style.width = `${size.x}px`
    this.canvas.style.height = `${size.y}px`
    L.DomUtil.setPosition(this.canvas, corner)
    pen.setTransform(sharp, 0, 0, sharp, -corner.x * sharp, -corner.y * sharp)
    const drawn = this.points.filter((point) => {
      const at = map.latLngToLayerPoint(onMap(point)).subtract(corner)
      return at.x >= 0 && at.y >= 0 && at.x <= size.x && at.y <= size.y
    })
    crosses(map, pen, drawn)
    if (map.getZoomScale(map.getZoom(), 0) >= FIGURES_FROM_PX) figures(map, pen, drawn)
  }
}

function crosses(map: L.Map, pen: CanvasRenderingContext2D, drawn: readonly LevelPoint[]): void {
  const style = getComputedStyle(map.getContainer())
  pen.strokeStyle = style.getPropertyValue('--ink')
  pen.fillStyle = style.getPropertyValue('--ink')
  pen.font = `500 11px ${style.getPropertyValue('--sans')}`
  pen.lineWidth = 1
  pen.beginPath()
  for (const point of drawn) {
    const { x, y } = map.latLngToLayerPoint(onMap(point))
    pen.moveTo(x - ARM_PX, y)
    pen.lineTo(x + ARM_PX, y)
    pen.moveTo(x, y - ARM_PX)
    pen.lineTo(x, y + ARM_PX)
  }
  pen.stroke()
}

/** Each figure where there is still room for it; the others are in the table. */
function figures(map: L.Map, pen: CanvasRenderingContext2D, drawn: readonly LevelPoint[]): void {
  const taken = new Set<string>()
  for (const point of drawn) {
    const { x, y } = map.latLngToLayerPoint(onMap(point))
    const [column, row] = [Math.floor(x / ROOM.widthPx), Math.floor(y / ROOM.heightPx)]
    const cells = [column, column + 1].flatMap((c) => [row, row + 1].map((r) => `${c},${r}`))
    if (cells.some((cell) => taken.has(cell))) continue
    for (const cell of cells) taken.add(cell)
    pen.fillText(point.levelM.toFixed(2), x + ROOM.gapPx, y - 2)
  }
}
