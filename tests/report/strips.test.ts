import { describe, expect, it } from 'vitest'
import { months } from '#core/units'
import { questions, sectionScale, sectionView, SectionFigure } from '#report'
import { overlaps } from '../../src/report/drawing/path'
import { gradientProfile, slopeAt } from '../../src/report/figures/strips/gradient-marks'
import { hoursBars } from '../../src/report/figures/strips/hours-bars'
import { limitLines } from '../../src/report/figures/strips/limit-lines'
import { sunBands, sunFigures, wetnessCells } from '../../src/report/figures/strips/matrix-cells'
import { passingLines } from '../../src/report/figures/strips/passing-lines'
import { dimensionLines } from '../../src/report/figures/strips/planting-lines'
import { timeRows } from '../../src/report/figures/strips/season-rows'
import { hoursTable, plantingTable, wetnessTable } from '../../src/report/figures/strips/strip-tables'
import { stripsFor, stripTable } from '../../src/report/figures/strips/strips-for'
import { stripView } from '../../src/report/figures/strips/strip-view'
import StripStack from '../../src/report/figures/strips/StripStack.vue'
import { wetnessStep } from '../../src/report/figures/strips/wetness-classes'
import { zoneStretches } from '../../src/report/figures/strips/zone-cells'
import { contrast } from '../../src/report/ramps'
import { demos, numbersOf, wordsOf, written } from './hung'

const widths = [1440, 1140, 768, 360, 320]
const cases = demos.flatMap(({ name, plan, findings }) =>
  widths.map((widthPx) => {
    const section = sectionView(plan, findings)
    const axis = sectionScale(section, { widthPx, heightPx: 420 }).axis
    return { name, widthPx, axis, section, view: stripView(plan, findings), findings }
  }),
)

describe.each(cases)('strips of $name at $widthPx px', ({ widthPx, axis, view, section, findings }) => {
  it('every strip stands on the distance axis of the section', async () => {
    const edgesPx = section.zones.flatMap(({ spans }) => spans.map(({ fromM }) => axis.x(fromM)))
    const drawn = await written(StripStack, { view, axis, widthPx, question: 'handover' })
    for (const edgePx of edgesPx) {
      const drop = `M${Math.round(edgePx * 10) / 10} 0V`
      for (const svg of drawn.split('<svg').slice(1)) expect(svg).toContain(drop)
    }
    const stretches = zoneStretches(view, axis)
    expect(stretches.map(({ leftPx }) => leftPx)).toEqual(edgesPx)
    for (const cell of wetnessCells(view, axis, 'seasons'))
      expect(
        stretches.some(({ leftPx, widthPx: wide }) => leftPx === cell.leftPx && wide === cell.widthPx),
      ).toBe(true)
  })

  it('nothing is drawn wider than the sheet', async () => {
    for (const question of questions) {
      const html = await written(StripStack, { view, axis, widthPx, question })
      expect(
        new Set([...html.matchAll(/<svg[^>]* width="([\d.]+)"/g)].map(([, wide]) => Number(wide))),
      ).toEqual(new Set([widthPx]))
      const rights = [...html.matchAll(/<rect[^>]* x="([\d.-]+)"[^>]* width="([\d.]+)"/g)]
      for (const [, x, wide] of rights) expect(Number(x) + Number(wide)).toBeLessThanOrEqual(widthPx + 0.5)
    }
  })

  it('WCAG 2.2: words on fills read at 4.5:1 or better', () => {
    for (const step of ['months', 'seasons'] as const) {
      for (const { fill, ink, words } of wetnessCells(view, axis, step))
        if (words) expect(contrast(fill, ink)).toBeGreaterThanOrEqual(4.5)
      for (const { fill, ink } of sunFigures(view, axis, step))
        expect(contrast(fill, ink)).toBeGreaterThanOrEqual(4.5)
    }
  })

  it('bars are as high as their hours, the slope share as high as its own', () => {
    const bars = hoursBars(view, axis, 58)
    const perHour = bars.map(({ key, bar, slope }) => {
      const zone = view.zones.find(({ id }) => key.startsWith(id))
      expect(slope.tallPx * (zone?.care.hours ?? 0)).toBeCloseTo(bar.tallPx * (zone?.care.slopeHours ?? 0), 6)
      return bar.tallPx / (zone?.care.hours ?? 1)
    })
    for (const each of perHour) expect(each).toBeCloseTo(perHour[0] ?? 0, 6)
  })

  it('figures and limits of the gradient do not touch one another', () => {
    const { figures, y } = gradientProfile(view, axis, 84)
    figures.forEach(({ at }, index) => {
      const before = figures[index - 1]
      if (before) expect(at.xPx).toBeGreaterThan(before.at.xPx)
    })
    const lines = limitLines(view, axis, widthPx, { y, figures })
    lines.forEach(({ box }, index) => {
      expect(box.rightPx).toBeLessThanOrEqual(widthPx)
      for (const other of lines.slice(index + 1)) expect(overlaps(box, other.box)).toBe(false)
      for (const { at } of figures) {
        const figure = { leftPx: at.xPx - 6, rightPx: at.xPx + 6, topPx: at.yPx - 9, bottomPx: at.yPx }
        expect(overlaps(box, figure)).toBe(false)
      }
    })
  })

  it('the drawn gradient is the section’s own', () => {
    for (const { distanceM, slopeDeg } of findings.terrain.section.stations)
      expect(slopeAt(view.stations, distanceM)).toBeCloseTo(slopeDeg, 9)
  })

  it('the sun is drawn from end to end without a gap', () => {
    const rows = timeRows('seasons', view.latitudeDeg)
    const bands = sunBands(view, axis, 'seasons')
    expect(bands.reduce((sum, band) => sum + band.widthPx, 0)).toBeCloseTo(
      (axis.endPx - axis.startPx) * rows.length,
      3,
    )
  })

  it('dimension lines keep inside their zones and leave room for their words', () => {
    for (const { fromPx, toPx, textPx, key } of dimensionLines(view, axis)) {
      const stretch = zoneStretches(view, axis).find((one) => key.endsWith(one.key))
      expect(fromPx).toBeGreaterThan(stretch?.leftPx ?? Infinity)
      expect(toPx).toBeLessThan((stretch?.leftPx ?? 0) + (stretch?.widthPx ?? 0))
      expect(textPx.middle).toBeCloseTo(stretch?.middlePx ?? 0, 6)
    }
  })

  it('water passing is drawn at one scale, and it fits', () => {
    const { mostM3, ticks } = passingLines(view, axis, 56)
    const volumes = view.zones.flatMap(({ passing }) => Object.values(passing) as number[])
    expect(mostM3).toBeCloseTo(Math.max(0.1, ...volumes), 9)
    for (const { yPx } of ticks) expect(yPx).toBeGreaterThanOrEqual(0)
  })
})

