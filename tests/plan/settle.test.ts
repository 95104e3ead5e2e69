import { describe, expect, it } from 'vitest'
import type { Plan } from '#plan'
import { bank, demo, found, planOn } from './plans'

const ids = (plan: Plan) => found(plan).toSettle.map(({ id }) => id)

describe('what is still to settle', () => {
  it('a new plan names what was assumed for it', () => {
    expect(ids(planOn(bank))).toEqual(
      expect.arrayContaining(['soil-assumed', 'climate-place', 'legal-region', 'ph', 'machines']),
    )
  })

  it('a slope falling towards a house is told so, by the drawing or by the person (common practice, no source)', () => {
    const told = found(demo('garden-falling-to-the-house')).toSettle
    expect(told.find(({ id }) => id === 'towards-house')?.mend).toContain('Never send it to a neighbour')
    const plan = demo('garden-falling-to-the-house')
    expect(ids({ ...plan, brief: { ...plan.brief, fallsTowardsHouse: false } })).toContain('towards-house')
    expect(ids(demo('bank-below-the-house'))).not.toContain('towards-house')
  })

  it('ground too steep to cut on foot, walls and buried lines are dangers, each with whom to ask', () => {
    const banks = found(demo('three-banks-below-the-ground')).toSettle
    const dangers = banks.filter(({ kind }) => kind === 'danger')
    expect(dangers.filter(({ id }) => id.startsWith('steep')).length).toBeGreaterThan(0)
    expect(dangers.find(({ id }) => id === 'around-wall')?.mend).toContain('structural engineer')
    expect(ids(demo('garden-falling-to-the-house'))).toContain('around-sewer')
  })

  it('a choice that is refused stays on the list with its reason', () => {
    const plan = planOn({ ...bank, riseM: 7 })
    const zones = found(plan).zoning.zones.map(({ id, name, ring }) => ({ id, name, ring: [...ring] }))
    const chosen: Plan = { ...plan, zones, choices: [{ zoneId: zones[0]?.id ?? '', cover: 'mown' }] }
    const told = found(chosen).toSettle.find(({ id }) => id.startsWith('refused-'))
    expect(told?.kind).toBe('danger')
    expect(told?.what).toContain('mown')
  })

  it('a decision about a zone that is not there is told, not dropped in silence', () => {
    const plan = planOn(bank)
    const told = found({ ...plan, choices: [{ zoneId: 'gone', cover: 'meadow' }] }).toSettle
    expect(told.find(({ id }) => id === 'lost-gone')?.kind).toBe('clash')
    expect(ids(plan).filter((id) => id.startsWith('lost-'))).toEqual([])
  })

  it('water that is drawn but not counted is told', () => {
    expect(ids(demo('bank-below-the-house'))).toContain('water-uncounted')
    expect(ids(planOn(bank))).not.toContain('water-uncounted')
  })

  it('more hours than there are is a clash', () => {
    const plan = demo('bank-below-the-house')
    expect(ids({ ...plan, brief: { ...plan.brief, hoursPerYear: 1 } })).toContain('hours')
    expect(ids({ ...plan, brief: { ...plan.brief, hoursPerYear: 5000 } })).not.toContain('hours')
  })

  it('a house at the top does not see the ground behind the edge (common practice, no source)', () => {
    const [sight] = found(demo('bank-below-the-house')).sights
    expect(sight?.hidden.length).toBeGreaterThan(0)
  })
})
