import { textWidthPx } from '../../drawing/text-width'
import { changeColour, changeWords } from '../../words/change-classes'
import { hours } from '../../drawing/measures'
import { wordOn } from '../../ramps'
import { classChange, roundedGain, type ComparedHours, type TrialRow } from './trial-rows'

/** Hours of one zone and season in both states, as bars with their change. */
interface TrialBar {
  readonly key: string
  readonly season: ComparedHours
  readonly leftPx: number
  readonly topPx: number
  readonly nowPx: number
  readonly thenPx: number
  readonly nowWords: string
  readonly thenWords: string
  /** The change with its sign; undefined where there is none. */
  readonly change: string | undefined
  readonly changePx: number
  readonly fill: string
  readonly ink: string
}

export interface TrialLine {
  readonly row: TrialRow
  readonly topPx: number
  readonly bars: readonly TrialBar[]
  readonly classWords: string
  readonly classAt: { readonly xPx: number; readonly yPx: number }
}

/** Sizes of the comparison [px]. */
const PX = { class: 120, gap: 16, row: 38, narrowRow: 136, figures: 106, narrowName: 78 } as const

/** Narrower sheets set the seasons one under the other. */
const NARROW_PX = 700

/** How the change's patch stands to its bars [px]. */
export const PATCH = { widePx: 54, tallPx: 20 } as const

/** Zone names take as much room as the longest needs, within limits [px]. */
const NAME_PX = { least: 110, most: 210, letter: 30 } as const

/** Every zone with its three seasons, all bars at one scale of hours. */
export function trialBars(rows: readonly TrialRow[], widthPx: number) {
  const narrow = widthPx < NARROW_PX
  const sheet = { widthPx, most: mostHours(rows), namePx: namePx(rows) }
  const rowPx = narrow ? PX.narrowRow : PX.row
  return {
    ...{ narrow, rowPx, tallPx: rows.length * rowPx },
    lines: rows.map((row, at) => (narrow ? narrowLine(row, at, sheet) : wideLine(row, at, sheet))),
    columnPx: (at: number) => columnPx(sheet, at),
  }
}

interface Sheet {
  readonly widthPx: number
  readonly most: number
  readonly namePx: number
}

function mostHours(rows: readonly TrialRow[]): number {
  return Math.max(1, ...rows.flatMap(({ seasons }) => seasons.flatMap(({ now, then }) => [now, then])))
}

function namePx(rows: readonly TrialRow[]): number {
  const widest = Math.max(0, ...rows.map(({ zone }) => textWidthPx(zone.name, 'serif', 15)))
  return Math.min(NAME_PX.most, Math.max(NAME_PX.least, widest + NAME_PX.letter))
}

const eachPx = ({ widthPx, namePx: name }: Sheet) => (widthPx - name - PX.class - PX.gap * 2) / 3
const columnPx = (sheet: Sheet, at: number) => sheet.namePx + at * (eachPx(sheet) + PX.gap)

function wideLine(row: TrialRow, at: number, sheet: Sheet): TrialLine {
  const topPx = at * PX.row
  return {
    ...{ row, topPx, classWords: classChange(row) },
    classAt: { xPx: sheet.widthPx - 2, yPx: topPx + 23 },
    bars: row.seasons.map((season, column) =>
      barOf(season, {
        ...{ leftPx: columnPx(sheet, column), topPx: topPx + 6 },
        ...{ most: sheet.most, roomPx: eachPx(sheet) },
      }),
    ),
  }
}

function narrowLine(row: TrialRow, at: number, { widthPx, most }: Sheet): TrialLine {
  const topPx = at * PX.narrowRow
  return {
    ...{ row, topPx, classWords: classChange(row) },
    classAt: { xPx: 2, yPx: topPx + 32 },
    bars: row.seasons.map((season, line) =>
      barOf(season, {
        leftPx: PX.narrowName,
        topPx: topPx + 40 + line * 31,
        most,
        roomPx: widthPx - PX.narrowName,
      }),
    ),
  }
}

interface BarRoom {
  readonly leftPx: number
  readonly topPx: number
  readonly roomPx: number
  readonly most: number
}

function barOf(season: ComparedHours, { leftPx, topPx, roomPx, most }: BarRoom): TrialBar {
  const { now, then } = season
  const gain = roundedGain(now, then)
  const longPx = Math.max(10, roomPx - PX.figures)
  const fill = changeColour(gain)
  return {
    ...{ key: season.key, season, leftPx, topPx, fill, ink: wordOn(fill) },
    nowPx: (now / most) * longPx,
    thenPx: (then / most) * longPx,
    nowWords: hours(now),
    thenWords: hours(then),
    change: gain === 0 ? undefined : changeWords(gain),
    changePx: leftPx + roomPx - PATCH.widePx,
  }
}
