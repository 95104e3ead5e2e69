import type { PlanPoint } from '#core/geometry'
import type { Outcome } from '#core/units'
import proj4 from 'proj4'
import { unitLengthM } from './length-unit'
import { crsOfEpsg } from './known-crs'
import { refusal } from './refusal'
import type { FileCrs, SurveyGround, SurveyRead, SurveyWindow, SurveyWish } from './survey-read.types'

/** How a file's own coordinates become metres in the plot's frame, and back. */
export interface PlotFrame {
  readonly toPlot: (east: number, north: number) => PlanPoint
  /** East and north in the file's own coordinates. */
  readonly fromPlot: (point: PlanPoint) => readonly [number, number]
  /** Metres in one unit of east and north; undefined when they are degrees. */
  readonly planLengthM: number | undefined
  readonly levelLengthM: number
  readonly shift: PlanPoint | undefined
  readonly site: SurveyGround['site']
  readonly notes: readonly string[]
}

/** Further from its origin than this, a survey is in some national grid and not in the plot's own frame [m]. */
const FAR_FROM_ORIGIN_M = 20_000

/**
 * The plot's own frame for a survey: shifted by whole units near its south-west corner when it lies far off; about its
 * middle when it is in degrees.
 *
 * @param box - what the survey covers, in the file's own coordinates
 * @param read - the file
 * @param wish - what the person confirmed
 * @returns the frame, or why there is none
 */
export function plotFrameOf(box: SurveyWindow, read: SurveyRead, wish: SurveyWish): Outcome<PlotFrame> {
  const crs = crsOf(read, wish)
  if (!crs.ok) return crs
  const levelLengthM = unitLengthM[wish.levelUnit ?? read.levelUnit ?? wish.unit]
  const inDegrees = wish.inDegrees ?? read.inDegrees ?? false
  return inDegrees
    ? aboutMiddle(box, levelLengthM)
    : { ok: true, value: shifted(box, { wish, crs: crs.value, levelLengthM }) }
}

function crsOf(read: SurveyRead, wish: SurveyWish): Outcome<FileCrs | undefined> {
  if (wish.epsg === undefined) {
    const named = read.crs?.epsg === undefined ? undefined : crsOfEpsg(read.crs.epsg)
    return { ok: true, value: named ?? read.crs }
  }
  const known = crsOfEpsg(wish.epsg)
  return known
    ? { ok: true, value: known }
    : refusal(
        'EPSG',
        `The coordinate system EPSG:${wish.epsg} is not known here.`,
        'Leave it out, and give latitude and longitude instead.',
      )
}

interface Shifting {
  readonly wish: SurveyWish
  readonly crs: FileCrs | undefined
  readonly levelLengthM: number
}

function shifted(box: SurveyWindow, { wish, crs, levelLengthM }: Shifting): PlotFrame {
  const lengthM = unitLengthM[wish.unit]
  const far = Math.max(Math.abs(box.west), Math.abs(box.south)) * lengthM > FAR_FROM_ORIGIN_M
  const [west, south] = far ? [Math.floor(box.west), Math.floor(box.south)] : [0, 0]
  const site = crs?.definition === undefined ? undefined : siteOf(box, crs.definition, lengthM)
  return {
    toPlot: (east, north) => ({
      eastM: exact(east - west) * lengthM,
      northM: exact(north - south) * lengthM,
    }),
    fromPlot: ({ eastM, northM }) => [eastM / lengthM + west, northM / lengthM + south],
    planLengthM: lengthM,
    levelLengthM,
    shift: far ? { eastM: west * lengthM, northM: south * lengthM } : undefined,
    site,
    notes:
      crs !== undefined && site === undefined
        ? [`Where “${crs.name}” lies on the globe is not known here: give latitude and longitude.`]
        : [],
  }
}

/** Decimals kept of a difference in the file's unit: rounds off only what subtracting doubles left behind. */
const KEPT_DECIMALS = 8

const exact = (difference: number): number => Number(difference.toFixed(KEPT_DECIMALS))

/** Middle of a box on the globe, or undefined when its system cannot be worked out there. */
function siteOf(box: SurveyWindow, definition: string, lengthM: number): SurveyGround['site'] {
  try {
    const unitM = toMetre(definition)
    const middle = [(box.west + box.east) / 2, (box.south + box.north) / 2].map(
      (one) => (one * lengthM) / unitM,
    )
    const [longitudeDeg = NaN, latitudeDeg = NaN] = proj4(definition, 'WGS84', middle)
    const onGlobe = Math.abs(latitudeDeg) <= 90 && Math.abs(longitudeDeg) <= 180
    return onGlobe
      ? { latitudeDeg: sevenDecimals(latitudeDeg), longitudeDeg: sevenDecimals(longitudeDeg) }
      : undefined
  } catch {
    return undefined
  }
}

/** A centimetre on the ground. */
const sevenDecimals = (angleDeg: number): number => Number(angleDeg.toFixed(7))

function toMetre(definition: string): number {
  const projection: object = new proj4.Proj(definition)
  const unit = 'to_meter' in projection ? projection.to_meter : 1
  return typeof unit === 'number' && unit > 0 ? unit : 1
}

/** Degrees to metres: a transverse Mercator of the plot's own, true to scale in its middle. */
function aboutMiddle(box: SurveyWindow, levelLengthM: number): Outcome<PlotFrame> {
  const latitudeDeg = sevenDecimals((box.south + box.north) / 2)
  const longitudeDeg = sevenDecimals((box.west + box.east) / 2)
  if (!(box.south > -89 && box.north < 89 && box.west >= -360 && box.east <= 360))
    return refusal(
      'coordinates',
      'These are no longitudes and latitudes: they go beyond the globe, or to a pole.',
      'Say that the coordinates are lengths, and in which unit.',
    )
  const local = proj4(
    `+proj=tmerc +lat_0=${latitudeDeg} +lon_0=${longitudeDeg} +k=1 +x_0=0 +y_0=0 +ellps=WGS84 +units=m`,
  )
  const frame: PlotFrame = {
    toPlot: (east, north) => {
      const [eastM = NaN, northM = NaN] = local.forward([east, north])
      return { eastM: exact(eastM), northM: exact(northM) }
    },
    fromPlot: ({ eastM, northM }) => {
      const [east = NaN, north = NaN] = local.inverse([eastM, northM])
      return [east, north]
    },
    planLengthM: undefined,
    levelLengthM,
    shift: undefined,
    site: { latitudeDeg, longitudeDeg },
    notes: [],
  }
  return { ok: true, value: frame }
}
