import { describe, expect, it } from 'vitest'
import type { Job, JobMark } from '#core/care'
import { daysInMonth, months } from '#core/units'
import { overlaps } from '../../src/report/drawing/path'
import { blockBox, groundSheet } from '../../src/report/figures/year/ground-sheet'
import { drawnMark } from '../../src/report/figures/year/job-marks'
import { jobRuns } from '../../src/report/figures/year/job-lanes'
import { dayRange, jobTitle } from '../../src/report/figures/year/job-words'
import { jobsSheet } from '../../src/report/figures/year/jobs-sheet'
import { monthAxis } from '../../src/report/figures/year/month-axis'
import { monthBars } from '../../src/report/figures/year/month-bars'
import { wetnessWord } from '../../src/report/figures/strips/wetness-classes'
import { wetnessAt } from '../../src/report/figures/year/wetness-field'
import { jobsTable, monthsTable } from '../../src/report/figures/year/year-table'
import { yearView } from '../../src/report/figures/year/year-view'
import MonthList from '../../src/report/figures/year/MonthList.vue'
import YearFigure from '../../src/report/figures/year/YearFigure.vue'
import { areaOf, demos, wordsOf, written } from './hung'

const kinds = ['established', 'first'] as const
const cases = demos.flatMap(({ name, plan, findings }) =>
  kinds.flatMap((kind) =>
    [1140, 768, 320].map((widthPx) => ({
      name,
      kind,
      widthPx,
      view: yearView(plan, findings, kind),
      findings,
    })),
  ),
)

describe.each(cases)('the $kind year of $name at $widthPx px', ({ view, kind, widthPx, findings }) => {
  const ground = groundSheet(view, widthPx, 8)
  const jobs = jobsSheet(view, widthPx, 8)
  const boxes = ground.bands.flatMap((band) => band.blocks.map((block) => blockBox(band, block)))

  it('no label or dimension line touches another, and all stay on the sheet', () => {
    boxes.forEach((box, at) => {
      expect(box.leftPx).toBeGreaterThanOrEqual(ground.axis.startPx)
      expect(box.rightPx).toBeLessThanOrEqual(ground.axis.endPx + 0.01)
      for (const other of boxes.slice(at + 1)) expect(overlaps(box, other)).toBe(false)
    })
  })

  it('words of wetness keep off labels and stand on ground of their word', () => {
    const at = wetnessAt(ground.bands, ground.axis)
    for (const { xPx, yPx, word } of ground.words) {
      const box = { leftPx: xPx - 10, rightPx: xPx + 10, topPx: yPx - 10, bottomPx: yPx }
      expect(boxes.some((other) => overlaps(box, other))).toBe(false)
      expect(wetnessWord(at(xPx, yPx - 4))).toBe(word)
    }
  })

  it('wetness in the middle of a zone and month is the figure itself', () => {
    const at = wetnessAt(ground.bands, ground.axis)
    for (const { zone, topPx, tallPx } of ground.bands)
      for (const month of months) {
        const xPx = ground.axis.x(month, daysInMonth[month] / 2)
        expect(at(xPx, topPx + tallPx / 2)).toBeCloseTo(zone.fullness[month], 6)
      }
  })

  it('dimension lines run from the first to the last good day', () => {
    for (const band of ground.bands) {
      const runs = jobRuns(band.zone.jobs)
      const lines = band.blocks.filter(({ kind: what }) => what === 'job')
      expect(lines).toHaveLength(runs.length)
      for (const run of runs) {
        const line = lines.find(({ key }) => key === run.key)?.line
        expect(line?.fromPx).toBeCloseTo(ground.axis.x(run.from.month, run.from.day - 1), 6)
        const endPx = ground.axis.x(run.to.month, run.to.day)
        expect(line?.toPx).toBeCloseTo(Math.max(endPx, (line?.fromPx ?? 0) + 8), 6)
      }
    }
  })

  it('joined runs hold all hours and all times of their jobs', () => {
    for (const { jobs: own } of view.zones) {
      const runs = jobRuns(own)
      const sum = (rows: readonly { readonly hours: number }[]) =>
        rows.reduce((all, row) => all + row.hours, 0)
      expect(sum(runs)).toBeCloseTo(sum(own), 9)
      expect(runs.reduce((all, run) => all + run.times, 0)).toBe(own.reduce((all, job) => all + job.times, 0))
    }
  })

  it('marks have areas in proportion to their hours', () => {
    const marks = jobs.rows.flatMap(({ marks: placed }) => placed)
    for (const { areaPx2, job } of marks) expect(areaPx2).toBeCloseTo(job.hours * jobs.areaPx2PerHour, 6)
  })

  it('marks keep inside their month and zone, and touch no other', () => {
    for (const row of jobs.rows) {
      row.marks.forEach((mark, at) => {
        const column = jobs.axis.columns[mark.job.month]
        expect(mark.xPx - mark.reachPx).toBeGreaterThanOrEqual(column?.leftPx ?? Infinity)
        expect(mark.xPx + mark.reachPx).toBeLessThanOrEqual((column?.leftPx ?? 0) + (column?.widthPx ?? 0))
        expect(mark.yPx - mark.reachPx).toBeGreaterThanOrEqual(row.topPx - 0.01)
        expect(mark.yPx + mark.reachPx).toBeLessThanOrEqual(row.topPx + row.tallPx + 0.01)
        for (const other of row.marks.slice(at + 1)) {
          const reach = mark.reachPx + other.reachPx
          const apart = Math.abs(mark.xPx - other.xPx) > reach || Math.abs(mark.yPx - other.yPx) > reach
          expect(apart).toBe(true)
        }
      })
    }
  })

  it('bars of the months are as high as their hours', () => {
    const { bars } = monthBars(view, jobs.axis, 110)
    const [first] = bars.filter(({ hours }) => hours > 0)
    for (const bar of bars) {
      const perHour = (first?.tallPx ?? 0) / (first?.hours ?? 1)
      expect(bar.tallPx).toBeCloseTo(bar.hours * perHour, 6)
      expect(bar.steepPx).toBeLessThanOrEqual(bar.tallPx + 1e-9)
    }
  })

  it('the established year has the hours of the findings, month by month', () => {
    if (kind === 'first')
      return expect(view.hoursTotal).toBeGreaterThanOrEqual(findings.care.hoursTotal - 1e-9)
    for (const month of months) {
      expect(view.hoursByMonth[month]).toBeCloseTo(findings.care.hoursByMonth[month], 9)
      expect(view.steepHoursByMonth[month]).toBeCloseTo(findings.care.steepHoursByMonth[month], 9)
    }
  })

  it('is written in both readings with no browser at hand, and no figure is missing', async () => {
    for (const reading of ['ground', 'jobs']) {
      const html = await written(YearFigure, { view, reading, widthPx, month: 8 })
      expect(html).not.toMatch(/NaN|undefined|Infinity/)
    }
  })
})

