import { describe, expect, it } from 'vitest'
import { createDeriver, type Plan } from '#plan'
import { bank, demo, found, planOn, tables } from './plans'

/** A bank of some steepness, said to be measured in some way. */
const measured = (slopeDeg: number, accuracy: Plan['survey']['accuracy']): Plan => {
  const plan = planOn({ ...bank, riseM: bank.lengthM * Math.sin((slopeDeg * Math.PI) / 180) })
  return { ...plan, survey: { ...plan.survey, ...(accuracy && { accuracy }) } }
}
const calls = (plan: Plan) => found(plan).toSettle.filter(({ id }) => id.startsWith('close-'))

describe('what is still to settle of the accuracy', () => {
  it('a bank a degree below a limit by clinometer is a danger: the limit could be passed (JCGM 100:2008, 6.3.3)', () => {
    const [call] = calls(measured(24, { methodId: 'tape-clinometer' }))
    expect(call?.kind).toBe('danger')
    expect(call?.what).toContain('24.0° in its steep part, give or take 1.0°')
    expect(call?.what).toContain('the limit of 25°')
    expect(call?.mend).toContain('with a level')
  })

  it('a bank just above a limit stays refused, and a better measurement is a gap', () => {
    const plan = measured(36, { methodId: 'tape-clinometer' })
    expect(calls(plan)[0]).toMatchObject({ kind: 'gap' })
    expect(found(plan).zones[0]?.cover.mowing).toBe('never')
  })

  it('says nothing where no limit is near, or the measuring is good enough', () => {
    expect(calls(measured(20, { methodId: 'tape-clinometer' }))).toEqual([])
    expect(calls(measured(24, { levelSdM: 0.005, planSdM: 0.01 }))).toEqual([])
  })

  it('what was assumed of the measuring is a gap until it is said', () => {
    const ids = (plan: Plan) => found(plan).toSettle.map(({ id }) => id)
    expect(ids(measured(10, undefined))).toEqual(
      expect.arrayContaining(['accuracy-assumed', 'roughness-unknown']),
    )
    expect(ids(measured(10, { methodId: 'tape-clinometer' }))).not.toContain('accuracy-assumed')
    expect(ids(demo('garden-falling-to-the-house'))).not.toContain('roughness-unknown')
  })

  it('a method that is not in the table is told with its place', () => {
    const derived = createDeriver(tables).derive(measured(10, { methodId: 'divining-rod' }))
    expect(derived.ok ? [] : derived.problems.map(({ where }) => where)).toEqual([
      'plan › survey › accuracy › methodId',
    ])
  })

  it('the error of every zone is stated, in the findings and their layers', () => {
    const { zones, accuracy, surface } = found(demo('garden-falling-to-the-house'))
    for (const { slopeError } of zones) {
      expect(slopeError.meanDeg).toBeGreaterThan(0)
      expect(slopeError.steepDeg).toBeGreaterThan(0)
    }
    expect(accuracy.levelSdM.length).toBe(surface.share.length)
  })
})
