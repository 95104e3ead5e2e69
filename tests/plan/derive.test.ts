import { describe, expect, it } from 'vitest'
import { booksOut, slopeAreaFactor } from '#core/units'
import { createDeriver, openPlan, savePlan, type Plan } from '#plan'
import { bank, demo, found, planOn, tables } from './plans'

const names = ['bank-below-the-house', 'garden-falling-to-the-house', 'three-banks-below-the-ground'] as const

describe.each(names)('%s, from plan to findings', (name) => {
  const plan = demo(name)
  const findings = found(plan)

  it('is the same for the same plan, whoever derives it', () => {
    expect(found(plan)).toEqual(findings)
  })

  it('has every account book out', () => {
    const accounts = [
      findings.water.account,
      ...findings.water.units.map(({ account }) => account),
      ...findings.care.zones.map(({ account }) => account),
      ...findings.zones.flatMap(({ scores, cover }) => [
        ...Object.values(scores).map(({ account }) => account),
        ...cover.options.map(({ fitness }) => fitness),
      ]),
    ]
    expect(accounts.filter((account) => !booksOut(account)).map(({ subject }) => subject)).toEqual([])
    expect(Math.abs(findings.water.account.total)).toBeLessThan(1e-6)
  })

  it('names only known sources', () => {
    const cited = [
      ...findings.zones.flatMap(({ scores, cover, planting }) => [
        ...Object.values(scores).flatMap(({ account }) => account.lines),
        ...cover.options.flatMap(({ fitness, cautions }) => [...fitness.lines, ...cautions]),
        ...[...planting.offered, ...planting.refused].flatMap(({ reasons }) => reasons),
      ]),
      ...findings.care.zones.flatMap(({ account, jobs, keepOff }) => [...account.lines, ...jobs, ...keepOff]),
      ...findings.water.account.lines,
      ...findings.toSettle,
    ].map(({ source }) => source)
    expect([...new Set(cited)].filter((source) => !(source in tables.sources))).toEqual([])
  })

  it('never offers a plant that the law bars, nor puts one that takes over into a mix', () => {
    for (const { planting } of findings.zones) {
      expect(planting.offered.filter(({ flags }) => flags.barred)).toEqual([])
      const mixed = planting.mix.map(({ plantId }) => plantId)
      const thugs = planting.offered.filter(({ flags }) => flags.takesOver).map(({ plant }) => plant.id)
      expect(mixed.filter((id) => thugs.includes(id))).toEqual([])
    }
  })

  it('measures slope area no smaller than plan area', () => {
    for (const zone of findings.zoning.zones)
      expect(zone.slopeAreaM2).toBeGreaterThanOrEqual(zone.planAreaM2 - 1e-9)
  })
})

describe('a bank in four numbers', () => {
  it('exact: slope area is length × width, plan area that times the cosine', () => {
    const { zoning } = found(planOn(bank))
    const slopeM2 = zoning.zones.reduce((sum, zone) => sum + zone.slopeAreaM2, 0)
    const planM2 = zoning.zones.reduce((sum, zone) => sum + zone.planAreaM2, 0)
    const slopeDeg = (Math.asin(4 / 12) * 180) / Math.PI
    expect(slopeM2).toBeCloseTo(120, 1)
    expect(planM2).toBeCloseTo(120 / slopeAreaFactor(slopeDeg), 1)
  })

  it('the top is drier than the foot, and facing the midday sun is drier and sunnier (common practice, no source)', () => {
    const south = found(planOn(bank))
    const north = found(planOn({ ...bank, facesDeg: 0 }))
    const wetness = south.zones.map(({ scores }) => scores.wetness.value)
    expect(wetness[0]).toBeLessThan(wetness.at(-1) ?? 0)
    south.zones.forEach(({ scores }, at) => {
      expect(scores.wetness.value).toBeLessThan(north.zones[at]?.scores.wetness.value ?? 0)
      expect(scores.sun.value).toBeGreaterThan(north.zones[at]?.scores.sun.value ?? 100)
    })
  })

  it('the sense of the sun turns over south of the equator (common practice, no source)', () => {
    const at = (facesDeg: number, plan: Plan = planOn({ ...bank, facesDeg })) =>
      found({ ...plan, site: { ...plan.site, latitudeDeg: -42 } })
    const poleward = at(180).zones.map(({ scores }) => scores.sun.value)
    const sunward = at(0).zones.map(({ scores }) => scores.sun.value)
    sunward.forEach((sun, zone) => expect(sun).toBeGreaterThan(poleward[zone] ?? 100))
  })

  it('terraces keep more rain in the soil than the slope they are cut from (common practice, no source)', () => {
    const sloping = planOn(bank)
    const suggested = found(sloping).zoning.zones
    const zones = suggested.map(({ id, name, ring }) => ({ id, name, ring: [...ring] }))
    const as = (cover: 'terrace' | 'ground-cover') =>
      found({ ...sloping, zones, choices: zones.map(({ id }) => ({ zoneId: id, cover })) })
    const runoff = (cover: 'terrace' | 'ground-cover') =>
      as(cover).water.account.lines.find(({ id }) => id === 'runoff')?.amount ?? Number.NaN
    expect(Math.abs(runoff('terrace'))).toBeLessThan(Math.abs(runoff('ground-cover')))
  })
})

describe('memory from plan to plan', () => {
  it('gives the same findings as a fresh start, whatever came before', () => {
    const plan = demo('bank-below-the-house')
    const deriver = createDeriver(tables)
    found(demo('three-banks-below-the-ground'), deriver)
    expect(found(plan, deriver)).toEqual(found(plan))
  })

  it('keeps ground, sun and zones when only the brief changes', () => {
    const plan = demo('bank-below-the-house')
    const deriver = createDeriver(tables)
    const before = found(plan, deriver)
    const text = savePlan({ ...plan, brief: { ...plan.brief, pets: true } })
    const copy = openPlan(text)
    const after = copy.ok ? found(copy.value, deriver) : before
    expect(after.surface).toBe(before.surface)
    expect(after.sun).toBe(before.sun)
    expect(after.zoning).toBe(before.zoning)
    expect(after.zones).not.toBe(before.zones)
  })
})

describe('input that only the tables can judge', () => {
  it('unknown machines, unknown law and empty jars are all reported at once', () => {
    const plan = planOn(bank)
    const spoilt: Plan = {
      ...plan,
      site: { ...plan.site, legalRegion: 'Nowhere' },
      brief: { ...plan.brief, machines: [{ id: 'goat' }] },
      soil: plan.soil.map((sample) => ({
        ...sample,
        texture: { by: 'jar', sandMm: 0, siltMm: 0, clayMm: 0 },
      })),
    }
    const derived = createDeriver(tables).derive(spoilt)
    expect(derived.ok ? [] : derived.problems.map(({ where }) => where)).toEqual([
      'plan › brief › machines, row 1',
      'plan › site › legalRegion',
      'plan › soil, row 1.texture',
    ])
  })

  it('a survey in one line is told to measure aside', () => {
    const derived = createDeriver(tables).derive(
      planOn({
        kind: 'levels',
        points: [0, 1, 2, 3].map((at) => ({ eastM: at, northM: at, levelM: at })),
      }),
    )
    expect(derived.ok).toBe(false)
  })
})
