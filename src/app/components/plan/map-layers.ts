import L from 'leaflet'
import { pointInRing, type PlanPoint, type Ring } from '#core/geometry'
import type { PlanView } from '#report'

/** A place of the plot on the map: metres north are its latitude, metres east its longitude. */
export const onMap = ({ eastM, northM }: PlanPoint): L.LatLng => L.latLng(northM, eastM)

/** A place of the map in the plot, to the centimetre. */
export function inPlot({ lat, lng }: L.LatLng): PlanPoint {
  return { eastM: Math.round(lng * 100) / 100, northM: Math.round(lat * 100) / 100 }
}

const ringOnMap = (ring: Ring): L.LatLng[] => ring.map(onMap)

/** What the layers tell back. */
export interface LayerEvents {
  readonly pick: (zoneId: string) => void
}

/** Everything of the plan that is drawn under the editing marks. */
export function planLayers(
  view: PlanView,
  pickedZone: string | undefined,
  events: LayerEvents,
): L.LayerGroup {
  return L.layerGroup([
    L.polygon(ringOnMap(view.boundary), { className: 'map-boundary', interactive: false }),
    ...contourLayers(view),
    ...zoneLayers(view, pickedZone, events),
    ...obstacleLayers(view),
    ...sectionLayers(view),
  ])
}

function contourLayers({ contours, boundary }: PlanView): L.Layer[] {
  return contours.flatMap((line) =>
    line.rings
      .flatMap((ring) => runsInside(ring, boundary))
      .map((run) =>
        L.polyline(ringOnMap(run), {
          className: line.main ? 'map-contour main' : 'map-contour',
          interactive: false,
        }),
      ),
  )
}

/** The stretches of a line that lie on the plot. */
function runsInside(line: Ring, boundary: Ring): PlanPoint[][] {
  const runs = line.reduce<PlanPoint[][]>(
    (sofar, place) => {
      if (pointInRing(place, boundary)) sofar.at(-1)?.push(place)
      else if ((sofar.at(-1)?.length ?? 0) > 0) sofar.push([])
      return sofar
    },
    [[]],
  )
  return runs.filter((run) => run.length > 1)
}

function zoneLayers({ zones }: PlanView, pickedZone: string | undefined, { pick }: LayerEvents): L.Layer[] {
  return zones.flatMap((zone) => {
    const picked = zone.id === pickedZone
    const outline = L.polygon(ringOnMap(zone.ring), {
      className: picked ? 'map-zone picked' : 'map-zone',
      bubblingMouseEvents: true,
    }).on('click', () => pick(zone.id))
    const label = L.marker(outline.getBounds().getCenter(), {
      icon: L.divIcon({
        className: picked ? 'map-letter picked' : 'map-letter',
        html: zone.letter,
        iconSize: [26, 26],
      }),
      title: `Zone ${zone.letter}`,
      alt: `Zone ${zone.letter}`,
    }).on('click', () => pick(zone.id))
    return [outline, label]
  })
}

function obstacleLayers({ obstacles }: PlanView): L.Layer[] {
  return obstacles.map((obstacle) => {
    const places = ringOnMap(obstacle.ring)
    const [first] = places
    const className = `map-thing ${obstacle.kind}`
    const layer =
      places.length === 1 && first
        ? L.circleMarker(first, { radius: 6, className })
        : places.length === 2
          ? L.polyline(places, { className })
          : L.polygon(places, { className })
    return layer.bindTooltip(obstacle.name)
  })
}

function sectionLayers({ section }: PlanView): L.Layer[] {
  const end = (place: PlanPoint, letter: string) =>
    L.marker(onMap(place), {
      icon: L.divIcon({ className: 'map-end', html: letter, iconSize: [22, 22] }),
      interactive: false,
      keyboard: false,
    })
  return [
    L.polyline([onMap(section.from), onMap(section.to)], { className: 'map-section', interactive: false }),
    end(section.from, 'A'),
    end(section.to, 'A′'),
  ]
}
