import { describe, expect, it } from 'vitest'
import { demos } from '../../src/io/demos'
import { findingsJson } from '../../src/io/findings-json'
import { findingsSchema } from '../../src/io/findings.schema'
import { layers } from '../../src/io/layers'
import { assessed } from './assessed'

describe.each(demos)('findings of $id', ({ text }) => {
  const { plan, findings } = assessed(text)
  const written = findingsJson(plan, findings, { layers: true })
  const read = findingsSchema.parse(JSON.parse(written))

  it('are as their schema says, every zone and every layer there', () => {
    expect(read.zones.map(({ id }) => id)).toEqual(findings.zoning.zones.map(({ id }) => id))
    expect(read.layers.map(({ name }) => name)).toEqual(
      layers.filter(({ needs }) => needs.length === 0).map(({ name }) => name),
    )
  })

  it('write grids row by row, null outside the plot and only there', () => {
    const { share, frame } = findings.surface
    for (const { values, columns, rows } of read.layers) {
      expect(columns * rows).toBe(frame.columns * frame.rows)
      expect(values.map((value) => value !== null)).toEqual(Array.from(share, (part) => part > 0))
    }
  })

  it('book out after rounding, and name every source they use', () => {
    for (const { account } of read.zones.flatMap(({ scores }) => Object.values(scores)))
      expect(account.lines.reduce((sum, { amount }) => sum + amount, 0)).toBe(account.total)
    const named = [...written.matchAll(/"source": "([^"]+)"/g)].map(([, key]) => key ?? '')
    expect([...new Set(named)].sort()).toEqual(Object.keys(read.sources))
  })

  it('account for every hundredth of an hour of sun, zone by zone and month by month, trials too', () => {
    const hundredths = (hours: number) => Math.round(hours * 100)
    const suns = [
      ...read.zones.map(({ sun }) => sun),
      ...read.trials.flatMap(({ zones }) => zones.map(({ sun }) => sun)),
    ]
    for (const { account, sunHours, morningHours, afternoonHours } of suns)
      sunHours.forEach((hours, month) => {
        const taken = account.takers.reduce((sum, taker) => sum + hundredths(taker.hours[month] ?? NaN), 0)
        expect(hundredths(account.openHours[month] ?? NaN) - taken).toBe(hundredths(hours))
        expect(hundredths((morningHours[month] ?? NaN) + (afternoonHours[month] ?? NaN))).toBe(
          hundredths(hours),
        )
      })
  })

  it('give the same bytes again, and less without layers', () => {
    const again = assessed(text)
    expect(findingsJson(again.plan, again.findings, { layers: true })).toBe(written)
    const short = findingsSchema.parse(JSON.parse(findingsJson(plan, findings, { layers: false })))
    expect(short).toEqual({ ...read, layers: [], sources: short.sources })
  }, 60_000)
})
