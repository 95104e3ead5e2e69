import type { GroundPoint, SectionView, Stretch } from '../section-view.types'
import { axisOf, BREAK_PX, type Axis } from './axis'
import { breaksIn } from './breaks'

/** How the section lies on the sheet. */
export interface SectionScale {
  readonly axis: Axis
  /** Place of a height above the foot [px]. */
  y(heightM: number): number
  readonly xPxPerM: number
  readonly yPxPerM: number
  /** Heights are drawn this many times too tall; 1 is true to scale. */
  readonly exaggeration: number
  readonly widthPx: number
  readonly heightPx: number
  /** Lowest line of the earth body, top of the zone band [px]. */
  readonly basePx: number
}

/** Room around the drawing [px]. */
export interface SheetRoom {
  readonly leftPx: number
  readonly rightPx: number
  /** Kept free above the highest ground, for the answer, labels and crowns. */
  readonly skyPx: number
  /** Kept for the zone band and the distance figures. */
  readonly bandPx: number
}

const sheetRoom: SheetRoom = { leftPx: 174, rightPx: 44, skyPx: 180, bandPx: 46 }
const phoneRoom: SheetRoom = { leftPx: 12, rightPx: 12, skyPx: 120, bandPx: 46 }

/** The room that a sheet of a width usually keeps. */
export function roomFor(widthPx: number): SheetRoom {
  return widthPx < COMPACT_PX ? phoneRoom : sheetRoom
}

/** Narrower sheets leave names and verdicts to the rows below the drawing [px]. */
export const COMPACT_PX = 700

/** Earth drawn below the foot: as deep as its soil with room for the caption, within these limits [px]. */
const EARTH_PX = { least: 34, most: 96, caption: 20 }

/** Falls smaller than this are within the error of a survey: the ground counts as level [m]; our judgement. */
const LEVEL_M = 0.05

/** Sky kept over the highest thing when heights are exaggerated [px]. */
const HEAD_PX = 24

/** Exaggerations that may be declared, the share of the room below which one is used, and the share it aims at. */
const EXAGGERATIONS = [1, 2, 5, 10, 20] as const
const FLAT_SHARE = 0.22
const WANTED_SHARE = 0.35

/**
 * Lays the section on a sheet, true to scale whenever that can be read; an exaggeration is always one of a few
 * round figures, for the drawing to declare.
 *
 * @param view - the section to lay
 * @param size - width and height of the drawing [px], each 200 or more
 * @param room - room around the drawing [px]
 * @throws RangeError when the sheet is too small
 */
export function sectionScale(
  view: SectionView,
  size: { readonly widthPx: number; readonly heightPx: number },
  room: SheetRoom = roomFor(size.widthPx),
): SectionScale {
  if (!(size.widthPx >= 200 && size.heightPx >= 160))
    throw new RangeError(`sectionScale: at least 200 by 160 px, got ${size.widthPx} by ${size.heightPx}`)
  const breaks = breaksFor(view, size.widthPx)
  const drawnM = Math.max(drawnLengthM(view, breaks), 0.1)
  const acrossPx = size.widthPx - room.leftPx - room.rightPx - breaks.length * BREAK_PX
  const earthPx = earthUnderFootPx(view, acrossPx / drawnM)
  const riseRoomPx = Math.max(size.heightPx - room.skyPx - room.bandPx - earthPx, 40)
  const xPxPerM = Math.min(acrossPx / drawnM, riseRoomPx / Math.max(view.fallM, 0.1))
  const exaggeration = isLevel(view)
    ? 1
    : exaggerationFor(view.fallM * xPxPerM, riseRoomPx, {
        tallPx: tallestM(view) * xPxPerM,
        skyPx: size.heightPx - room.bandPx - earthPx - HEAD_PX,
      })
  const basePx = size.heightPx - room.bandPx
  const footPx = basePx - earthPx
  const yPxPerM = xPxPerM * exaggeration
  const zeroPx = room.leftPx - view.drawn.fromM * xPxPerM
  return {
    axis: axisOf({ zeroPx, pxPerM: xPxPerM, lengthM: view.lengthM, breaks }),
    y: (heightM) => footPx - heightM * yPxPerM,
    xPxPerM,
    yPxPerM,
    exaggeration,
    ...size,
    basePx,
  }
}

