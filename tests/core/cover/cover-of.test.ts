import { describe, expect, it } from 'vitest'
import { booksOut } from '#core/units'
import { coverKinds, coverOf, refusalOf, workLimit, type CoverKind } from '#core/cover'
import { truth } from './truth'
import { brief, degOfPercent, option, steep, tables, zone } from './tables'

const slopeMower = brief([{ id: 'slope-mower', limitDeg: 45 }])
const verdict = (deg: number, kind: CoverKind) =>
  option(coverOf(steep(deg), slopeMower, tables), kind).verdict
const lines = (deg: number, kind: CoverKind, changes = {}) =>
  option(coverOf(steep(deg, changes), slopeMower, tables), kind).fitness.lines.map(({ id }) => id)

describe('gradients against published figures', () => {
  it('Strom 2013: grass is refused beyond 50 %, whatever the machine’s plate says', () => {
    const extremeDeg = degOfPercent(truth.grassedBank.extremePercent)
    for (const kind of ['mown', 'meadow'] as const) {
      expect(verdict(extremeDeg, kind)).not.toBe('refused')
      expect(verdict(extremeDeg + 0.1, kind)).toBe('refused')
    }
  })

  it('Strom 2013: grass loses points beyond 33 %, planting beyond 50 %', () => {
    const desirableDeg = degOfPercent(truth.grassedBank.desirablePercent)
    expect(lines(desirableDeg - 0.1, 'mown')).not.toContain('steep-turf')
    expect(lines(desirableDeg + 0.1, 'mown')).toContain('steep-turf')
    const plantedDeg = degOfPercent(truth.plantedBank.desirablePercent)
    expect(lines(plantedDeg - 0.1, 'shrubs')).not.toContain('beyond-desirable')
    expect(lines(plantedDeg + 0.1, 'shrubs')).toContain('beyond-desirable')
  })

  it('Strom 2013: nothing is planted beyond 100 %', () => {
    const extremeDeg = degOfPercent(truth.plantedBank.extremePercent)
    for (const kind of ['ground-cover', 'shrubs', 'trees', 'terrace'] as const)
      expect(verdict(extremeDeg + 0.1, kind)).toBe('refused')
  })

  it('Georgia DOT 2007: easy mowing ends at 1 in 4', () => {
    const easyDeg = degOfPercent(truth.easyMowing.riseOverRun * 100)
    expect(lines(easyDeg - 0.1, 'mown')).toContain('easy-mowing')
    expect(lines(easyDeg + 0.1, 'mown')).not.toContain('easy-mowing')
  })

  it('Camden 2023: a public lawn ends at 1 in 6', () => {
    const lawnDeg = degOfPercent(truth.publicLawn.riseOverRun * 100)
    expect(lines(lawnDeg - 0.1, 'mown')).toContain('public-lawn')
    expect(lines(lawnDeg + 0.1, 'mown')).not.toContain('public-lawn')
  })

  it('International Building Code Appendix J: no terrace beyond 2 in 1 without a report', () => {
    const reportDeg = degOfPercent(truth.cutAndFill.riseOverRun * 100)
    expect(verdict(reportDeg - 0.1, 'terrace')).not.toBe('refused')
    expect(verdict(reportDeg + 0.1, 'terrace')).toBe('refused')
  })

  it('USDA PLANTS: soil shallower than half of all trees need counts against trees', () => {
    expect(lines(10, 'trees', { soilDepthM: truth.soilForTreesM.median - 0.01 })).toContain('shallow-trees')
    expect(lines(10, 'trees', { soilDepthM: truth.soilForTreesM.median + 0.01 })).not.toContain(
      'shallow-trees',
    )
  })
})

