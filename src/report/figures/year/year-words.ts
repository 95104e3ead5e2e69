import { monthNames, months } from '#core/units'
import { hours } from '../../drawing/measures'
import { fullWords, jobRuns, type JobRun } from './job-lanes'
import { keepOffWords } from './job-words'
import type { YearView } from './year-view.types'

/** The year in words, for those who do not see it. */
export function yearWords(view: YearView): string {
  const zones = view.zones.map((zone) => {
    const jobs = jobRuns(zone.jobs).map((run) => `${fullWords(run)}, ${runDays(run)}`)
    const off = zone.keepOff.map(
      ({ months: kept, reason }) =>
        `${keepOffWords[reason]} in ${kept.map((month) => monthNames[month]).join(', ')}`,
    )
    return `${zone.letter} ${zone.name}: ${[...jobs, ...off].join('; ') || 'nothing to do'}.`
  })
  const hoursSaid = months.map((month) => `${monthNames[month]} ${hours(view.hoursByMonth[month])}`)
  return `${zones.join(' ')} Hours: ${hoursSaid.join(', ')}.`
}

/** "4 March to 20 June". */
function runDays({ from, to }: JobRun): string {
  const first = from.month === to.month ? `${from.day}` : `${from.day} ${monthNames[from.month]}`
  return `${first} to ${to.day} ${monthNames[to.month]}`
}
