import { placeDay, sunArc, sunPath, type PlaceDay, type PlaceSky } from '#core/shade'
import { polyline, type Px } from '../../drawing/path'
import { skyPx, type SkyScale } from './sky-scale'
import type { PathDay } from './sun-days'

/** How much of the sun reaches the place on a piece of its path. */
type PieceLight = 'sun' | 'leaves' | 'hidden'

/** A day's path as it is drawn. */
export interface SkyPath {
  readonly day: PathDay
  readonly placeDay: PlaceDay
  /** Lines of the pieces in each light. */
  readonly lines: Readonly<Record<PieceLight, string>>
  readonly ticks: string
  /** Where the sun stands at its highest; undefined when it does not rise. */
  readonly noon: Px | undefined
  /** Sun up at a time by the sun [h]. */
  readonly riseH: number
  readonly setH: number
}

/** A share of direct light from which nothing stands in the way, 0 to 1. */
const CLEAR = 0.995

/** Distance between places of a path that is drawn [h]. */
const STEP_H = 0.1

/** Half the length of an hour's tick [px]. */
const TICK_PX = 4

/** The path of every day with its light. */
export function skyPaths(
  sky: PlaceSky,
  latitudeDeg: number,
  days: readonly PathDay[],
  scale: SkyScale,
): readonly SkyPath[] {
  return days.map((day) => skyPath(day, placeDay(sky, latitudeDeg, day.dayOfYear), { latitudeDeg, scale }))
}

function skyPath(
  day: PathDay,
  light: PlaceDay,
  { latitudeDeg, scale }: { readonly latitudeDeg: number; readonly scale: SkyScale },
): SkyPath {
  const arc = sunArc(latitudeDeg, day.dayOfYear)
  const place = (hour: number) => {
    const { azimuthDeg, altitudeDeg } = arc.at(hour)
    return skyPx(scale, azimuthDeg, Math.max(0, altitudeDeg))
  }
  const pieces = piecesOf(light, arc)
  const lineOf = (kind: PieceLight) =>
    pieces
      .filter((piece) => piece.light === kind)
      .map((piece) => runs(placesOf(piece, place), scale).map(polyline).join(''))
      .join('')
  return {
    ...{ day, placeDay: light, riseH: arc.riseH, setH: arc.setH },
    lines: { sun: lineOf('sun'), leaves: lineOf('leaves'), hidden: lineOf('hidden') },
    ticks: wholeHours(arc)
      .map((hour) => tick(place(hour - STEP_H), place(hour), place(hour + STEP_H)))
      .join(''),
    noon: arc.setH > arc.riseH ? place(12) : undefined,
  }
}

/** The whole hours by the sun with the sun up. */
export function wholeHours({ riseH, setH }: { readonly riseH: number; readonly setH: number }): number[] {
  const first = Math.ceil(riseH)
  const last = Math.floor(setH)
  return setH > riseH ? Array.from({ length: last - first + 1 }, (_, at) => first + at) : []
}

interface Piece {
  readonly fromH: number
  readonly toH: number
  readonly light: PieceLight
}

/** The whole day from rise to set, cut where the light changes. */
function piecesOf({ spells }: PlaceDay, { riseH, setH }: { riseH: number; setH: number }): Piece[] {
  const pieces: Piece[] = []
  let atH = riseH
  for (const { fromH, toH, through } of spells) {
    if (fromH > atH) pieces.push({ fromH: atH, toH: fromH, light: 'hidden' })
    pieces.push({ fromH, toH, light: through >= CLEAR ? 'sun' : 'leaves' })
    atH = toH
  }
  if (setH > atH) pieces.push({ fromH: atH, toH: setH, light: 'hidden' })
  return pieces
}

function placesOf({ fromH, toH }: Piece, place: (hour: number) => Px): Px[] {
  const steps = Math.max(1, Math.ceil((toH - fromH) / STEP_H))
  return Array.from({ length: steps + 1 }, (_, at) => place(fromH + ((toH - fromH) * at) / steps))
}

/** A path that leaves the sheet at one side comes back at the other: the line breaks there. */
function runs(places: readonly Px[], { leftPx, rightPx }: Pick<SkyScale, 'leftPx' | 'rightPx'>): Px[][] {
  const found: Px[][] = []
  places.forEach((place, at) => {
    const before = places[at - 1]
    const run = found.at(-1)
    if (run && before && Math.abs(place.xPx - before.xPx) < (rightPx - leftPx) / 2) run.push(place)
    else found.push([place])
  })
  return found.filter((run) => run.length > 1)
}

/** A short stroke square to the path. */
function tick(before: Px, at: Px, after: Px): string {
  const [dx, dy] = [after.xPx - before.xPx, after.yPx - before.yPx]
  const long = Math.hypot(dx, dy)
  if (long === 0) return ''
  const [across, down] = [(-dy / long) * TICK_PX, (dx / long) * TICK_PX]
  return polyline([
    { xPx: at.xPx - across, yPx: at.yPx - down },
    { xPx: at.xPx + across, yPx: at.yPx + down },
  ])
}

/** Days from midwinter to midsummer whose sun is joined hour by hour [d]. */
const NET_DAYS = [355, 18, 38, 56, 79, 102, 121, 142, 172] as const

/** Faint lines through the places of the sun at the same hour of all days. */
export function hourNet(latitudeDeg: number, scale: SkyScale): string {
  const arcs = NET_DAYS.map((dayOfYear) => sunArc(latitudeDeg, dayOfYear))
  const hours = Array.from({ length: 25 }, (_, hour) => hour)
  return hours
    .flatMap((hour) => {
      const places = arcs
        .map(({ at }) => at(hour))
        .filter(({ altitudeDeg }) => altitudeDeg > 0)
        .map(({ azimuthDeg, altitudeDeg }) => skyPx(scale, azimuthDeg, altitudeDeg))
      return runs(places, scale).map(polyline)
    })
    .join('')
}

/** The paths that a sheet must hold. */
export function pathsOf(latitudeDeg: number, days: readonly PathDay[]) {
  return days.map(({ dayOfYear }) => sunPath(latitudeDeg, dayOfYear))
}
