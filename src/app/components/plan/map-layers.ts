import L from 'leaflet'
import { pointInRing, type PlanPoint, type Ring } from '#core/geometry'
import { isOutline, type PlanMarked, type PlanView } from '#report'
import { lineOnMap, onMap } from './map-places'

/** What can be shown on the plan or left off it. */
export const mapLayers = [
  { id: 'contours', name: 'contours' },
  { id: 'levels', name: 'levels' },
  { id: 'lines', name: 'lines' },
  { id: 'zones', name: 'zones' },
  { id: 'water', name: 'water that stands or leaves' },
  { id: 'things', name: 'things' },
  { id: 'backdrop', name: 'backdrop' },
] as const

export type MapLayer = (typeof mapLayers)[number]['id']

/** Everything of the plan that is drawn under the editing marks, besides levels, letters and backdrop. */
export function planLayers(
  view: PlanView,
  shown: ReadonlySet<MapLayer>,
  picked: string | undefined,
): L.LayerGroup {
  const when = (layer: MapLayer, layers: () => L.Layer[]) => (shown.has(layer) ? layers() : [])
  return L.layerGroup([
    L.polygon([lineOnMap(view.boundary), ...view.marked.holes.map(lineOnMap)], {
      className: shown.has('backdrop') && view.marked.backdrop ? 'map-boundary clear' : 'map-boundary',
      interactive: false,
    }),
    ...when('contours', () => contourLayers(view)),
    ...when('zones', () => zoneLayers(view, picked)),
    ...when('water', () => waterLayers(view)),
    ...when('lines', () => lineLayers(view.marked)),
    ...when('things', () => [...thingLayers(view), ...aroundLayers(view.marked)]),
    ...sectionLayers(view),
  ])
}

function contourLayers({ contours, boundary }: PlanView): L.Layer[] {
  return contours.flatMap((line) =>
    line.rings
      .flatMap((ring) => runsInside(ring, boundary))
      .map((run) =>
        L.polyline(lineOnMap(run), {
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

const zoneLayers = ({ zones }: PlanView, picked: string | undefined): L.Layer[] =>
  zones.map(({ id, ring }) =>
    L.polygon(lineOnMap(ring), {
      className: id === picked ? 'map-zone picked' : 'map-zone',
      interactive: false,
    }),
  )

/** Share of the plot's length that an arrow for all of its water takes [m/m]. */
const ARROW_SHARE = 0.12

/** Hollows, and arrows where water leaves with their share of the plot's. */
function waterLayers({ water, boundary }: PlanView): L.Layer[] {
  const bounds = L.latLngBounds(boundary.map(onMap))
  const longM = Math.hypot(bounds.getNorth() - bounds.getSouth(), bounds.getEast() - bounds.getWest())
  return [
    ...water.hollows.map((ring) =>
      L.polygon(lineOnMap(ring), { className: 'map-hollow' }).bindTooltip('a hollow: water stands here'),
    ),
    ...water.leaving.flatMap(({ at, towardsDeg, share }) => {
      const lengthM = longM * ARROW_SHARE * Math.sqrt(share)
      const tip = {
        eastM: at.eastM + lengthM * Math.sin((towardsDeg * Math.PI) / 180),
        northM: at.northM + lengthM * Math.cos((towardsDeg * Math.PI) / 180),
      }
      const words = `${Math.round(share * 100)} % of the plot’s water`
      return [
        L.polyline(lineOnMap([at, tip]), { className: 'map-leaves' }).bindTooltip(words),
        L.marker(onMap(tip), {
          icon: L.divIcon({ className: 'map-leaves-words', html: asText(`${Math.round(share * 100)} %`) }),
          interactive: false,
          keyboard: false,
        }),
      ]
    }),
  ]
}

function lineLayers({ breaklines }: PlanMarked): L.Layer[] {
  return breaklines.map(({ kind, name, line }) =>
    L.polyline(lineOnMap(line), { className: `map-line ${kind}` }).bindTooltip(asText(name || kind)),
  )
}

/** Marks of single points on the plan [px]: of a trunk under its crown, and of all else. */
const TRUNK_PX = 4
const POINT_PX = 6

function thingLayers({ obstacles, crowns }: PlanView): L.Layer[] {
  const drawn = obstacles.map((obstacle) => {
    const places = lineOnMap(obstacle.ring)
    const [first] = places
    const className = `map-thing ${obstacle.kind}`
    const layer =
      places.length === 1 && first
        ? L.circleMarker(first, { radius: obstacle.kind === 'tree' ? TRUNK_PX : POINT_PX, className })
        : isOutline(obstacle)
          ? L.polygon(places, { className })
          : L.polyline(places, { className: `${className} line` })
    return layer.bindTooltip(asText(obstacle.name))
  })
  return [...crowns.map(crownLayer), ...drawn]
}

/** A crown as wide as it stands, under the mark of its trunk. */
const crownLayer = ({ at, radiusM }: PlanView['crowns'][number]): L.Layer =>
  L.circle(onMap(at), { radius: radiusM, className: 'map-crown', interactive: false })

function aroundLayers({ beyond, viewpoints }: PlanMarked): L.Layer[] {
  return [
    ...beyond.map(({ kind, name, line }) =>
      L.polyline(lineOnMap(line), { className: `map-beyond ${kind}` }).bindTooltip(asText(name)),
    ),
    ...viewpoints.map(({ name, at }) =>
      L.marker(onMap(at), {
        icon: L.divIcon({ className: 'map-view', html: '', iconSize: [16, 16] }),
        interactive: false,
        keyboard: false,
        alt: name,
      }),
    ),
  ]
}

function sectionLayers({ section, marked }: PlanView): L.Layer[] {
  return [
    ...sectionLayer('A', section, 'map-section'),
    ...marked.sections.flatMap((each) => sectionLayer(each.name, each, 'map-section other')),
  ]
}

function sectionLayer(
  name: string,
  { from, to }: { readonly from: PlanPoint; readonly to: PlanPoint },
  className: string,
): L.Layer[] {
  const end = (place: PlanPoint, letter: string) =>
    L.marker(onMap(place), {
      icon: L.divIcon({ className: 'map-end', html: asText(letter), iconSize: [22, 22] }),
      interactive: false,
      keyboard: false,
    })
  const line = L.polyline([onMap(from), onMap(to)], { className, interactive: false })
  return [line, end(from, name), end(to, `${name}′`)]
}

/** Words as they are: names come from files and may hold anything. */
function asText(words: string): HTMLElement {
  const element = document.createElement('span')
  element.textContent = words
  return element
}
