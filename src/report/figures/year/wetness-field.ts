import { contours } from 'd3-contour'
import { n } from '../../drawing/path'
import { ramps } from '../../ramps'
import { wetnessLimits, wetnessStep, wetnessWords } from '../../figures/strips/wetness-classes'
import { overlaps, type Box } from '../../drawing/path'
import { textWidthPx } from '../../drawing/text-width'
import type { MonthAxis } from './month-axis'
import type { YearZone } from './year-view.types'

/** A zone's band down the drawing [px]. */
export interface ZoneBandPx {
  readonly zone: YearZone
  readonly topPx: number
  readonly tallPx: number
}

/** How wet the soil is at any place and time of the drawing [ratio of what it holds]. */
export type WetnessAt = (xPx: number, yPx: number) => number

/** Runs smoothly between the middles of months and the middles of zones, where it is the figure itself. */
export function wetnessAt(bands: readonly ZoneBandPx[], axis: MonthAxis): WetnessAt {
  const middles = bands.map(({ topPx, tallPx }) => topPx + tallPx / 2)
  return (xPx, yPx) => {
    const time = axis.timeAt(xPx)
    const after = middles.findIndex((middle) => middle >= yPx)
    const [upper, lower] = after < 0 ? [bands.length - 1, bands.length - 1] : [Math.max(0, after - 1), after]
    const [above, below] = [bands[upper]?.zone, bands[lower]?.zone]
    if (!above || !below) return 0
    const gapPx = (middles[lower] ?? 0) - (middles[upper] ?? 0)
    const share = gapPx > 0 ? eased((yPx - (middles[upper] ?? 0)) / gapPx) : 0
    return monthly(above, time) * (1 - share) + monthly(below, time) * share
  }
}

function monthly({ fullness }: YearZone, time: number): number {
  const from = Math.floor(time - 0.5)
  const share = eased(time - 0.5 - from)
  const value = (month: number) => fullness[(month + 12) % 12] ?? 0
  return value(from) * (1 - share) + value(from + 1) * share
}

function eased(share: number): number {
  return share * share * (3 - 2 * share)
}

/** A filled band of one word of wetness and wetter. */
export interface WetnessBand {
  readonly word: string
  readonly fill: string
  readonly d: string
}

/** Size of the grid the bands are drawn from. */
const GRID = { across: 169, down: 97 } as const

/** Bands from the driest up, each over the one before. */
export function wetnessBands(bands: readonly ZoneBandPx[], axis: MonthAxis): WetnessBand[] {
  const topPx = bands[0]?.topPx ?? 0
  const last = bands.at(-1)
  const tallPx = last ? last.topPx + last.tallPx - topPx : 0
  const [stepX, stepY] = [(axis.endPx - axis.startPx) / (GRID.across - 1), tallPx / (GRID.down - 1)]
  const at = wetnessAt(bands, axis)
  const values = Array.from({ length: GRID.across * GRID.down }, (_, index) =>
    at(axis.startPx + (index % GRID.across) * stepX, topPx + Math.floor(index / GRID.across) * stepY),
  )
  const place = ([column = 0, row = 0]: readonly number[]) =>
    `${n(axis.startPx + (column - 0.5) * stepX)} ${n(topPx + (row - 0.5) * stepY)}`
  const ringPath = (ring: readonly (readonly number[])[]) => `M${ring.map(place).join('L')}Z`
  return contours()
    .size([GRID.across, GRID.down])
    .thresholds([...wetnessLimits])(values)
    .map((band, step) => ({
      word: wetnessWords[step + 1] ?? '',
      fill: ramps.wetness[step + 1] ?? ramps.wetness[6],
      d: band.coordinates.flatMap((polygon) => polygon.map(ringPath)).join(''),
    }))
}

/** The word of a band, written where the band is widest and nothing else stands. */
export interface FieldWord {
  readonly word: string
  readonly fill: string
  readonly xPx: number
  readonly yPx: number
}

const WORD_PX = 15
const TRIES = { across: 26, downPx: 9 }

/** At most one word for each band, none touching what is taken. */
export function fieldWords(
  bands: readonly ZoneBandPx[],
  axis: MonthAxis,
  taken: readonly Box[],
): FieldWord[] {
  const at = wetnessAt(bands, axis)
  const boxes: Box[] = [...taken]
  return wetnessWords.flatMap((word, step) => {
    const halfPx = textWidthPx(word, 'serifItalic', WORD_PX) / 2 + 3
    const free = placesFor(bands, axis, halfPx).filter(
      (box) => !boxes.some((other) => overlaps(box, other)) && within(at, box, step),
    )
    const off = (box: Box) => Math.abs(at((box.leftPx + box.rightPx) / 2, box.topPx + 9) - middleOf(step))
    const [first, ...others] = free
    if (!first) return []
    const box = others.reduce((best, one) => (off(one) < off(best) ? one : best), first)
    boxes.push(box)
    const fill = ramps.wetness[step] ?? ramps.wetness[0]
    return [{ word, fill, xPx: (box.leftPx + box.rightPx) / 2, yPx: box.topPx + 13 }]
  })
}

/** Boxes all over the drawing that a word of this width could take. */
function placesFor(bands: readonly ZoneBandPx[], axis: MonthAxis, halfPx: number): Box[] {
  const topPx = (bands[0]?.topPx ?? 0) + 10
  const last = bands.at(-1)
  const rows = Math.floor((last ? last.topPx + last.tallPx - 10 - topPx : 0) / TRIES.downPx)
  const roomPx = axis.endPx - axis.startPx - halfPx * 2 - 4
  return Array.from({ length: rows * TRIES.across }, (_, index) => {
    const xPx = axis.startPx + 2 + halfPx + ((index % TRIES.across) / (TRIES.across - 1)) * roomPx
    const yPx = topPx + Math.floor(index / TRIES.across) * TRIES.downPx
    return { leftPx: xPx - halfPx, rightPx: xPx + halfPx, topPx: yPx - 9, bottomPx: yPx + 7 }
  })
}

function within(at: WetnessAt, box: Box, step: number): boolean {
  const middle = (box.leftPx + box.rightPx) / 2
  return [box.leftPx, middle, box.rightPx].every((xPx) =>
    [box.topPx, box.bottomPx].every((yPx) => wetnessStep(at(xPx, yPx)) === step),
  )
}

function middleOf(step: number): number {
  const from = wetnessLimits[step - 1] ?? 0
  return (from + (wetnessLimits[step] ?? from + 0.4)) / 2
}
