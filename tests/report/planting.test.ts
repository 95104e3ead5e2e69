import { describe, expect, it } from 'vitest'
import { coverCurves, coverTable } from '../../src/report/figures/planting/cover-curve'
import { mixTable } from '../../src/report/figures/planting/mix-table'
import { amountOf, flagWords, monthsWords } from '../../src/report/figures/planting/planting-words'
import CoverCompare from '../../src/report/figures/planting/CoverCompare.vue'
import CoverCurve from '../../src/report/figures/planting/CoverCurve.vue'
import PlantList from '../../src/report/figures/planting/PlantList.vue'
import RefusedList from '../../src/report/figures/planting/RefusedList.vue'
import { zoneTable } from '../../src/report/figures/lists/zone-table'
import ZoneRows from '../../src/report/figures/lists/ZoneRows.vue'
import { stripView } from '../../src/report/figures/strips/strip-view'
import { verdictWords } from '../../src/report/figures/section/verdict-words'
import { demos, wordsOf, written } from './hung'

const plain = (text: string) => text.replace(/\u00A0/g, ' ')

const planted = demos.flatMap(({ name, findings }) =>
  findings.zones
    .filter(({ planting }) => planting.mix.length > 0)
    .map(({ planting, zoneId }) => ({
      name: `${name} ${zoneId}`,
      planting,
      zone: findings.zoning.zones.find(({ id }) => id === zoneId),
    })),
)

describe.each(planted)('the plants of $name', ({ planting, zone }) => {
  const verdicts = [...planting.offered, ...planting.refused]

  it('are listed with name, amount, months and every warning in words', async () => {
    const words = wordsOf(await written(PlantList, { planting, zone }))
    for (const line of planting.mix) {
      const verdict = verdicts.find(({ plant }) => plant.id === line.plantId)
      const { figure, unit } = amountOf(line)
      expect(words).toContain(`${figure} ${unit}`)
      expect(words).toContain(plain(monthsWords(line.monthsToCover)))
      if (!verdict) throw new Error(`${line.plantId} has no verdict`)
      expect(words).toContain(verdict.plant.name)
      for (const { head, text } of flagWords(verdict.flags, verdict.plant))
        expect(words).toContain(`${head}: ${text}`)
    }
  })

  it('say why for each: for and against', async () => {
    const words = wordsOf(await written(PlantList, { planting, zone }))
    for (const { plantId } of planting.mix)
      for (const reason of verdicts.find(({ plant }) => plant.id === plantId)?.reasons ?? [])
        expect(words).toContain(`${reason.for ? 'for' : 'against'} ${plain(reason.because)}`)
  })

  it('stand in the twin with the same amounts', () => {
    const { rows } = mixTable(planting, zone?.name ?? '')
    expect(rows.map((row) => row[3])).toEqual(
      planting.mix.map((line) => `${amountOf(line).figure} ${amountOf(line).unit}`),
    )
  })

  it('those refused are told with every reason against', async () => {
    const words = wordsOf(await written(RefusedList, { refused: planting.refused, most: 5 }))
    const first = [...planting.refused]
      .sort((one, other) => (one.plant.name < other.plant.name ? -1 : 1))
      .slice(0, 5)
    for (const verdict of first)
      for (const { because } of verdict.reasons.filter((reason) => !reason.for))
        expect(words).toContain(plain(because))
    if (planting.refused.length > 5) expect(words).toContain(`And ${planting.refused.length - 5} more.`)
  })
})