describe('accounts', () => {
  const zones = [0, 4, 9, 14, 17, 22, 27, 33, 41].flatMap((deg) =>
    [10, 60, 95].flatMap((wetness) =>
      [1, 6, 14].map((sun) => steep(deg, { wetness, midsummerSunHours: sun })),
    ),
  )

  it('book out, stay within 0 to 100, and hold 0 where refused', () => {
    for (const facts of zones)
      for (const one of coverOf(facts, brief(), tables).options) {
        expect(booksOut(one.fitness)).toBe(true)
        expect(one.fitness.total).toBeGreaterThanOrEqual(0)
        expect(one.fitness.total).toBeLessThanOrEqual(100)
        expect(new Set(one.fitness.lines.map(({ id }) => id)).size).toBe(one.fitness.lines.length)
        if (one.verdict === 'refused') expect(one.fitness.total).toBe(0)
        expect(refusalOf(one) === undefined).toBe(one.verdict !== 'refused')
      }
  })

  it('end at 0 when a table takes more points than it gives', () => {
    const harsh = {
      id: 'harsh',
      covers: ['leave' as const],
      when: {},
      points: -60,
      because: 'harsh test row',
      source: 'yours',
    }
    const cover = coverOf(zone(), brief(), { ...tables, rules: [...tables.rules, harsh] })
    expect(option(cover, 'leave').fitness.total).toBe(0)
    expect(booksOut(option(cover, 'leave').fitness)).toBe(true)
  })

  it('suggest the fittest cover that is not refused, and judge all seven', () => {
    for (const facts of zones) {
      const cover = coverOf(facts, brief(), tables)
      expect(cover.options.map(({ kind }) => kind)).toEqual([...coverKinds])
      const open = cover.options.filter((one) => one.verdict !== 'refused')
      const most = Math.max(...open.map((one) => one.fitness.total))
      expect(option(cover, cover.suggested).fitness.total).toBe(most)
      expect(option(cover, cover.suggested).verdict).not.toBe('refused')
    }
  })
})

describe('suggestions (common practice, no source)', () => {
  const suggested = (deg: number, changes = {}) => coverOf(steep(deg, changes), brief(), tables).suggested

  it('level sunny ground is mown (common practice, no source)', () => {
    expect(suggested(2)).toBe('mown')
  })

  it('a bank of 24° that would wash away gets evergreen ground cover (common practice, no source)', () => {
    expect(suggested(24, { bareErosionTPerHa: 40 })).toBe('ground-cover')
  })

  it('a soaked bank gets shrubs that bear it (common practice, no source)', () => {
    expect(suggested(20, { wetness: 95, wetDays: 200 })).toBe('shrubs')
  })

  it('nothing but leaving it alone above 35°, with advice asked for (common practice, no source)', () => {
    const cover = coverOf(steep(38), brief(), tables)
    expect(cover.suggested).toBe('leave')
    expect(cover.options.filter(({ verdict }) => verdict !== 'refused').map(({ kind }) => kind)).toEqual([
      'leave',
    ])
    expect(option(cover, 'leave').cautions.map(({ id }) => id)).toContain('geotechnical')
    expect(workLimit('advice', tables).value).toBe(35)
  })

  it('no trees beside a house (common practice, no source)', () => {
    const cover = coverOf(zone({ nearHouse: true }), brief(), tables)
    expect(option(cover, 'trees').verdict).toBe('refused')
  })
})

describe('mowing verdict', () => {
  const mowing = (deg: number, machines = brief().machines) =>
    coverOf(steep(deg), brief(machines), tables).mowing

  it('goes from machine to foot to one cut to nothing as the ground steepens', () => {
    expect(mowing(8, [{ id: 'ride-on' }])).toBe('mow')
    expect(mowing(14)).toBe('mow-on-foot')
    expect(mowing(20)).toBe('cut-once')
    expect(mowing(26)).toBe('leave')
    expect(mowing(26, [{ id: 'slope-mower' }])).toBe('mow')
    expect(mowing(31, [{ id: 'slope-mower', limitDeg: 45 }])).toBe('leave')
    expect(mowing(36, [{ id: 'slope-mower', limitDeg: 45 }])).toBe('never')
  })

  it('asks for a machine that keeps turf short', () => {
    const cover = coverOf(steep(5), brief([{ id: 'scythe' }]), tables)
    expect(cover.mowing).toBe('cut-once')
    expect(refusalOf(option(cover, 'mown'))).toContain('No machine of the plan')
  })
})

