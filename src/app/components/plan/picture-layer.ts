import L from 'leaflet'
import type { PlanPoint } from '#core/geometry'
import { onMap } from './map-places'

/** A picture with three of its corners on the plot, which scale and turn it exactly. */
export interface LaidPicture {
  readonly dataUrl: string
  readonly widthPx: number
  readonly heightPx: number
  readonly topLeft: PlanPoint
  readonly topRight: PlanPoint
  readonly bottomLeft: PlanPoint
  readonly shade: number
}

/** Draws a picture under everything else, scaled and turned. */
export class PictureLayer extends L.Layer {
  private image: HTMLImageElement | undefined

  private readonly picture: LaidPicture

  constructor(picture: LaidPicture) {
    super()
    this.picture = picture
  }

  override onAdd(map: L.Map): this {
    const { dataUrl, widthPx, heightPx, shade } = this.picture
    const image = L.DomUtil.create('img', 'map-picture leaflet-zoom-hide', map.getPane('tilePane'))
    image.src = dataUrl
    image.alt = ''
    image.width = widthPx
    image.height = heightPx
    image.style.opacity = String(shade)
    this.image = image
    map.on('zoomend viewreset', this.place)
    this.place()
    return this
  }

  override onRemove(map: L.Map): this {
    map.off('zoomend viewreset', this.place)
    this.image?.remove()
    this.image = undefined
    return this
  }

  private readonly place = (): void => {
    const map = this._map as L.Map | undefined
    if (!map || !this.image) return
    const { widthPx, heightPx, topLeft, topRight, bottomLeft } = this.picture
    const corner = map.latLngToLayerPoint(onMap(topLeft))
    const across = map.latLngToLayerPoint(onMap(topRight)).subtract(corner).divideBy(widthPx)
    const down = map.latLngToLayerPoint(onMap(bottomLeft)).subtract(corner).divideBy(heightPx)
    this.image.style.transform = `matrix(${across.x}, ${across.y}, ${down.x}, ${down.y}, ${corner.x}, ${corner.y})`
  }
}
