import type { Month } from '#core/units'
import type { Box } from '../../drawing/path'
import { COMPACT_PX } from '../../drawing/scale'
import { fullWords, jobRuns, LANE_PX, laneBlocks, laneCount, type JobRun, type LaneBlock } from './job-lanes'
import { fieldWords, wetnessBands, type FieldWord, type WetnessBand, type ZoneBandPx } from './wetness-field'
import type { MonthAxis } from './month-axis'
import { yearAxis } from './year-room'
import type { YearView, YearZone } from './year-view.types'

/** A zone's band with what is written in it. */
export interface GroundBand extends ZoneBandPx {
  readonly blocks: readonly LaneBlock[]
}

/** The year as ground: distance down, months across. */
export interface GroundSheet {
  readonly axis: MonthAxis
  readonly bands: readonly GroundBand[]
  readonly wetness: readonly WetnessBand[]
  readonly words: readonly FieldWord[]
  readonly topPx: number
  readonly bottomPx: number
  /** Every band is as tall as its zone is long. */
  readonly trueLengths: boolean
  /** Jobs by number, where the drawing is too narrow for words. */
  readonly numbered: readonly { readonly number: string; readonly zone: YearZone; readonly run: JobRun }[]
}

/** Height shared out by length, and the least a zone gets [px]. */
const SHARED_PX = { wide: 460, compact: 360 } as const
const LEAST_PX = 54
const PAD_PX = 8

/** Room above the months' names for rain and drying [px]. */
export const RAIN_PX = 74
export const NAMES_PX = 26

export function groundSheet(view: YearView, widthPx: number, month: Month | undefined): GroundSheet {
  const compact = widthPx < COMPACT_PX
  const axis = yearAxis(widthPx, 'ground', month)
  const topPx = (compact ? 0 : RAIN_PX) + NAMES_PX
  const numbered = compact ? numberedRuns(view) : []
  const words = compact
    ? (run: JobRun) => numbered.find(({ run: other }) => other.key === run.key)?.number ?? ''
    : fullWords
  const bands = stacked(view, (zone) => laneBlocks(zone, axis, words), {
    topPx,
    sharedPx: compact ? SHARED_PX.compact : SHARED_PX.wide,
  })
  const last = bands.at(-1)
  return {
    ...{ axis, bands, topPx, numbered },
    wetness: wetnessBands(bands, axis),
    words: compact
      ? []
      : fieldWords(
          bands,
          axis,
          bands.flatMap((band) => [...blockBoxes(band), edgeOf(band, widthPx)]),
        ),
    bottomPx: last ? last.topPx + last.tallPx : topPx,
    trueLengths: isTrue(bands),
  }
}

function numberedRuns(view: YearView): GroundSheet['numbered'] {
  let number = 0
  return view.zones.flatMap((zone) =>
    jobRuns(zone.jobs).map((run) => ({ number: String(++number), zone, run })),
  )
}

function stacked(
  view: YearView,
  blocksOf: (zone: YearZone) => LaneBlock[],
  room: { readonly topPx: number; readonly sharedPx: number },
): GroundBand[] {
  const lengthM = view.zones.reduce((sum, zone) => sum + zone.lengthM, 0)
  let topPx = room.topPx
  return view.zones.map((zone) => {
    const blocks = blocksOf(zone)
    const needPx = laneCount(blocks) * LANE_PX + PAD_PX * 2
    const tallPx = Math.max(needPx, LEAST_PX, (zone.lengthM / lengthM) * room.sharedPx)
    const band = { zone, blocks, topPx, tallPx }
    topPx += tallPx
    return band
  })
}

function isTrue(bands: readonly GroundBand[]): boolean {
  const perM = bands.map(({ zone, tallPx }) => tallPx / zone.lengthM)
  return Math.max(...perM) - Math.min(...perM) < 0.01
}

/** Where a block's words and line stand [px]. */
export function blockBox(band: GroundBand, block: LaneBlock): Box {
  const topPx = laneTopPx(band, block)
  return {
    leftPx: Math.min(block.text.leftPx, block.line?.fromPx ?? Infinity),
    rightPx: Math.max(block.text.leftPx + block.text.widthPx, block.line?.toPx ?? -Infinity),
    topPx,
    bottomPx: topPx + LANE_PX - 1,
  }
}

/** Lanes stand in the middle of their band. */
export function laneTopPx(band: GroundBand, block: LaneBlock): number {
  const usedPx = laneCount(band.blocks) * LANE_PX
  return band.topPx + (band.tallPx - usedPx) / 2 + block.lane * LANE_PX
}

/** The line between two zones, kept clear of words. */
function edgeOf({ topPx }: GroundBand, widthPx: number): Box {
  return { leftPx: 0, rightPx: widthPx, topPx: topPx - 1, bottomPx: topPx + 1 }
}

function blockBoxes(band: GroundBand): Box[] {
  return band.blocks.map((block) => blockBox(band, block))
}
