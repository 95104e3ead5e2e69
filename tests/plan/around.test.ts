import { describe, expect, it } from 'vitest'
import { sightBlocks, type Beyond, type Plan, type Viewpoint } from '#plan'
import { bank, found, planOn } from './plans'

// A bank facing south, 10 m wide: its foot lies to the south.
const plain = planOn(bank)
const { boundary } = found(plain).surface
const south = Math.min(...boundary.map(({ northM }) => northM))
const north = Math.max(...boundary.map(({ northM }) => northM))
const [first] = boundary
if (!first) throw new Error('a bank has corners')

const allRound = (what: Beyond['what'], changes: Partial<Beyond> = {}): Plan => ({
  ...plain,
  survey: {
    ...plain.survey,
    beyond: [{ id: 'there', name: 'There', what, from: first, to: first, ...changes }],
  },
})

const house = (northM: number) => ({
  id: 'cottage',
  kind: 'house' as const,
  name: 'Cottage',
  heightM: 5,
  ring: [
    { eastM: -3, northM: northM - 2 },
    { eastM: 3, northM: northM - 2 },
    { eastM: 3, northM: northM + 2 },
    { eastM: -3, northM: northM + 2 },
  ],
})

const withThings = (obstacles: Plan['survey']['obstacles'], viewpoints: Viewpoint[] = []): Plan => ({
  ...plain,
  survey: { ...plain.survey, obstacles, viewpoints },
})

describe('what lies around a plot', () => {
  it.each(['neighbour', 'road'] as const)(
    'water that leaves to a %s is a clash with its place (common practice, no source)',
    (what) => {
      const findings = found(allRound(what))
      const told = findings.toSettle.find(({ id }) => id === 'leaving-there')
      expect(told?.kind).toBe('clash')
      expect(told?.what).toContain('100 %')
      expect(told?.at?.northM).toBeCloseTo(south, 6)
      expect(findings.around.leaving[0]?.beyondId).toBe('there')
    },
  )

  it('water that leaves to the person’s own garden is no clash', () => {
    expect(found(allRound('own-garden')).toSettle.some(({ id }) => id.startsWith('leaving'))).toBe(false)
  })

  it('exact solution: 30 m of field above 10 m of edge add 300 m² to what leaves, and the books close', () => {
    const findings = found(allRound('field', { uphillM: 30 }))
    const { terrain, surface, water } = findings
    const leaving = [...surface.share.keys()].filter(
      (cell) => (surface.share[cell] ?? 0) > 0 && terrain.flow.starts[cell] === terrain.flow.starts[cell + 1],
    )
    const leavesM2 = leaving.reduce((sum, cell) => sum + (terrain.upslopeAreaM2[cell] ?? 0), 0)
    const plotM2 = surface.share.reduce((sum, share) => sum + share, 0) * surface.frame.cellM ** 2
    expect(leavesM2 - plotM2).toBeCloseTo(300, 6)
    const sum = water.account.lines.reduce((total, { amount }) => total + amount, 0)
    expect(Math.abs(sum)).toBeLessThan(1e-6)
    expect(water.account.lines.find(({ id }) => id === 'run-on-there')?.amount).toBeGreaterThan(0)
    expect(findings.zoning.zones[0]?.upslopeAreaM2).toBeCloseTo(300, 6)
  })

  it('a watercourse above sheds nothing onto the plot and takes what lies above it away', () => {
    const findings = found(allRound('watercourse', { uphillM: 30 }))
    expect(findings.terrain.inflowM2).toBeUndefined()
    expect(findings.water.account.lines.find(({ id }) => id === 'run-on')?.amount).toBe(0)
  })

  it('International Residential Code R401.3: ground that falls towards a wall within 3 m is a danger with its figures', () => {
    const told = found(withThings([house(south + 3)])).toSettle.find(({ id }) => id === 'towards-house')
    expect(told?.kind).toBe('danger')
    expect(told?.what).toContain('1 in')
    expect(told?.at?.northM).toBeCloseTo(south + 5, 6)
    expect(told?.source).toBe('irc-r401-3')
  })

  it('a viewpoint looks in place of the house it belongs to', () => {
    const window = {
      id: 'w',
      name: 'Kitchen',
      kind: 'window' as const,
      at: { eastM: 0, northM: north + 0.5 },
      eyeM: 2,
    }
    const top = house(north + 2.2)
    expect(found(withThings([top])).sights.map(({ name }) => name)).toEqual(['Cottage'])
    const findings = found(withThings([top], [window]))
    expect(findings.sights.map(({ name }) => name)).toEqual(['Kitchen'])
    expect(findings.around.views[0]?.name).toBe('Kitchen')
    // An even bank hides nothing of itself, and its own house stands behind the eye.
    expect(findings.around.views[0]?.seenShare).toBeGreaterThan(0.99)
  })
})

it('one cannot look through houses, other buildings, walls, fences and hedges, and only the first two are closed', () => {
  const kinds = ['house', 'building', 'wall', 'fence', 'hedge', 'tree', 'paving', 'drain'] as const
  const obstacles = kinds.map((kind) => ({ id: kind, kind, name: kind, ring: [first], heightM: 2 }))
  const blocks = sightBlocks({ survey: { ...plain.survey, obstacles } })
  expect(blocks.map(({ name, isHouse }) => [name, isHouse])).toEqual([
    ['house', true],
    ['building', true],
    ['wall', false],
    ['fence', false],
    ['hedge', false],
  ])
})