describe.each(demos)('covers of $name', ({ plan, findings }) => {
  const view = stripView(plan, findings)
  const zones = planted
    .filter(({ zone }) => findings.zoning.zones.some((own) => own === zone))
    .map(({ zone, planting }) => ({
      letter: zone?.letter ?? '',
      name: zone?.name ?? '',
      coverByYear: planting.coverByYear,
    }))

  it('curves pass through the yearly figures, which the twin holds', () => {
    const { curves, x, y } = coverCurves(zones, { widthPx: 440, heightPx: 230 })
    curves.forEach(({ d }, at) => {
      const numbers = [...d.matchAll(/-?[\d.]+/g)].map(Number)
      const cover = zones[at]?.coverByYear ?? []
      expect(numbers.slice(0, 2)[0]).toBeCloseTo(x(0), 0)
      expect(numbers[1]).toBeCloseTo(y(cover[0] ?? 0), 0)
      expect(numbers.at(-1)).toBeCloseTo(y(cover.at(-1) ?? 0), 0)
    })
    coverTable(zones).rows.forEach((row, at) =>
      expect(row.slice(1)).toEqual(zones[at]?.coverByYear.map((share) => `${Math.round(share * 100)} %`)),
    )
  })

  it('Steffen 1990: no curve dips below or rises above its yearly figures', () => {
    for (const { d } of coverCurves(zones, { widthPx: 440, heightPx: 230 }).curves) {
      const points = [...d.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, , yPx]) => Number(yPx))
      // Within a piece both handles lie between its ends, so the curve does too.
      for (let at = 3; at < points.length; at += 3) {
        const [from = 0, leaves = 0, arrives = 0, to = 0] = points.slice(at - 3, at + 1)
        for (const handle of [leaves, arrives]) {
          expect(handle).toBeGreaterThanOrEqual(Math.min(from, to) - 0.11)
          expect(handle).toBeLessThanOrEqual(Math.max(from, to) + 0.11)
        }
      }
    }
  })

  it('letters of the curves do not touch', () => {
    const labels = coverCurves(zones, { widthPx: 440, heightPx: 230 }).curves.map(({ label }) => label)
    labels.forEach((label, at) => {
      for (const other of labels.slice(at + 1))
        expect(Math.hypot(label.xPx - other.xPx, label.yPx - other.yPx)).toBeGreaterThan(14)
    })
  })

  it('refusals say why, hours are told for the rest', async () => {
    const compared = findings.care.zones.map((care) => ({
      ...care,
      id: care.zoneId,
      letter: 'A',
      name: 'zone',
      chosen: care.cover,
    }))
    const words = wordsOf(await written(CoverCompare, { zones: compared, currency: 'EUR' }))
    for (const { refusal, hours } of compared.flatMap(({ compared: covers }) => covers)) {
      if (refusal) expect(words).toContain(plain(refusal))
      if (hours !== undefined) expect(words).toContain(`${(Math.round(hours * 10) / 10).toFixed(1)} h`)
    }
  })

  it('the twin of the sheet has every zone with every cell filled', () => {
    const { rows, columns } = zoneTable(view)
    expect(rows).toHaveLength(findings.zoning.zones.length)
    for (const row of rows) {
      expect(row).toHaveLength(columns.length)
      for (const cell of row) expect(cell.trim()).not.toBe('')
      expect(row.join(' ')).not.toMatch(/NaN|undefined/)
    }
  })

  it('rows of zones give the verdict in words and the ground at its true angle', async () => {
    const html = await written(ZoneRows, { view, question: 'mow' })
    const words = wordsOf(html)
    const wedges = [...html.matchAll(/class="line-cut" d="M0 ([\d.]+)L([\d.]+) ([\d.]+)"/g)]
    expect(wedges).toHaveLength(view.zones.length)
    view.zones.forEach(({ mowing, slopeDegSteep }, at) => {
      expect(words).toContain(verdictWords[mowing])
      const [, top, across, bottom] = wedges[at] ?? []
      const drawnDeg = (Math.atan2(Number(bottom) - Number(top), Number(across)) * 180) / Math.PI
      expect(Math.abs(drawnDeg - slopeDegSteep)).toBeLessThan(0.3)
    })
  })

  it('is drawn from 288 px up', async () => {
    expect(await written(CoverCurve, { zones, widthPx: 288 })).not.toMatch(/NaN|undefined/)
  })
})
