import type { Job } from '#core/care'
import { daysInMonth, type Month } from '#core/units'
import { textWidthPx } from '../../drawing/text-width'
import { keepOffWords, monthRuns, timeWords } from './job-words'
import type { MonthAxis } from './month-axis'
import type { YearZone } from './year-view.types'

/** A job over all the weeks it may be done in, months of one operation that follow one another joined. */
export interface JobRun {
  readonly key: string
  readonly what: string
  readonly from: { readonly month: Month; readonly day: number }
  readonly to: { readonly month: Month; readonly day: number }
  readonly times: number
  readonly hours: number
}

/** Words with, or without, a dimension line under them, in a lane of their zone. */
export interface LaneBlock {
  readonly key: string
  readonly kind: 'job' | 'keep-off' | 'month'
  readonly words: string
  readonly lane: number
  /** Both ends of the dimension line [px]; undefined for words alone. */
  readonly line: { readonly fromPx: number; readonly toPx: number } | undefined
  readonly text: { readonly leftPx: number; readonly widthPx: number }
}

export const LANE_PX = 25
const TYPE_PX = 12
const PAD_PX = 4
const AIR_PX = 4

/** Windows this close are one [d]. */
const JOIN_DAYS = 8

/** Jobs of a zone, each operation's neighbouring months joined. */
export function jobRuns(jobs: readonly Job[]): JobRun[] {
  const runs: (JobRun & { operation: string })[] = []
  for (const job of [...jobs].sort((one, other) => one.month - other.month || one.fromDay - other.fromDay)) {
    const at = runs.findLastIndex(({ operation, to }) => operation === job.operation && joins(to, job))
    const run = runs[at]
    if (run)
      runs[at] = {
        ...run,
        to: { month: job.month, day: job.toDay },
        times: run.times + job.times,
        hours: run.hours + job.hours,
      }
    else
      runs.push({
        ...{ key: job.id, operation: job.operation, what: job.what, times: job.times, hours: job.hours },
        from: { month: job.month, day: job.fromDay },
        to: { month: job.month, day: job.toDay },
      })
  }
  return runs
}

function joins(to: JobRun['to'], job: Job): boolean {
  if (to.month === job.month) return job.fromDay - to.day <= JOIN_DAYS
  return job.month === to.month + 1 && daysInMonth[to.month] - to.day + job.fromDay <= JOIN_DAYS
}

/** How a job is called on the drawing: in full, or by a number that a list below explains. */
export type RunWords = (run: JobRun) => string

export function fullWords(run: JobRun): string {
  return `${run.what}${run.times === 1 ? '' : run.times === 2 ? ' twice' : `, ${run.times} times`}, ${timeWords(run.hours)}`
}

/** Everything written into a zone's band, packed into lanes so that nothing touches. */
export function laneBlocks(zone: YearZone, axis: MonthAxis, words: RunWords = fullWords): LaneBlock[] {
  const keepOff = zone.keepOff.flatMap(({ months, reason }) =>
    monthRuns(months)
      .map(({ from, to }) => ({ from, roomPx: axis.x(to, daysInMonth[to]) - axis.x(from, 0) }))
      .map(({ from, roomPx }) => {
        const told = keepOffWords[reason]
        const short = textWidthPx(told, 'sans', TYPE_PX) > roomPx * 2 ? 'off' : told
        return wordsAt(
          { key: `${zone.id}-${reason}-${from}`, kind: 'keep-off', words: short },
          axis.x(from, 0) + 4,
          axis,
        )
      }),
  )
  const month = axis.wide === undefined ? [] : [monthWords(zone, axis, axis.wide)]
  const jobs = jobRuns(zone.jobs).map((run) => jobBlock(run, axis, words(run)))
  return packed([...month, ...[...jobs, ...keepOff].sort((one, other) => leftOf(one) - leftOf(other))])
}

type Unplaced = Omit<LaneBlock, 'lane'>

function monthWords(zone: YearZone, axis: MonthAxis, month: Month): Unplaced {
  const [wet, dry] = [Math.round(zone.wetDays[month]), Math.round(zone.dryDays[month])]
  const days = [wet > 0 ? `wet ${wet} d` : '', dry > 0 ? `dry ${dry} d` : ''].filter(Boolean).join(', ')
  const words = `${Math.round(zone.fullness[month] * 100)} % full${days ? `, ${days}` : ''}`
  return wordsAt({ key: `${zone.id}-month`, kind: 'month', words }, axis.x(month, 0) + 4, axis)
}

function jobBlock(run: JobRun, axis: MonthAxis, words: string): Unplaced {
  const fromPx = axis.x(run.from.month, run.from.day - 1)
  const toPx = Math.max(fromPx + 8, axis.x(run.to.month, run.to.day))
  return { ...wordsAt({ key: run.key, kind: 'job', words }, fromPx, axis), line: { fromPx, toPx } }
}

function wordsAt(
  block: Pick<LaneBlock, 'key' | 'kind' | 'words'>,
  leftPx: number,
  axis: MonthAxis,
): Unplaced {
  const widthPx = textWidthPx(block.words, 'sansBold', TYPE_PX) + PAD_PX * 2
  const kept = Math.max(axis.startPx + 2, Math.min(leftPx, axis.endPx - widthPx - 2))
  return { ...block, line: undefined, text: { leftPx: kept, widthPx } }
}

function leftOf({ line, text }: Unplaced): number {
  return Math.min(text.leftPx, line?.fromPx ?? Infinity)
}

function rightOf({ line, text }: Unplaced): number {
  return Math.max(text.leftPx + text.widthPx, line?.toPx ?? -Infinity)
}

/** The first lane in which a block touches nothing. */
function packed(blocks: readonly Unplaced[]): LaneBlock[] {
  const lanes: Unplaced[][] = []
  return blocks.map((block) => {
    const touches = (other: Unplaced) =>
      leftOf(block) < rightOf(other) + AIR_PX && leftOf(other) < rightOf(block) + AIR_PX
    const free = lanes.findIndex((lane) => !lane.some(touches))
    const lane = free < 0 ? lanes.length : free
    ;(lanes[lane] ??= []).push(block)
    return { ...block, lane }
  })
}

/** Lanes a zone needs. */
export function laneCount(blocks: readonly LaneBlock[]): number {
  return blocks.reduce((most, { lane }) => Math.max(most, lane + 1), 0)
}
