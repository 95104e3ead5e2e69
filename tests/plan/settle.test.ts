import { describe, expect, it } from 'vitest'
import { createDeriver, type Plan } from '#plan'
import { bank, demo as wholeDemo, found as foundAnew, planOn, tables } from './plans'

// One that remembers, as the page has it: what did not change from test to test is not worked out again.
const deriver = createDeriver(tables)
const found = (plan: Plan) => foundAnew(plan, deriver)
// Trials settle nothing.
const demo = (name: string): Plan => ({ ...wholeDemo(name), trials: [] })

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

  it('levels that part from their field book are told with their number', () => {
    const plan = demo('bank-below-the-house')
    const { ground } = plan.survey
    if (ground.kind !== 'profile') throw new Error('the demo is a profile')
    expect(ids(plan).some((id) => id.startsWith('book-'))).toBe(false)
    const stations = ground.stations.map((station, at) =>
      at === 2 || at === 5 ? { ...station, levelM: station.levelM + 0.1 } : station,
    )
    const changed: Plan = { ...plan, survey: { ...plan.survey, ground: { ...ground, stations } } }
    expect(found(changed).toSettle.find(({ id }) => id === 'book-book-1')?.what).toBe(
      'The ground differs from the field book “Down the bank” in 2 places.',
    )
  })

  it('spot levels are compared with the lines of their book at the same places', () => {
    const points = [
      { eastM: 0, northM: 0, levelM: 10 },
      { eastM: 20, northM: 0, levelM: 10.4 },
      { eastM: 0, northM: 20, levelM: 11 },
      { eastM: 20, northM: 20, levelM: 11.5 },
    ]
    // One set-up at 12 m: each level is 12 less the reading.
    const rows = points.map(({ eastM, northM, levelM }, at) => ({
      ...(at === 0 ? { backM: 2 } : at === 3 ? { foreM: 12 - levelM } : { interM: 12 - levelM }),
      eastM,
      northM,
    }))
    const plan = planOn(bank)
    const book = {
      kind: 'level-book',
      id: 'one',
      name: 'One set-up',
      unit: 'm',
      reduction: 'rise-and-fall',
      startLevelM: 10,
      adjust: false,
      rows,
    } as const
    const on = (levelM: number): Plan => ({
      ...plan,
      survey: {
        ...plan.survey,
        ground: {
          kind: 'levels',
          points: points.map((point, at) => (at === 2 ? { ...point, levelM } : point)),
        },
        books: [{ ...book, rows: [...rows] }],
      },
    })
    expect(ids(on(11))).not.toContain('book-one')
    expect(found(on(11.3)).toSettle.find(({ id }) => id === 'book-one')?.what).toContain('in 1 place.')
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
