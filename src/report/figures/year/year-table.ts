import { monthNames, months } from '#core/units'
import { hours } from '../../drawing/measures'
import type { TableTwin } from '../../figures/strips/table-twin.types'
import { wetnessWord } from '../../figures/strips/wetness-classes'
import { dayRange, jobTitle, keepOffWords } from './job-words'
import type { YearView } from './year-view.types'

/** Every job of the year, month by month. */
export function jobsTable(view: YearView): TableTwin {
  const jobs = view.zones
    .flatMap((zone) => zone.jobs.map((job) => ({ zone, job })))
    .sort((one, other) => one.job.month - other.job.month || one.job.fromDay - other.job.fromDay)
  return {
    caption: view.kind === 'first' ? 'Jobs of the first year' : 'Jobs of an established year',
    columns: ['Good days', 'Zone', 'Job and time', 'Added by the slope'],
    rows: jobs.map(({ zone, job }) => [
      dayRange(job),
      `${zone.letter} ${zone.name}`,
      jobTitle(job),
      hours(job.slopeHours),
    ]),
  }
}

/** Hours, wetness and keep-offs by month. */
export function monthsTable(view: YearView): TableTwin {
  return {
    caption: 'The year by month',
    columns: [
      'Month',
      'Hours',
      'On steep ground',
      'Rain',
      ...view.zones.map(({ letter, name }) => `${letter} ${name}`),
    ],
    rows: months.map((month) => [
      monthNames[month],
      hours(view.hoursByMonth[month]),
      hours(view.steepHoursByMonth[month]),
      `${Math.round(view.rainMm[month])} mm`,
      ...view.zones.map((zone) =>
        [
          wetnessWord(zone.fullness[month]),
          ...zone.keepOff
            .filter(({ months: kept }) => kept.includes(month))
            .map(({ reason }) => keepOffWords[reason]),
        ].join('; '),
      ),
    ]),
    ...(view.hoursAvailable !== undefined && {
      note: `You have ${hours(view.hoursAvailable / 12)} a month.`,
    }),
  }
}
