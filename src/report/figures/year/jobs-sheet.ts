import type { JobMark } from '#core/care'
import { months, monthNames, type Month } from '#core/units'
import { COMPACT_PX } from '../../drawing/scale'
import { wrapWords } from '../../figures/strips/fit-words'
import {
  areaPerHour,
  drawnMark,
  placedMarks,
  type DrawnMark,
  type JobCell,
  type PlacedMark,
} from './job-marks'
import { dayRange, jobTitle, keepOffWords, timeWords } from './job-words'
import type { MonthAxis } from './month-axis'
import { yearAxis } from './year-room'
import type { YearView, YearZone } from './year-view.types'

/** A line of the written month. */
interface MonthLine {
  readonly kind: 'job' | 'off' | 'nothing' | 'note'
  readonly words: string
  readonly yPx: number
  /** The job's mark, at the same scale as all others. */
  readonly mark: DrawnMark | undefined
  readonly markYPx: number
  readonly work: JobMark | undefined
}

/** A zone's row of the year. */
interface JobsRow {
  readonly zone: YearZone
  readonly topPx: number
  readonly tallPx: number
  readonly marks: readonly PlacedMark[]
  readonly lines: readonly MonthLine[]
}

/** The year as jobs: zones down, months across, a mark for each job. */
export interface JobsSheet {
  readonly axis: MonthAxis
  readonly rows: readonly JobsRow[]
  readonly bottomPx: number
  /** Area a mark has for each hour [px² per h]. */
  readonly areaPx2PerHour: number
}

export const HEAD_PX = 34
const LEAST_PX = { wide: 92, compact: 56 } as const
/** Kept free for a keep-off's words at the top of a row [px]. */
const OFF_WORDS_PX = 16
/** A mark beside written words may be so large [px]. */
const MARK_MOST_PX = 38
const MARK_LEFT_PX = 22
export const LINE_LEFT_PX = 46

/** Heights of the written lines [px]. */
const LINE_PX: Readonly<Record<MonthLine['kind'], number>> = { job: 18, off: 18, nothing: 18, note: 15 }

export function jobsSheet(view: YearView, widthPx: number, month: Month | undefined): JobsSheet {
  const axis = yearAxis(widthPx, 'jobs', month)
  const compact = widthPx < COMPACT_PX
  const wide = axis.columns.find((column) => column.month === axis.wide)
  let topPx = HEAD_PX
  const rows = view.zones.map((zone) => {
    const words = wide ? writtenMonth(zone, wide.month, wide.widthPx) : []
    const needPx = words.reduce((sum, { kind }) => sum + LINE_PX[kind], 22)
    const row = { zone, words, topPx, tallPx: Math.max(compact ? LEAST_PX.compact : LEAST_PX.wide, needPx) }
    topPx += row.tallPx
    return row
  })
  const cells = rows.map((row) => cellsOf(row, axis, compact))
  const areaPx2PerHour = areaPerHour(
    cells.flat(),
    rows.flatMap(({ words }) => words.flatMap(({ job, roomPx }) => (job && roomPx ? [{ job, roomPx }] : []))),
  )
  return {
    axis,
    bottomPx: topPx,
    areaPx2PerHour,
    rows: rows.map(({ zone, words, topPx: top, tallPx }, at) => ({
      ...{ zone, topPx: top, tallPx },
      marks: (cells[at] ?? []).flatMap((cell) => placedMarks(cell, areaPx2PerHour)),
      lines: setLines(words, top, areaPx2PerHour),
    })),
  }
}

function cellsOf(
  { zone, topPx, tallPx }: { readonly zone: YearZone; readonly topPx: number; readonly tallPx: number },
  axis: MonthAxis,
  compact: boolean,
): JobCell[] {
  const headPx = zone.keepOff.length > 0 && !compact ? OFF_WORDS_PX : 0
  return months.flatMap((month) => {
    const jobs = zone.jobs.filter((job) => job.month === month)
    const column = axis.columns[month]
    if (jobs.length === 0 || !column || month === axis.wide) return []
    return [
      {
        jobs,
        leftPx: column.leftPx,
        widthPx: column.widthPx,
        topPx: topPx + headPx,
        heightPx: tallPx - headPx,
      },
    ]
  })
}

interface MonthWords {
  readonly kind: MonthLine['kind']
  readonly words: string
  readonly job?: YearZone['jobs'][number]
  /** Height of all lines of the job [px]. */
  readonly roomPx?: number
}

/** Jobs told with their days and how; the others by their title. */
const MOST_TOLD = 2

/** What a month asks of a zone, written out to a width. */
function writtenMonth(zone: YearZone, month: Month, widthPx: number): MonthWords[] {
  const note = (text: string, most: number) =>
    wrapWords(text, { widthPx: widthPx - LINE_LEFT_PX - 8, face: 'sans', sizePx: 12, most }).map(
      (words): MonthWords => ({ kind: 'note', words }),
    )
  const title = (kind: MonthLine['kind'], text: string) =>
    wrapWords(text, { widthPx: widthPx - LINE_LEFT_PX - 8, face: 'sansBold', sizePx: 14, most: 2 }).map(
      (words): MonthWords => ({ kind, words }),
    )
  const off = zone.keepOff
    .filter(({ months: kept }) => kept.includes(month))
    .flatMap(({ reason, text }) => [
      ...title('off', capital(keepOffWords[reason])),
      ...note(firstSentence(text), 2),
    ])
  const jobs = zone.jobs.filter((job) => job.month === month)
  const told = jobs.flatMap((job, at) => {
    const [first, ...rest] = title('job', jobTitle(job))
    const notes =
      at < MOST_TOLD ? note(`${dayRange(job)}. ${firstSentence(job.how)}`, 2) : note(dayRange(job), 1)
    const lines = [...rest, ...notes].reduce((sum, { kind }) => sum + LINE_PX[kind], LINE_PX.job)
    return first ? [{ ...first, job, roomPx: Math.min(lines, MARK_MOST_PX) }, ...rest, ...notes] : []
  })
  if (told.length > 0) return [...off, ...told]
  return [
    ...off,
    ...(off.length === 0 ? title('nothing', 'Nothing') : []),
    ...note(nextWords(zone, month), 3),
  ]
}

function nextWords(zone: YearZone, month: Month): string {
  const later = [...zone.jobs].sort((one, other) => wait(one.month, month) - wait(other.month, month))
  const next = later.find((job) => job.month !== month)
  return next
    ? `Next: ${next.what}, ${timeWords(next.hours)}, in ${monthNames[next.month]}.`
    : 'Nothing all year.'
}

function wait(month: Month, from: Month): number {
  return (month - from + 12) % 12
}

function firstSentence(text: string): string {
  const end = text.indexOf('. ')
  return end < 0 ? text : text.slice(0, end + 1)
}

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1)
}

function setLines(words: readonly MonthWords[], topPx: number, areaPx2PerHour: number): MonthLine[] {
  let yPx = topPx + 8
  return words.map(({ kind, words: line, job, roomPx = 0 }) => {
    yPx += LINE_PX[kind]
    const mark = job ? drawnMark(job.mark, job.hours * areaPx2PerHour) : undefined
    return { kind, words: line, yPx, mark, work: job?.mark, markYPx: yPx - LINE_PX[kind] + 4 + roomPx / 2 }
  })
}

export const markLeftPx = MARK_LEFT_PX
