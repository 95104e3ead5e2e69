import { describe, expect, it } from 'vitest'
import { ringAreaM2 } from '#core/geometry'
import { loadTables } from '#io'
import { createDeriver, openPlan, savePlan, type Plan } from '#plan'
import { editZones, withChoice, withDrawnZones, withOverride } from '../../src/app/edits/zones'
import { demoPlan } from './demo-plan'

const plan = demoPlan()
const derived = createDeriver(loadTables()).derive(plan)
if (!derived.ok) throw new Error('the demo does not derive')
const { zoning } = derived.value
const area = (of: Plan) => of.zones.reduce((sum, zone) => sum + ringAreaM2(zone.ring), 0)

function drawn(): Plan {
  const taken = withDrawnZones(plan, zoning)
  if (!taken.ok) throw new Error('zones are not taken over')
  return taken.value
}

describe('edits of zones', () => {
  it('take suggested zones over with their ids, so that choices stay with them', () => {
    expect(new Set(drawn().zones.map(({ id }) => id))).toEqual(new Set(zoning.zones.map(({ id }) => id)))
    expect(withDrawnZones(drawn(), zoning)).toEqual({ ok: true, value: drawn() })
  })

  it('a split keeps the ground, the id and the choices of the zone', () => {
    const [zone] = zoning.zones
    if (!zone) throw new Error('no zone')
    const chosen = withChoice(drawn(), zone.id, { cover: 'meadow' })
    const middle = zone.ring.reduce((sum, { northM }) => sum + northM, 0) / zone.ring.length
    const line = [
      { eastM: -500, northM: middle },
      { eastM: 500, northM: middle },
    ] as const
    const split = editZones(chosen, zoning, { kind: 'split', id: zone.id, line })
    expect(split.ok && split.value.zones.length).toBe(zoning.zones.length + 1)
    expect(split.ok && area(split.value)).toBeCloseTo(area(chosen), 6)
    expect(split.ok && split.value.choices).toEqual([{ zoneId: zone.id, cover: 'meadow' }])
  })

  it('a zone taken out takes its choices and scores along, and the plan still opens', () => {
    const [zone] = zoning.zones
    if (!zone) throw new Error('no zone')
    const decided = withOverride(
      withChoice(drawn(), zone.id, { cover: 'leave' }),
      { zoneId: zone.id, score: 'wetness' },
      { value: 10, reason: 'dry every summer' },
    )
    const without = editZones(decided, zoning, { kind: 'remove', id: zone.id })
    if (!without.ok) throw new Error('not taken out')
    expect([without.value.choices, without.value.overrides]).toEqual([[], []])
    expect(openPlan(savePlan(without.value)).ok).toBe(true)
  })

  it('a refused edit says why and leaves the plan alone', () => {
    const before = savePlan(plan)
    const line = [
      { eastM: 9000, northM: 0 },
      { eastM: 9000, northM: 1 },
    ] as const
    const split = editZones(plan, zoning, { kind: 'split', id: zoning.zones[0]?.id ?? '', line })
    expect(split.ok ? [] : split.problems[0]?.what).toBe('The line does not cross the zone.')
    expect(savePlan(plan)).toBe(before)
  })
})

describe('choices', () => {
  it('are taken out when nothing is left of them', () => {
    const chosen = withChoice(plan, 'a', { cover: 'mown', plants: ['x'] })
    expect(chosen.choices).toEqual([{ zoneId: 'a', cover: 'mown', plants: ['x'] }])
    expect(withChoice(withChoice(chosen, 'a', { cover: undefined }), 'a', { plants: [] }).choices).toEqual([])
  })

  it('hold one score of one’s own to each zone and score', () => {
    const of = { zoneId: 'a', score: 'frost' } as const
    const once = withOverride(plan, of, { value: 20, reason: 'sheltered' })
    const twice = withOverride(once, of, { value: 30, reason: 'less sheltered' })
    expect(twice.overrides).toEqual([{ zoneId: 'a', score: 'frost', value: 30, reason: 'less sheltered' }])
    expect(withOverride(twice, of, undefined).overrides).toEqual([])
  })
})
