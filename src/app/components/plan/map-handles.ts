import L from 'leaflet'
import { boxAround, type PlanPoint } from '#core/geometry'
import { inPlot, lineOnMap, onMap } from './map-places'

/** Something picked whose corners can be moved. */
export interface Shape {
  readonly name: string
  readonly ring: readonly PlanPoint[]
  readonly closed: boolean
  /** New corners may be put halfway. */
  readonly grows: boolean
  /** It may be moved as a whole. */
  readonly whole: boolean
}

/** Who is told, and where a dragged corner comes to rest. */
export interface HandleEvents {
  readonly reshaped: (ring: readonly PlanPoint[]) => void
  readonly corner: (at: number) => void
  readonly snap: (at: PlanPoint) => PlanPoint
  /** How many metres a pixel covers now [m]. */
  readonly mPerPx: number
  /** The corner being changed always has its mark. */
  readonly chosen: number
}

/** Handles that are on the map. */
export interface Handles {
  readonly layer: L.LayerGroup
  readonly focus: (at: number) => void
  /** A corner has its mark: of corners that crowd, only some have. */
  readonly shows: (at: number) => boolean
  /** One of them has the keys. */
  readonly focused: () => boolean
  /** Tells of nudges that were not told yet. */
  readonly settle: () => void
}

/** More corners than this are changed in the table [count]. */
export const MOST_HANDLES = 200
/** Steps of the arrow keys [m]. */
const STEP_M = 0.1
const LONG_STEP_M = 1
/** A run of arrow keys is one change when it pauses for this long [ms]. */
const PAUSE_MS = 600
/** Least gap between two marks [px]. */
const ROOM_PX = 2
/** Half-way marks stand only on sides where they are clear of the corners [px]. */
const APART_PX = 70
/** The mark that moves the whole stands this far above its northern edge, clear of its corners [px]. */
const BESIDE_PX = 36
/** Side of a mark [px]: for a pointer, and for a finger. */
const SIDE_PX = matchMedia('(pointer: coarse)').matches ? 44 : 24

/**
 * Marks at the corners of a shape that can be dragged or moved with the arrow keys, with smaller ones halfway that make
 * a new corner, and one above it that moves the whole.
 */
export function shapeHandles(shape: Shape, events: HandleEvents): Handles {
  const outline = L.polyline([], { className: 'map-shape', interactive: false })
  const start = topOf(shape.ring)
  const held = holding(shape.ring, events.reshaped, (ring) => {
    outline.setLatLngs(lineOnMap(shape.closed ? [...ring, ...ring.slice(0, 1)] : ring))
    corners.forEach((mark, at) => ring[at] && mark.setLatLng(onMap(ring[at])))
    whole.forEach((mark) => mark.setLatLng(onMap(topOf(ring))))
  })
  const cornerMark = (at: number) =>
    handle(shape.ring[at] ?? start, cornerTitle(shape, at), '', {
      drag: (to, done) =>
        held.take(
          changed(shape.ring, at, () => events.snap(to)),
          done,
        ),
      nudge: (by) => held.nudge((ring) => changed(ring, at, (each) => moved(each, by))),
      settle: held.settle,
      focus: () => events.corner(at),
    })
  const corners = new Map(uncrowded(shape.ring, events).map((at) => [at, cornerMark(at)]))
  const whole = (shape.whole && shape.ring.length > 1 ? [start] : []).map((place) =>
    handle(place, `The whole of ${shape.name}`, 'whole', {
      drag: (to, done) => {
        const by = { eastM: to.eastM - start.eastM, northM: to.northM - start.northM }
        held.take(
          shape.ring.map((each) => moved(each, by)),
          done,
        )
      },
      nudge: (by) => held.nudge((ring) => ring.map((each) => moved(each, by))),
      settle: held.settle,
      focus: () => undefined,
    }),
  )
  held.take(shape.ring, false)
  return {
    layer: L.layerGroup([outline, ...halfways(shape, events), ...corners.values(), ...whole]),
    shows: (at) => corners.has(at),
    focus: (at) => corners.get(at)?.getElement()?.focus(),
    focused: () =>
      [...corners.values(), ...whole].some((mark) => mark.getElement() === document.activeElement),
    settle: held.settle,
  }
}

/** The outline while it is being moved; a run of arrow keys is told once, when it pauses. */
function holding(
  start: readonly PlanPoint[],
  tell: (ring: readonly PlanPoint[]) => void,
  draw: (ring: readonly PlanPoint[]) => void,
) {
  let ring = start
  let waiting: ReturnType<typeof setTimeout> | undefined
  const settle = () => {
    if (waiting === undefined) return
    clearTimeout(waiting)
    waiting = undefined
    tell(ring)
  }
  return {
    settle,
    take: (next: readonly PlanPoint[], done: boolean) => {
      ring = next
      draw(ring)
      if (done) tell(ring)
    },
    nudge: (move: (ring: readonly PlanPoint[]) => readonly PlanPoint[]) => {
      ring = move(ring)
      draw(ring)
      clearTimeout(waiting)
      waiting = setTimeout(settle, PAUSE_MS)
    },
  }
}

