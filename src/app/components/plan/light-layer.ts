import L from 'leaflet'
import type { GridFrame } from '#core/geometry'
import { lightPixels, type LitCells } from '../../drawing/light-pixels'
import { onMap } from './map-places'

/** Light and shade on the plan: a canvas of one pixel a cell, scaled with the map and painted anew in place. */
export class LightLayer extends L.Layer {
  private canvas: HTMLCanvasElement | undefined

  private lit: LitCells

  constructor(lit: LitCells) {
    super()
    this.lit = lit
  }

  override onAdd(map: L.Map): this {
    this.canvas = L.DomUtil.create(
      'canvas',
      'map-picture map-light leaflet-zoom-hide',
      map.getPane('tilePane'),
    )
    this.canvas.setAttribute('aria-hidden', 'true')
    map.on('zoomend viewreset', this.place)
    this.show(this.lit)
    return this
  }

  override onRemove(map: L.Map): this {
    map.off('zoomend viewreset', this.place)
    this.canvas?.remove()
    this.canvas = undefined
    return this
  }

  /** Paints another moment. */
  show(lit: LitCells): void {
    this.lit = lit
    if (!this.canvas) return
    const { columns, rows } = lit.frame
    if (this.canvas.width !== columns || this.canvas.height !== rows) {
      this.canvas.width = columns
      this.canvas.height = rows
    }
    const context = this.canvas.getContext('2d')
    if (context) lightPixels(lit, context)
    this.place()
  }

  private readonly place = (): void => {
    const map = this._map as L.Map | undefined
    if (!map || !this.canvas) return
    const { topLeft, bottomRight } = corners(this.lit.frame)
    const corner = map.latLngToLayerPoint(onMap(topLeft))
    const size = map.latLngToLayerPoint(onMap(bottomRight)).subtract(corner)
    const { columns, rows } = this.lit.frame
    this.canvas.style.transform = `matrix(${size.x / columns}, 0, 0, ${size.y / rows}, ${corner.x}, ${corner.y})`
  }
}

function corners({ westM, southM, columns, rows, cellM }: GridFrame) {
  return {
    topLeft: { eastM: westM, northM: southM + rows * cellM },
    bottomRight: { eastM: westM + columns * cellM, northM: southM },
  }
}
