import type { PlaceSky } from '#core/shade'
import type { SunPathPoint } from '#core/shade'
import type { Px } from '../../drawing/path'

/** How the sky lies on the sheet: directions across, heights up. */
export interface SkyScale {
  readonly leftPx: number
  readonly rightPx: number
  readonly topPx: number
  readonly basePx: number
  readonly heightPx: number
  /** The direction of the noon sun, in the middle [°]. */
  readonly middleDeg: number
  /** How far the sheet reaches to either side of it [°]. */
  readonly halfDeg: number
  readonly topDeg: number
  /** How many times as long a degree up is drawn as one across. */
  readonly stretch: number
  readonly x: (azimuthDeg: number) => number
  readonly y: (heightDeg: number) => number
  /** How far a direction lies to the right of the middle, -180 to 180 [°]. */
  readonly aside: (azimuthDeg: number) => number
}

/** Room around the sky: heights at the left, directions below [px]. */
const ROOM = { left: 32, right: 10, top: 22, bottom: 38 } as const

/** Least and greatest height of the sky itself [px]. */
const TALL_PX = { least: 190, most: 430 }

/** The sheet ends on a multiple of this [°], with this much sky past the paths and over them [°]. */
const EDGE_DEG = 15
const AIR_DEG = 7

/** At least this much of the sky is shown, to the side and up [°]. */
const LEAST_DEG = { half: 75, top: 30 }

/** Skylines higher than this are cut off unless the sun stands higher [°]. */
const SKYLINE_DEG = 75

/** Room for skylines over their tops [°]. */
const SKYLINE_AIR_DEG = 4

/**
 * Lays the sky on a sheet. The noon side is in the middle: south in the north, north in the south.
 *
 * @param sky - the sky from the place
 * @param latitudeDeg - latitude, north positive [°]
 * @param paths - the paths that must be seen
 * @param widthPx - width of the figure [px]
 */
export function skyScale(
  sky: PlaceSky,
  latitudeDeg: number,
  paths: readonly (readonly SunPathPoint[])[],
  widthPx: number,
): SkyScale {
  const middleDeg = latitudeDeg < 0 ? 0 : 180
  const aside = (azimuthDeg: number) => ((azimuthDeg - middleDeg + 540) % 360) - 180
  const points = paths.flat()
  const widest = Math.max(0, ...points.map(({ azimuthDeg }) => Math.abs(aside(azimuthDeg))))
  const halfDeg = Math.min(180, Math.max(LEAST_DEG.half, Math.ceil((widest + AIR_DEG) / EDGE_DEG) * EDGE_DEG))
  const topDeg = Math.min(
    90,
    Math.max(LEAST_DEG.top, highest(points) + AIR_DEG, skylineTop(sky, aside, halfDeg)),
  )
  const [leftPx, rightPx] = [ROOM.left, widthPx - ROOM.right]
  const acrossPx = (rightPx - leftPx) / (halfDeg * 2)
  const tallPx = Math.min(TALL_PX.most, Math.max(TALL_PX.least, acrossPx * topDeg))
  const upPx = tallPx / topDeg
  const basePx = ROOM.top + tallPx
  return {
    ...{ leftPx, rightPx, topPx: ROOM.top, basePx, heightPx: basePx + ROOM.bottom },
    ...{ middleDeg, halfDeg, topDeg, stretch: upPx / acrossPx, aside },
    x: (azimuthDeg) => leftPx + (aside(azimuthDeg) + halfDeg) * acrossPx,
    y: (heightDeg) => basePx - heightDeg * upPx,
  }
}

function highest(points: readonly SunPathPoint[]): number {
  return Math.max(0, ...points.map(({ altitudeDeg }) => altitudeDeg))
}

function skylineTop(sky: PlaceSky, aside: (azimuthDeg: number) => number, halfDeg: number): number {
  const inView = (_: number, azimuthDeg: number) => Math.abs(aside(azimuthDeg)) <= halfDeg
  const layers = [sky.groundDeg, sky.farDeg, ...sky.things.map(({ highDeg }) => highDeg)]
  const tops = layers.flatMap((layer) => [...layer.filter(inView)].filter((angle) => !Number.isNaN(angle)))
  return Math.min(SKYLINE_DEG, Math.max(0, ...tops) + SKYLINE_AIR_DEG)
}

/** A place of the sky on the sheet. */
export function skyPx(scale: SkyScale, azimuthDeg: number, heightDeg: number): Px {
  return { xPx: scale.x(azimuthDeg), yPx: scale.y(heightDeg) }
}