const changed = (
  ring: readonly PlanPoint[],
  at: number,
  change: (place: PlanPoint) => PlanPoint,
): readonly PlanPoint[] => ring.map((each, index) => (index === at ? change(each) : each))

interface HandleMoves {
  readonly drag: (to: PlanPoint, done: boolean) => void
  readonly nudge: (by: PlanPoint) => void
  readonly settle: () => void
  readonly focus: () => void
}

function handle(place: PlanPoint, title: string, className: string, moves: HandleMoves): L.Marker {
  const mark = L.marker(onMap(place), {
    icon: L.divIcon({
      className: `map-handle ${className}`,
      html: '',
      iconSize: [SIDE_PX, SIDE_PX],
      iconAnchor: [SIDE_PX / 2, SIDE_PX / 2 + (className === 'whole' ? BESIDE_PX : 0)],
    }),
    draggable: true,
    title,
    alt: title,
    zIndexOffset: 1000,
  })
  mark.on('drag', () => moves.drag(inPlot(mark.getLatLng()), false))
  mark.on('dragend', () => moves.drag(inPlot(mark.getLatLng()), true))
  mark.on('click', () => moves.focus())
  mark.on('add', () => {
    const element = mark.getElement()
    element?.addEventListener('focus', moves.focus)
    element?.addEventListener('blur', moves.settle)
    element?.addEventListener('keydown', (event) => arrow(event, moves.nudge))
  })
  return mark
}

function arrow(event: KeyboardEvent, nudge: (by: PlanPoint) => void): void {
  const stepM = event.shiftKey ? LONG_STEP_M : STEP_M
  const way = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key]
  if (!way) return
  event.preventDefault()
  event.stopPropagation()
  nudge({ eastM: (way[0] ?? 0) * stepM, northM: (way[1] ?? 0) * stepM })
}

function halfways({ ring, closed, grows, name }: Shape, events: HandleEvents): L.Marker[] {
  if (!grows || ring.length < 2) return []
  return ring.slice(0, closed ? undefined : -1).flatMap((place, at) => {
    const next = ring[(at + 1) % ring.length] ?? place
    if (apartM(place, next) < APART_PX * events.mPerPx) return []
    const put = (to: PlanPoint) => events.reshaped([...ring.slice(0, at + 1), to, ...ring.slice(at + 1)])
    const mark = L.marker(onMap(middleOf([place, next])), {
      icon: L.divIcon({ className: 'map-handle halfway', html: '', iconSize: [SIDE_PX, SIDE_PX] }),
      draggable: true,
      title: `New corner of ${name} after corner ${at + 1}`,
      alt: `New corner of ${name} after corner ${at + 1}`,
    })
    mark.on('dragend', () => put(events.snap(inPlot(mark.getLatLng()))))
    mark.on('click', () => put(inPlot(mark.getLatLng())))
    return mark
  })
}

/** Corners whose marks do not crowd each other at this scale; the chosen one always has its own. */
function uncrowded(ring: readonly PlanPoint[], { chosen, mPerPx }: HandleEvents): number[] {
  const leastM = (SIDE_PX + ROOM_PX) * mPerPx
  const first = ring[chosen] ? [chosen] : []
  return ring.reduce<number[]>((clear, place, at) => {
    const crowds = clear.some((other) => apartM(place, ring[other] ?? place) < leastM)
    return crowds || at === chosen ? clear : [...clear, at]
  }, first)
}

const apartM = (one: PlanPoint, other: PlanPoint): number =>
  Math.hypot(one.eastM - other.eastM, one.northM - other.northM)

const cornerTitle = ({ ring, name }: Shape, at: number): string =>
  ring.length === 1 ? name : `Corner ${at + 1} of ${name}`

const moved = (place: PlanPoint, by: PlanPoint): PlanPoint => ({
  ...place,
  eastM: Math.round((place.eastM + by.eastM) * 100) / 100,
  northM: Math.round((place.northM + by.northM) * 100) / 100,
})

/** Middle of the northern edge of the box around a shape. */
function topOf(ring: readonly PlanPoint[]): PlanPoint {
  const { westM, eastM, northM } = boxAround(ring)
  return { eastM: (westM + eastM) / 2, northM }
}

function middleOf(ring: readonly PlanPoint[]): PlanPoint {
  const sum = ring.reduce(
    (sofar, { eastM, northM }) => ({ eastM: sofar.eastM + eastM, northM: sofar.northM + northM }),
    { eastM: 0, northM: 0 },
  )
  return { eastM: sum.eastM / ring.length, northM: sum.northM / ring.length }
}

/** Places put down so far while something is drawn. */
export function drawnMarks(places: readonly PlanPoint[], closed: boolean): L.LayerGroup {
  const points = places.map((place) =>
    L.circleMarker(onMap(place), { radius: 5, className: 'map-drawn', interactive: false }),
  )
  const shown = closed && places.length > 2 ? [...places, ...places.slice(0, 1)] : places
  const line = L.polyline(lineOnMap(shown), { className: 'map-drawn', interactive: false })
  return L.layerGroup(places.length > 1 ? [line, ...points] : points)
}
