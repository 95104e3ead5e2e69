import L from 'leaflet'
import type { PlanPoint, Ring } from '#core/geometry'
import { inPlot, onMap } from './map-layers'

const corner = (html: string, className: string) =>
  L.divIcon({ className: `map-corner ${className}`, html, iconSize: [16, 16] })

/**
 * Marks at the corners of an outline that can be dragged, with smaller ones halfway that make a new corner.
 *
 * @param ring - the outline
 * @param reshaped - told the new outline when a corner is let go
 */
export function cornerMarks(ring: Ring, reshaped: (ring: Ring) => void): L.LayerGroup {
  const corners = ring.map((place, at) =>
    mark(place, `Corner ${at + 1}`, '').on('dragend', ({ target }) =>
      reshaped(ring.map((each, index) => (index === at ? inPlot((target as L.Marker).getLatLng()) : each))),
    ),
  )
  const halfways = ring.map((place, at) => {
    const next = ring[(at + 1) % ring.length] ?? place
    const middle = { eastM: (place.eastM + next.eastM) / 2, northM: (place.northM + next.northM) / 2 }
    return mark(middle, `New corner after corner ${at + 1}`, 'halfway').on('dragend', ({ target }) =>
      reshaped([...ring.slice(0, at + 1), inPlot((target as L.Marker).getLatLng()), ...ring.slice(at + 1)]),
    )
  })
  return L.layerGroup([...corners, ...halfways])
}

const mark = (place: PlanPoint, title: string, className: string): L.Marker =>
  L.marker(onMap(place), { icon: corner('', className), draggable: true, title, alt: title })

/** Places put down so far while a line or an outline is drawn. */
export function drawnMarks(places: readonly PlanPoint[]): L.LayerGroup {
  const points = places.map((place) =>
    L.circleMarker(onMap(place), { radius: 5, className: 'map-drawn', interactive: false }),
  )
  const line = L.polyline(places.map(onMap), { className: 'map-drawn', interactive: false })
  return L.layerGroup(places.length > 1 ? [line, ...points] : points)
}
