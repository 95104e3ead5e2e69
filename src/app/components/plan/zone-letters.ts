import L from 'leaflet'
import type { Ring } from '#core/geometry'
import type { PlanView } from '#report'
import { letterPlaces } from './letter-places'
import { metresOf, onMap } from './map-places'

/** What is picked, and who is told of the next. */
interface ZonePick {
  readonly picked: string | undefined
  readonly pick: ((zoneId: string) => void) | undefined
}

/** Side of a letter, and what two of them are apart at least [px]. */
const LETTER_PX = 26
const APART_PX = 30

/** Letters of the zones. They keep clear of one another at every zoom, and stay the same to the keyboard. */
export class ZoneLetters {
  private readonly rings: readonly Ring[]
  private readonly markers: readonly L.Marker[]
  private map: L.Map | undefined

  constructor(zones: PlanView['zones'], pick: ZonePick) {
    this.rings = zones.map(({ ring }) => ring)
    this.markers = zones.map((zone) => letterOf(zone, pick))
  }

  addTo(map: L.Map): this {
    this.map = map
    this.settle()
    for (const marker of this.markers) marker.addTo(map)
    map.on('zoomend', this.settle)
    return this
  }

  remove(): void {
    this.map?.off('zoomend', this.settle)
    for (const marker of this.markers) marker.remove()
  }

  private readonly settle = (): void => {
    if (!this.map) return
    const places = letterPlaces(this.rings, metresOf(this.map, APART_PX))
    for (const [at, place] of places.entries()) this.markers[at]?.setLatLng(onMap(place))
  }
}

function letterOf({ id, letter }: PlanView['zones'][number], { picked, pick }: ZonePick): L.Marker {
  const marker = L.marker([0, 0], {
    icon: L.divIcon({
      className: id === picked ? 'map-letter picked' : 'map-letter',
      html: letter,
      iconSize: [LETTER_PX, LETTER_PX],
    }),
    ...(pick ? { title: `Zone ${letter}`, alt: `Zone ${letter}` } : { interactive: false, keyboard: false }),
  })
  return pick ? marker.on('click', () => pick(id)) : marker
}
