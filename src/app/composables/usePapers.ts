import { careCalendar, loadShadeTables, loadSources, plantSchedule, zoneSchedule } from '#io'
import { reportHtml } from '#report'
import { savePlan, type Findings, type Plan } from '#plan'
import { download, fileStem } from './download'

/** A paper or file to hand over. */
export interface Paper {
  readonly id: string
  readonly name: string
  readonly tells: string
  readonly file: string
  /** What a program must understand to open it. */
  readonly kind: string
  readonly make: () => string | Promise<string>
}

/** Every paper and file of a plan; the calendar begins in the given year. */
export function papersOf(plan: Plan, findings: Findings, year: number): readonly Paper[] {
  const stem = fileStem(plan.name)
  return [
    {
      id: 'report',
      name: 'Report',
      tells: 'every drawing, figure and reason, to print or send',
      file: `${stem}.html`,
      kind: 'text/html',
      make: () => reportHtml(plan, findings, { shade: loadShadeTables(), sources: loadSources() }),
    },
    {
      id: 'calendar',
      name: `Calendar from ${year}`,
      tells: 'each job from its first to its last good day, for a calendar program',
      file: `${stem}.ics`,
      kind: 'text/calendar',
      make: () => careCalendar(plan, findings, year),
    },
    {
      id: 'plants',
      name: 'Plants to order',
      tells: 'numbers, spacing, law and poison, as a table (CSV)',
      file: `${stem}-plants.csv`,
      kind: 'text/csv',
      make: () => plantSchedule(plan, findings),
    },
    {
      id: 'zones',
      name: 'Zones',
      tells: 'areas, slopes, scores, cover and hours, as a table (CSV)',
      file: `${stem}-zones.csv`,
      kind: 'text/csv',
      make: () => zoneSchedule(plan, findings),
    },
    {
      id: 'plan',
      name: 'The plan itself',
      tells: 'opens again here, with everything you measured and decided',
      file: `${stem}.lynchet.json`,
      kind: 'application/json',
      make: () => savePlan(plan),
    },
  ]
}

/** Makes a paper and hands it to the person. */
export async function handOver(paper: Paper): Promise<void> {
  download(paper.file, await paper.make(), paper.kind)
}
