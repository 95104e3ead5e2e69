import { describe, expect, it } from 'vitest'
import { placeSky } from '#core/shade'
import { months } from '#core/units'
import { shadingOf } from '#plan'
import {
  DayByHour,
  dayByHourTable,
  plainText,
  sectionView,
  stripView,
  sunAnswer,
  SunHoursCharts,
  SunPathFigure,
  sunPathTable,
  SunTakers,
} from '#report'
import { overlaps } from '../../src/report/drawing/path'
import { hourCells, hourSheet } from '../../src/report/figures/sun/hour-cells'
import { pathsOf, skyPaths } from '../../src/report/figures/sun/sky-paths'
import { skyScale } from '../../src/report/figures/sun/sky-scale'
import { skyShapes } from '../../src/report/figures/sun/sky-shapes'
import { skyWords } from '../../src/report/figures/sun/sky-words'
import { dayOfMonth, pathDays } from '../../src/report/figures/sun/sun-days'
import { contrast } from '../../src/report/ramps'
import { demos, numbersOf, wordsOf, written } from './hung'

const widths = [320, 768, 1440]

describe.each(demos)('figures of the sun of $name', ({ plan, findings }) => {
  const { latitudeDeg } = plan.site
  const zones = findings.zoning.zones.flatMap((zone, at) => {
    const sun = findings.zoneSun[at]
    const sky = sun && placeSky(shadingOf(plan, findings), findings.terrain, sun.middle)
    return sun && sky ? [{ zone, sun, sky }] : []
  })

  it('has the sun of every zone', () => {
    expect(zones).toHaveLength(findings.zoning.zones.length)
  })

  it.each(widths)(
    'words on the sky never lie over each other, and stay on the sheet, at %s px',
    (widthPx) => {
      for (const { sky } of zones)
        for (const month of [2, 5, 6, 11] as const) {
          const days = pathDays(latitudeDeg, dayOfMonth(month))
          const scale = skyScale(sky, latitudeDeg, pathsOf(latitudeDeg, days), widthPx)
          const paths = skyPaths(sky, latitudeDeg, days, scale)
          const shapes = skyShapes(sky, month, scale)
          const words = skyWords({ paths, shapes, scale, sun: undefined }, latitudeDeg)
          const boxes = [...words.paths, ...words.things, ...words.hours].map(({ box }) => box)
          boxes.forEach((box, at) => {
            expect(box.leftPx).toBeGreaterThanOrEqual(0)
            expect(box.rightPx).toBeLessThanOrEqual(widthPx)
            for (const other of boxes.slice(at + 1)) expect(overlaps(box, other)).toBe(false)
          })
          expect(words.paths.some(({ picked }) => picked)).toBe(true)
        }
    },
  )

  it.each(widths)(
    'is written whole at %s px: a title, a description that is its table, no figure missing',
    async (widthPx) => {
      const [first] = zones
      if (!first) return
      const { zone, sun, sky } = first
      const named = { zoneSun: sun, letter: zone.letter, name: zone.name }
      const drawings = [
        await written(SunPathFigure, { sky, latitudeDeg, month: 5, widthPx, place: zone.letter }),
        await written(DayByHour, { ...named, latitudeDeg, month: 5, widthPx }),
        await written(SunTakers, { ...named, time: { name: 'June', months: [5] }, widthPx }),
      ]
      for (const html of drawings) {
        expect(html).toMatch(/role="img"/)
        expect(html).toMatch(/<title id="[^"]+">[^<]{8,}<\/title>/)
        expect(html).toMatch(/<desc id="[^"]+">[^<]{20,}<\/desc>/)
        expect(html).not.toMatch(/NaN|Infinity|undefined/)
        for (const x of numbersOf(html, 'x')) expect(x).toBeLessThanOrEqual(widthPx)
      }
      const desc = wordsOf(/<desc[^>]*>([\s\S]*?)<\/desc>/.exec(drawings[0] ?? '')?.[1] ?? '')
      for (const row of sunPathTable({ sky, latitudeDeg, month: 5 }).rows)
        expect(desc).toContain(wordsOf(row[1] ?? '').trim())
    },
  )

  it('the chart by the hour and its table tell the same shares', () => {
    for (const { zone, sun } of zones) {
      const table = dayByHourTable({ zoneSun: sun, letter: zone.letter, name: zone.name, latitudeDeg })
      const sheet = hourSheet(latitudeDeg, 900)
      for (const cell of hourCells(sun, sheet)) {
        const row = table.rows.find(([head]) => head === `${cell.hour} to ${cell.hour + 1}`)
        expect(row?.[cell.month + 1]).toBe(`${Math.round(cell.share * 100)} %`)
        expect(contrast(cell.fill, cell.ink)).toBeGreaterThanOrEqual(4.5)
        expect(cell.topPx).toBeGreaterThanOrEqual(sheet.topPx)
        expect(cell.topPx + cell.tallPx).toBeLessThanOrEqual(sheet.bottomPx + 1e-6)
      }
    }
  })

  it('cells of a month stand on each other from sunrise to sunset, without a gap', () => {
    const [first] = zones
    const sheet = hourSheet(latitudeDeg, 768)
    for (const month of months) {
      const cells = first ? hourCells(first.sun, sheet).filter((cell) => cell.month === month) : []
      cells
        .slice(1)
        .forEach((cell, at) =>
          expect(cell.topPx).toBeCloseTo((cells[at]?.topPx ?? NaN) + (cells[at]?.tallPx ?? NaN), 6),
        )
    }
  })

  it('the answer names the sunniest zone’s hours, and the longest darkness of the findings', () => {
    const { says, note } = sunAnswer(findings, latitudeDeg)
    const midsummer = latitudeDeg < 0 ? 11 : 5
    const hours = zones.map(({ sun }) => sun.sunHours[midsummer])
    expect(plainText(says)).toContain(Math.max(...hours).toFixed(1))
    expect(plainText(says)).toContain('midsummer')
    const days = zones.flatMap(({ sun }) => (sun.dark.kind === 'spell' ? [sun.dark.days] : []))
    if (days.length > 0) expect(plainText(note).replace(/\u00A0/g, ' ')).toContain(`${Math.max(...days)} day`)
    for (const phrase of [...says, ...note])
      if (typeof phrase !== 'string') expect(phrase.ask?.about).toBe('sun')
  })

  it('bars of hours have their morning below and their afternoon above', async () => {
    const view = stripView(plan, findings)
    view.zones.forEach((zone) =>
      months.forEach((month) =>
        expect(zone.morningHours[month]).toBeLessThanOrEqual(zone.sunHours[month] + 1e-6),
      ),
    )
    const html = await written(SunHoursCharts, { view, widthPx: 768 })
    expect(wordsOf(html)).toContain('before noon')
    expect(html).not.toMatch(/NaN/)
  })

  it('trees and buildings of the section are those that the sun is reckoned with', () => {
    const { obstacles, footLevelM } = sectionView(plan, findings)
    for (const obstacle of obstacles) {
      const standing = findings.standing.find(({ id }) => id === obstacle.id)
      expect(obstacle.standing === undefined).toBe(standing === undefined)
      const [crown] = standing?.crowns ?? []
      if (crown) {
        expect(obstacle.standing?.crown?.wideM).toBeCloseTo(crown.radiusM * 2, 9)
        expect(obstacle.standing?.crown?.lowM).toBeCloseTo(crown.baseM - footLevelM, 9)
      }
    }
  })
})