describe.each(demos)('the month’s list and twins of $name', ({ plan, findings }) => {
  const view = yearView(plan, findings)

  it('every job of the month is listed with its days', async () => {
    for (const month of months) {
      const words = wordsOf(await written(MonthList, { view, month }))
      for (const job of view.zones.flatMap(({ jobs }) => jobs).filter((one) => one.month === month)) {
        expect(words).toContain(jobTitle(job).replace(/\u00A0/g, ' '))
        expect(words).toContain(dayRange(job))
      }
    }
  })

  it('the twin has every job once, and the hours of every month as drawn', () => {
    const jobs = view.zones.flatMap((zone) => zone.jobs)
    expect(jobsTable(view).rows).toHaveLength(jobs.length)
    const { bars } = monthBars(view, monthAxis({ startPx: 0, endPx: 1200 }), 100)
    const drawn = bars.map(({ words, hours }) => (hours === 0 ? '0.0 h' : words.replace(/\u00A0/g, ' ')))
    expect(monthsTable(view).rows.map((row) => row[1]?.replace(/\u00A0/g, ' '))).toEqual(drawn)
  })
})

describe('marks', () => {
  const marks: readonly JobMark[] = ['mow', 'cut', 'weed', 'plant', 'rake', 'look']

  it.each(marks)('shoelace formula: the outline of %s has the area asked for', (mark) => {
    const areaPx2 = 4000
    const { d } = drawnMark(mark, areaPx2)
    const outer = d.split('Z')[0] ?? ''
    expect(Math.abs(areaOf(outer) - areaPx2) / areaPx2).toBeLessThan(0.01)
  })
})

describe('months across', () => {
  it('a wide month is so many times as wide, and the year still fills the sheet', () => {
    const axis = monthAxis({ startPx: 100, endPx: 1000 }, 7, 4)
    const [january, august] = [axis.columns[0], axis.columns[7]]
    expect(august?.widthPx).toBeCloseTo((january?.widthPx ?? 0) * 4, 9)
    expect(axis.columns.reduce((sum, { widthPx }) => sum + widthPx, 0)).toBeCloseTo(900, 9)
    expect(axis.timeAt(axis.x(7, 15.5))).toBeCloseTo(7.5, 9)
  })

  it('months of one operation that follow on are one run; others are not', () => {
    const job = (month: Job['month'], operation = 'mow'): Job => ({
      ...{ id: `${operation}-${month}`, zoneId: 'a', operation, mark: 'mow', what: 'Mow', how: '', month },
      ...{ fromDay: 1, toDay: daysInMonth[month], times: 2, hours: 1, slopeHours: 0, firstYearOnly: false },
      ...{ because: '', source: 'yours' },
    })
    const runs = jobRuns([job(3), job(4), job(5), job(8), job(4, 'edge')])
    expect(runs.map(({ from, to, times }) => [from.month, to.month, times])).toEqual([
      [3, 5, 6],
      [4, 4, 2],
      [8, 8, 2],
    ])
  })
})