/** Long even ground is cut short where the whole would be drawn smaller than the first, down to the second [px for a metre]. */
const SMALL_PX_PER_M = 9
const READABLE_PX_PER_M = 12

function breaksFor(view: SectionView, widthPx: number): readonly Stretch[] {
  const room = roomFor(widthPx)
  const acrossPx = widthPx - room.leftPx - room.rightPx
  const wholePxPerM = acrossPx / Math.max(drawnLengthM(view, []), 0.1)
  return wholePxPerM < SMALL_PX_PER_M ? breaksIn(view, acrossPx / READABLE_PX_PER_M) : []
}

function drawnLengthM({ drawn }: SectionView, breaks: readonly Stretch[]): number {
  return breaks.reduce((sum, { fromM, toM }) => sum - (toM - fromM), drawn.toM - drawn.fromM)
}

/** Depth of earth that shows the soil of the lowest zone [px]. */
function earthUnderFootPx({ zones }: SectionView, pxPerM: number): number {
  const soilPx = (zones.at(-1)?.soil.depthM ?? 0) * pxPerM
  return Math.min(EARTH_PX.most, Math.max(EARTH_PX.least, soilPx + EARTH_PX.caption))
}

interface Tall {
  /** Highest thing that stands on the section, above its foot, at true scale [px]. */
  readonly tallPx: number
  readonly skyPx: number
}

function exaggerationFor(risePx: number, roomPx: number, { tallPx, skyPx }: Tall): number {
  const fitting = EXAGGERATIONS.filter(
    (times) => times === 1 || (risePx * times <= roomPx && tallPx * times <= skyPx),
  )
  if (risePx >= roomPx * FLAT_SHARE) return 1
  return fitting.find((times) => risePx * times >= roomPx * WANTED_SHARE) ?? fitting.at(-1) ?? 1
}

/** Highest point above the foot of what stands on the section, its trees and shrubs full grown [m]. */
function tallestM(view: SectionView): number {
  const things = view.obstacles.map(
    ({ fromM, toM, heightM }) => groundAt(view.ground, (fromM + toM) / 2).heightM + (heightM ?? 0),
  )
  const plants = view.zones.flatMap(({ spans, planting }) =>
    spans.map(
      ({ fromM }) =>
        groundAt(view.ground, fromM).heightM + Math.max(0, ...planting.map(({ plant }) => plant.heightM)),
    ),
  )
  return Math.max(view.fallM, ...things, ...plants)
}

/** Ground that falls less than a survey can tell. */
export function isLevel({ fallM }: Pick<SectionView, 'fallM'>): boolean {
  return fallM < LEVEL_M
}

/**
 * Height of a drawing in which the section fills the width at true scale, with no sky left over.
 *
 * @param view - the section to lay
 * @param widthPx - width of the drawing [px], 200 or more
 * @param skyPx - room above the ground for words [px]; that of the sheet when left out
 * @returns height [px]
 */
export function fittingHeightPx(view: SectionView, widthPx: number, skyPx?: number): number {
  const room = roomFor(widthPx)
  const breaks = breaksFor(view, widthPx)
  const acrossPx = widthPx - room.leftPx - room.rightPx - breaks.length * BREAK_PX
  const xPxPerM = acrossPx / Math.max(drawnLengthM(view, breaks), 0.1)
  return Math.ceil(
    view.fallM * xPxPerM + (skyPx ?? room.skyPx) + room.bandPx + earthUnderFootPx(view, xPxPerM),
  )
}

/** Ground at a distance, read between the points; beyond the ends it runs on level. */
export function groundAt(ground: readonly GroundPoint[], distanceM: number): GroundPoint {
  const after = ground.findIndex((point) => point.distanceM >= distanceM)
  const right = ground[after] ?? ground.at(-1)
  const left = ground[after - 1]
  if (!right) throw new RangeError('groundAt: the section has no points')
  if (after === -1 || !left || right.distanceM === left.distanceM) return { ...right, distanceM }
  const share = (distanceM - left.distanceM) / (right.distanceM - left.distanceM)
  return {
    distanceM,
    heightM: left.heightM + share * (right.heightM - left.heightM),
    slopeDeg: left.slopeDeg + share * (right.slopeDeg - left.slopeDeg),
    levelSdM: left.levelSdM + share * (right.levelSdM - left.levelSdM),
  }
}