describe.each(demos)('twins of the strips of $name', ({ plan, findings }) => {
  const view = stripView(plan, findings)
  const axis = sectionScale(sectionView(plan, findings), { widthPx: 1440, heightPx: 420 }).axis

  it('hold every figure that is drawn', () => {
    const hours = hoursTable(view).rows.map((row) => row.join(' ').replace(/\u00A0/g, ' '))
    hoursBars(view, axis, 58).forEach(({ figure, aside }, at) => {
      if (figure) expect(hours[at]).toContain(figure.replace(/\u00A0/g, ' '))
      if (aside?.startsWith('mown')) expect(hours[at]).toContain(aside.slice(5).replace(/\u00A0/g, ' '))
    })
    const wet = wetnessTable(view, 'seasons').rows.flat().join(' ')
    for (const { words } of wetnessCells(view, axis, 'seasons')) if (words) expect(wet).toContain(words)
    const planted = plantingTable(view).rows.flat().join(' ')
    for (const { count, latin } of dimensionLines(view, axis)) {
      expect(planted).toContain(count)
      if (latin) expect(planted).toContain(latin)
    }
  })

  it('have a row for each zone, under every question', () => {
    for (const question of questions)
      for (const strip of stripsFor(question)) {
        const twin = stripTable(view, strip)
        expect(twin.rows.map(([head]) => head)).toEqual(
          view.zones.map(({ letter, name }) => `${letter} ${name}`),
        )
        for (const row of twin.rows) expect(row).toHaveLength(twin.columns.length)
      }
  })

  it('plants and hours are those of the findings', () => {
    for (const zone of view.zones) {
      const own = findings.zones.find(({ zoneId }) => zoneId === zone.id)
      const count = (lines: readonly { readonly count: number }[]) =>
        lines.reduce((sum, line) => sum + line.count, 0)
      expect(count(zone.planting)).toBe(count(own?.planting.mix ?? []))
      expect(zone.care.hours).toBe(
        findings.care.zones.find(({ zoneId }) => zoneId === zone.id)?.account.total,
      )
    }
  })

  it('say title and description under ids of their own', async () => {
    const html = await written(StripStack, { view, axis, widthPx: 1140, question: 'mow' })
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id)
    expect(new Set(ids).size).toBe(ids.length)
    for (const [, labels = ''] of html.matchAll(/aria-labelledby="([^"]+)"/g))
      for (const id of labels.split(' ')) expect(ids).toContain(id)
  })

  it('are written alike twice, with no browser at hand', async () => {
    const props = { view, axis, widthPx: 1140, question: 'water' }
    expect(await written(StripStack, props)).toBe(await written(StripStack, props))
    expect(
      await written(SectionFigure, {
        view: sectionView(plan, findings),
        question: 'mow',
        widthPx: 1140,
        heightPx: 420,
      }),
    ).toContain('<svg')
  })

  it('no figure is NaN or undefined', async () => {
    for (const question of questions) {
      const html = await written(StripStack, { view, axis, widthPx: 1140, question })
      expect(html).not.toMatch(/NaN|undefined|Infinity/)
      expect(wordsOf(html)).not.toContain('null')
      for (const height of numbersOf(html, 'height')) expect(height).toBeGreaterThanOrEqual(0)
    }
  })
})

describe('seasons and wetness', () => {
  it('astronomy: winter is December to February in the north and June to August in the south', () => {
    expect(timeRows('seasons', 51)[0]).toMatchObject({ name: 'winter', months: [0, 1, 11] })
    expect(timeRows('seasons', -38)[0]).toMatchObject({ name: 'winter', months: [5, 6, 7] })
  })

  it('every month belongs to one season', () => {
    expect(
      timeRows('seasons', 51)
        .flatMap((row) => row.months)
        .sort((a, b) => a - b),
    ).toEqual([...months])
  })

  it('more water never reads drier', () => {
    const steps = Array.from({ length: 200 }, (_, at) => wetnessStep(at / 100))
    expect(steps).toEqual([...steps].sort((one, other) => one - other))
    expect([steps[0], steps.at(-1)]).toEqual([0, 6])
  })
})
