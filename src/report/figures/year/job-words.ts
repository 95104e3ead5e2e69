import type { Job, KeepOff } from '#core/care'
import { monthNames, type Month } from '#core/units'
import { hours } from '../../drawing/measures'

/** Hours below a tenth are said in minutes. */
export function timeWords(time: number): string {
  return time < 0.95 ? `${Math.max(1, Math.round((time * 60) / 5) * 5)} min` : hours(time)
}

/** "Mow twice, 0.2 h". */
export function jobTitle(job: Job): string {
  const often = job.times === 1 ? '' : job.times === 2 ? ' twice' : ` ${job.times} times`
  return `${job.what}${often}, ${timeWords(job.hours)}`
}

/** First to last good day: "4 to 20 August". */
export function dayRange(job: Pick<Job, 'month' | 'fromDay' | 'toDay'>): string {
  const name = monthNames[job.month]
  return job.fromDay === job.toDay ? `${job.fromDay} ${name}` : `${job.fromDay} to ${job.toDay} ${name}`
}

/** Why to stay away, in a few words. */
export const keepOffWords: Readonly<Record<KeepOff['reason'], string>> = {
  wet: 'keep off: too wet',
  birds: 'no cutting: birds may nest',
  frost: 'keep off: frost',
}

/** Runs of months that follow one another within the year. */
export function monthRuns(months: readonly Month[]): { readonly from: Month; readonly to: Month }[] {
  const runs: { from: Month; to: Month }[] = []
  for (const month of [...months].sort((one, other) => one - other)) {
    const last = runs.at(-1)
    if (last && month === last.to + 1) last.to = month
    else runs.push({ from: month, to: month })
  }
  return runs
}
