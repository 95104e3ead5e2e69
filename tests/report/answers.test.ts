import { describe, expect, it } from 'vitest'
import { createDeriver } from '#plan'
import { groundAnswer, holdAnswer, monthAnswer, mowAnswer, plainText, sunAnswer, waterAnswer } from '#report'
import { bank, demo, found, planOn, tables } from '../plan/plans'

const deriver = createDeriver(tables)

describe('the answers in the sky', () => {
  it('the first figure of a survey is the level difference of its highest and lowest point (common practice, no source)', () => {
    const says = plainText(groundAnswer(found(planOn(bank), deriver)).says)
    expect(says).toMatch(/^It falls 4\.0\u00A0m in 11\u00A0m, facing south\./)
  })

  it('level ground is called level', () => {
    const flat = planOn({ ...bank, riseM: 0 })
    expect(plainText(groundAnswer(found(flat, deriver)).says)).toBe(
      'This ground is level: there is no slope to plan for.',
    )
  })

  it('say the same figures as the findings', () => {
    const plan = demo('three-banks-below-the-ground')
    const findings = found(plan, deriver)
    const rain = findings.water.account.lines.find(({ id }) => id === 'rain')?.amount ?? 0
    expect(plainText(waterAnswer(findings).says)).toContain(Math.round(rain).toLocaleString('en-GB'))
    const plants = findings.zones.flatMap(({ planting }) => planting.mix)
    const count = plants.reduce((sum, line) => sum + line.count, 0)
    expect(plainText(holdAnswer(findings).says)).toContain(count.toLocaleString('en-GB'))
    const off = findings.zones.filter(({ cover }) => cover.machines.every(({ allowed }) => !allowed))
    const offM2 = off.reduce(
      (sum, { zoneId }) => sum + (findings.zoning.zones.find(({ id }) => id === zoneId)?.slopeAreaM2 ?? 0),
      0,
    )
    expect(plainText(mowAnswer(findings).says)).toContain(
      `Keep every machine off ${Math.round(offM2).toLocaleString('en-GB')}`,
    )
    expect(plainText(monthAnswer(plan, findings, 8).says)).toContain('September asks for')
  })

  it('name midsummer by the hemisphere: December in the south', () => {
    const findings = found(demo('three-banks-below-the-ground'), deriver)
    const hours = findings.zoneSun.map(({ sunHours }) => sunHours[11])
    const says = plainText(sunAnswer(findings, -37.6).says).replace(/\u00A0/g, ' ')
    expect(says).toContain(
      `${Math.min(...hours).toFixed(1)} to ${Math.max(...hours).toFixed(1)} h at midsummer`,
    )
  })
})