describe('a person’s choice', () => {
  it('stands, and keeps its refusal for the plan to warn of', () => {
    const cover = coverOf(steep(24), brief(), tables, 'mown')
    expect(cover).toMatchObject({ chosen: 'mown', chosenByPerson: true })
    expect(option(cover, 'mown').verdict).toBe('refused')
    expect(cover.suggested).not.toBe('mown')
  })

  it('is the suggestion when nothing was chosen', () => {
    const cover = coverOf(zone(), brief(), tables)
    expect(cover).toMatchObject({ chosen: cover.suggested, chosenByPerson: false })
  })
})

describe('refusals that are not about gradient (common practice, no source)', () => {
  it.each([
    ['mown', { wetDays: 260 }, /too wet on 260 days a year/],
    ['mown', { midsummerSunHours: 1 }, /1\.0 h of midsummer sun/],
    ['meadow', { midsummerSunHours: 1.5 }, /1\.5 h of midsummer sun/],
    ['trees', { slopeAreaM2: 12 }, /12\.0 m² of slope/],
    ['trees', { soilDepthM: 0.25 }, /0\.25 m of soil/],
    ['trees', { nearHouse: true }, /arborist/],
  ] as const)('%s with %j says why in figures', (kind, changes, why) => {
    const one = option(coverOf(zone(changes), brief(), tables), kind)
    expect(one.verdict).toBe('refused')
    expect(refusalOf(one)).toMatch(why)
  })

  it('a limit on wetness is spoken of in points', () => {
    const row = {
      id: 'leave-soaked',
      cover: 'leave' as const,
      measure: 'wetness' as const,
      side: 'above' as const,
      limit: 90,
      because: 'A row of this test.',
      source: 'yours',
    }
    const limits = { ...tables.limits, covers: [...tables.limits.covers, row] }
    const one = option(coverOf(zone({ wetness: 95 }), brief(), { ...tables, limits }), 'leave')
    expect(refusalOf(one)).toContain('wetness of 95 of 100')
  })
})

describe('cautions', () => {
  const ids = (kind: CoverKind, deg: number, changes = {}, towardsHouse = false) =>
    option(
      coverOf(steep(deg, changes), { ...brief(), fallsTowardsHouse: towardsHouse }, tables),
      kind,
    ).cautions.map(({ id }) => id)

  it('never design a wall: every terrace defers to engineer, permit and code', () => {
    for (const deg of [6, 12, 20, 30, 44]) {
      expect(ids('terrace', deg)).toEqual(
        expect.arrayContaining(['wall-engineer', 'wall-permit', 'cut-and-fill']),
      )
      expect(option(coverOf(steep(deg), brief(), tables), 'terrace').verdict).not.toBe('good')
    }
  })

  it('point at water when the ground falls towards a house, for every cover', () => {
    for (const kind of coverKinds) {
      expect(ids(kind, 10, {}, true)).toContain('house-water')
      expect(ids(kind, 10, {}, false)).not.toContain('house-water')
    }
  })

  it('ask about services before digging, arborist for trees, movement where steep and wet', () => {
    for (const kind of ['ground-cover', 'shrubs', 'trees', 'terrace'] as const)
      expect(ids(kind, 10)).toContain('services')
    expect(ids('trees', 10)).toContain('tree-arborist')
    expect(ids('leave', 25, { wetness: 80 })).toContain('slip-signs')
    expect(ids('leave', 25, { wetness: 40 })).not.toContain('slip-signs')
  })
})

describe('refusals of bad facts', () => {
  it('throws on a slope outside 0 to 90° and on facts that are not finite', () => {
    expect(() => coverOf(steep(90), brief(), tables)).toThrow(/slopeDegSteep must be 0 to below 90, got 90/)
    expect(() => coverOf(zone({ wetDays: NaN }), brief(), tables)).toThrow(/wetDays must be finite/)
  })

  it('throws when a table lacks a limit of work', () => {
    const bare = { ...tables, limits: { ...tables.limits, work: [] } }
    expect(() => workLimit('advice', bare)).toThrow(/must hold advice/)
  })
})
