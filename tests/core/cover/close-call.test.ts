import { describe, expect, it } from 'vitest'
import { closeCall, coverKinds, coverOf } from '#core/cover'
import { brief, option, steep, tables } from './tables'

const zone = (slopeDegSteep: number, slopeSdDegSteep?: number) => ({
  letter: 'B',
  slopeDegSteep,
  slopeSdDegSteep,
})

describe('close calls (two standard errors, JCGM 100:2008, 6.3.3)', () => {
  it('an allowed slope whose error reaches over the limit says that the limit could be passed', () => {
    expect(closeCall(zone(24.1, 2.9), 25, 'for cutting on foot')).toBe(
      'Zone B is 24.1° in its steep part, give or take 2.9°: the limit of 25° for cutting on foot could be passed.',
    )
  })

  it('a refused slope is never let through by its error', () => {
    expect(closeCall(zone(26, 2), 25, 'for mown grass')).toContain('nobody may count on that')
  })

  it('says nothing where the limit lies out of reach or the error is not known', () => {
    expect(closeCall(zone(20, 2), 25, 'for mown grass')).toBeUndefined()
    expect(closeCall(zone(24.9), 25, 'for mown grass')).toBeUndefined()
  })
})

describe('covers and machines', () => {
  const mower = brief([{ id: 'slope-mower', limitDeg: 25 }])
  const at = (deg: number, slopeSdDegSteep?: number) =>
    coverOf({ ...steep(deg), slopeSdDegSteep }, mower, tables)

  it('carry the warning where their own limit lies within reach (JCGM 100:2008, 6.3.3)', () => {
    const cover = at(24, 1)
    expect(cover.machines[0]?.closeCall).toContain('the limit of 25° of the')
    expect(option(cover, 'mown').closeCall).toContain('the limit of 25° for mown grass could be passed')
    expect(option(cover, 'shrubs').closeCall).toBeUndefined()
    expect(option(at(34, 1), 'shrubs').closeCall).toContain('the limit of 35° for shrubs could be passed')
  })

  it('never change a verdict: the error loosens no refusal and refuses nothing (own judgement: safety)', () => {
    for (const deg of [10, 20, 24, 25, 26, 30, 34, 36, 44])
      for (const kind of coverKinds)
        expect(option(at(deg, 5), kind).verdict, `${kind} at ${deg}°`).toBe(option(at(deg), kind).verdict)
  })
})
