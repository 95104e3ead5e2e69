import { linePath, outlinePath, type Px } from './path'

/** A place of the sky: a direction, and a height above the horizontal. */
export interface SkyPlace {
  readonly azimuthDeg: number
  readonly altitudeDeg: number
}

/** A strip of the sky all around, laid out on a sheet. */
export interface SkyStrip {
  readonly heightPx: number
  /** Height of the sky that is drawn [°]. */
  readonly topDeg: number
  readonly horizonPx: number
  /** Where a place of the sky lies. */
  readonly at: (place: SkyPlace) => Px
  readonly winds: readonly { readonly xPx: number; readonly text: string }[]
  readonly rungs: readonly { readonly yPx: number; readonly deg: number }[]
}

/** Heights are drawn this much larger than widths, so that low hills can be seen. */
export const RAISED = 2
/** Sky that is drawn at least [°], and what of it stands free above the highest hill. */
const LEAST_TOP_DEG = 25
const FREE_SHARE = 1.3
const MOST_TOP_DEG = 85
const RUNG_DEG = 10
const ROOM_PX = { above: 4, below: 18 }
const CIRCLE_DEG = 360
const HALF_DEG = 180
const winds = [
  [0, 'N'],
  [90, 'E'],
  [180, 'S'],
  [270, 'W'],
  [360, 'N'],
  [450, 'E'],
  [540, 'S'],
] as const

/**
 * Lays out a strip of sky so that the side of the noon sun is in its middle.
 *
 * @param widthPx - width of the strip [px]
 * @param highestDeg - highest hill [°]
 * @param northIsNoon - the noon sun stands in the north
 */
export function skyStrip(widthPx: number, highestDeg: number, northIsNoon: boolean): SkyStrip {
  const fromDeg = northIsNoon ? HALF_DEG : 0
  const topDeg = Math.min(MOST_TOP_DEG, Math.max(LEAST_TOP_DEG, highestDeg * FREE_SHARE))
  const pxPerDeg = widthPx / CIRCLE_DEG
  const horizonPx = ROOM_PX.above + topDeg * pxPerDeg * RAISED
  const xOf = (deg: number) => (deg - fromDeg) * pxPerDeg
  const yOf = (deg: number) => horizonPx - deg * pxPerDeg * RAISED
  return {
    heightPx: Math.ceil(horizonPx + ROOM_PX.below),
    topDeg,
    horizonPx,
    at: ({ azimuthDeg, altitudeDeg }) => ({
      xPx: xOf(azimuthDeg < fromDeg ? azimuthDeg + CIRCLE_DEG : azimuthDeg),
      yPx: yOf(altitudeDeg),
    }),
    winds: winds
      .filter(([deg]) => deg >= fromDeg && deg <= fromDeg + CIRCLE_DEG)
      .map(([deg, text]) => ({ xPx: xOf(deg), text })),
    rungs: Array.from({ length: Math.floor(topDeg / RUNG_DEG) }, (_, at) => ({
      deg: (at + 1) * RUNG_DEG,
      yPx: yOf((at + 1) * RUNG_DEG),
    })),
  }
}

/** The hills as one outline: straight from each place to the next, all around. */
export function hillsPath(strip: SkyStrip, hills: readonly SkyPlace[], widthPx: number): string {
  const laid = hills.map(strip.at).sort((one, other) => one.xPx - other.xPx)
  const [first, last] = [laid[0], laid.at(-1)]
  if (!first || !last) return ''
  const before = { ...last, xPx: last.xPx - widthPx }
  const after = { ...first, xPx: first.xPx + widthPx }
  const foot = [
    { xPx: after.xPx, yPx: strip.horizonPx },
    { xPx: before.xPx, yPx: strip.horizonPx },
  ]
  return outlinePath([before, ...laid, after, ...foot])
}

/** A path of the sun, broken where it passes the edge of the strip. */
export function sunLine(strip: SkyStrip, path: readonly SkyPlace[], widthPx: number): string {
  const runs = path.map(strip.at).reduce<Px[][]>((sofar, place) => {
    const run = sofar.at(-1)
    const before = run?.at(-1)
    if (run && before && Math.abs(place.xPx - before.xPx) < widthPx / 2) run.push(place)
    else sofar.push([place])
    return sofar
  }, [])
  return runs.map(linePath).join('')
}

/** Words of a path stand so far from it [px], and so far below the top of the strip [°]. */
const BESIDE_PX = 4
const BELOW_TOP_DEG = 5

/** Where the name of a path stands: above its noon, or to the left where it leaves the strip, outside the outermost. */
export function sunLabel(strip: SkyStrip, path: readonly SkyPlace[], outermost: boolean) {
  const highest = path.reduce<SkyPlace | undefined>(
    (best, one) => (best && best.altitudeDeg >= one.altitudeDeg ? best : one),
    undefined,
  )
  if (!highest) return undefined
  const rimDeg = strip.topDeg - BELOW_TOP_DEG
  if (highest.altitudeDeg < rimDeg) {
    const { xPx, yPx } = strip.at(highest)
    return { xPx, yPx: yPx - BESIDE_PX, anchor: 'middle' } as const
  }
  const above = path.filter(({ altitudeDeg }) => altitudeDeg >= rimDeg)
  const xPx = Math.min(...above.map((place) => strip.at(place).xPx))
  const { yPx } = strip.at({ azimuthDeg: 0, altitudeDeg: rimDeg })
  return outermost
    ? ({ xPx: xPx - 2 * BESIDE_PX, yPx, anchor: 'end' } as const)
    : ({ xPx: xPx + BESIDE_PX, yPx, anchor: 'start' } as const)
}
