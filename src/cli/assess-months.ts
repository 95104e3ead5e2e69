import { jobsInMonth, type Job } from '#core/care'
import { monthNames, months, type Month } from '#core/units'
import { money, withUnit } from '#report'
import type { Findings, Plan } from '#plan'
import { wrapped } from './text-layout'

/** The year month by month: hours, jobs, and where to keep off. */
export function monthLines(plan: Plan, findings: Findings): readonly string[] {
  const { care } = findings
  const cost = care.costMinor === undefined ? '' : `, ${money(care.costMinor, plan.brief.currency)}`
  return [
    ...wrapped(
      `${withUnit(care.hoursTotal, 'h')} in an established year${cost}, the slope counted in. Jobs marked + are of the first year only.`,
    ),
    ...months.flatMap((month) => monthOf(month, findings)),
  ]
}

function monthOf(month: Month, { care, zoning }: Findings): readonly string[] {
  const letterOf = (zoneId: string) => zoning.zones.find(({ id }) => id === zoneId)?.letter ?? ''
  const jobs = jobsInMonth(care, month)
  const off = care.zones
    .flatMap(({ keepOff }) => keepOff)
    .filter((one) => one.months.includes(month))
    .map(({ zoneId, reason }) => `${letterOf(zoneId)} (${reason})`)
  return [
    `${monthNames[month]}: ${withUnit(care.hoursByMonth[month], 'h', 1)}`.replaceAll('\u00A0', ' '),
    ...grouped(jobs, letterOf).flatMap((words) => wrapped(words, '   ')),
    ...(off.length > 0 ? wrapped(`Better left alone: ${off.join(', ')}.`, '   ') : []),
  ]
}

/** Jobs of the same kind on the same days share a line. */
function grouped(jobs: readonly Job[], letterOf: (zoneId: string) => string): readonly string[] {
  const lines = new Map<string, { readonly letters: string[]; hours: number }>()
  for (const job of jobs) {
    const often = job.times > 1 ? `, ${job.times} times` : ''
    const key = `${job.fromDay} to ${job.toDay}: ${job.what}${often}${job.firstYearOnly ? ' +' : ''}`
    const line = lines.get(key) ?? { letters: [], hours: 0 }
    line.letters.push(letterOf(job.zoneId))
    lines.set(key, { letters: line.letters, hours: line.hours + job.hours })
  }
  return [...lines].map(
    ([key, { letters, hours }]) => `${key}, ${[...letters].sort().join(' ')}: ${withUnit(hours, 'h', 1)}`,
  )
}
