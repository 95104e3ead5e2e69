import { describe, expect, it } from 'vitest'
import { standingOf, type Thing } from '#core/shade'
import { eachMonth } from '#core/units'
import { loadTables } from '#io'

const tables = loadTables().shade
const LATITUDE_DEG = 51

/** A plot of 20 by 20 cells of a metre, its south-west corner at the origin. */
function groundOf(level: (eastM: number, northM: number) => number) {
  const frame = { columns: 20, rows: 20, cellM: 1, westM: 0, southM: 0 }
  const levelM = Float64Array.from({ length: 400 }, (_, cell) =>
    level((cell % 20) + 0.5, 19.5 - Math.floor(cell / 20)),
  )
  return { frame, levelM, share: new Float64Array(400).fill(1) }
}

const flat = groundOf(() => 10)
/** Falls 1 in 2 to the south. */
const bank = groundOf((_, northM) => northM / 2)

const ring = (...corners: [number, number][]) => corners.map(([eastM, northM]) => ({ eastM, northM }))

const thing = (kind: string, at: Thing['ring'], more: Partial<Thing> = {}): Thing => ({
  id: 'it',
  name: 'It',
  kind,
  ring: at,
  ...more,
})

const only = (one: Thing, ground = flat, latitudeDeg = LATITUDE_DEG) => {
  const [standing] = standingOf([one], ground, tables, latitudeDeg)
  if (!standing) throw new Error('it does not stand')
  return standing
}

describe('what stands', () => {
  it('is nothing without a height, at height 0, or of kinds that lie flat (common practice, no source)', () => {
    const at = ring([2, 2], [8, 2], [8, 6])
    const none = [
      thing('house', at),
      thing('wall', at, { heightM: 0 }),
      thing('tree', at),
      ...['path', 'drain', 'downpipe', 'spring', 'paving', 'services'].map((kind) =>
        thing(kind, at, { heightM: 3 }),
      ),
    ]
    expect(standingOf(none, flat, tables, LATITUDE_DEG)).toEqual([])
  })

  it('is nothing of a wall or house drawn as one point, which has no width (exact geometry)', () => {
    const things = [thing('wall', ring([2, 2]), { heightM: 2 }), thing('house', ring([2, 2]), { heightM: 2 })]
    expect(standingOf(things, flat, tables, LATITUDE_DEG)).toEqual([])
  })
})

describe('a building', () => {
  const outline = ring([2, 4], [12, 4], [12, 10], [2, 10])

  it('stands on the mean level of its corners, its top level: 3.5 m of ground and 5 m of wall (exact geometry)', () => {
    const { screens, crowns } = only(thing('house', outline, { heightM: 5 }), bank)
    expect(crowns).toEqual([])
    expect(screens.map(({ from, to }) => [from, to])).toEqual([
      [outline[0], outline[1]],
      [outline[1], outline[2]],
      [outline[2], outline[3]],
      [outline[3], outline[0]],
    ])
    for (const { topFromM, topToM } of screens) {
      expect(topFromM).toBeCloseTo(8.5, 9)
      expect(topToM).toBeCloseTo(8.5, 9)
    }
  })

  it('stands on the level given for its foot instead (exact geometry)', () => {
    const [wall] = only(thing('building', outline, { heightM: 5, groundM: 30 }), bank).screens
    expect([wall?.topFromM, wall?.topToM]).toEqual([35, 35])
  })

  it('carries its ridge along the longer side, through the middle, with two gables at each end (exact geometry)', () => {
    const { screens } = only(thing('house', outline, { heightM: 5, ridgeM: 8 }))
    const roof = screens.slice(4)
    const [ridge] = roof
    expect([ridge?.topFromM, ridge?.topToM]).toEqual([18, 18])
    const ends = [ridge?.from, ridge?.to].map((end) => [end?.eastM, end?.northM])
    expect(ends.sort((one, other) => one[0]! - other[0]!)).toEqual([
      [2, 7],
      [12, 7],
    ])
    const gables = roof.slice(1)
    expect(gables).toHaveLength(4)
    for (const { from, to, topFromM, topToM } of gables) {
      const rise = { 4: 15, 7: 18, 10: 15 }
      expect(from.eastM).toBe(to.eastM)
      expect(topFromM).toBe(rise[from.northM as 4])
      expect(topToM).toBe(rise[to.northM as 4])
    }
  })

  it('turned by 30° carries its ridge turned by 30° (exact geometry)', () => {
    const [cos, sin] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)]
    const turn = (east: number, north: number): [number, number] => [
      5 + east * cos - north * sin,
      5 + east * sin + north * cos,
    ]
    const turned = ring(turn(0, 0), turn(8, 0), turn(8, 4), turn(0, 4))
    const ridge = only(thing('house', turned, { heightM: 3, ridgeM: 5 })).screens[4]
    const places = [ridge!.from, ridge!.to].sort((one, other) => one.eastM - other.eastM)
    const wanted = [turn(0, 2), turn(8, 2)]
    places.forEach(({ eastM, northM }, end) => {
      expect(eastM).toBeCloseTo(wanted[end]![0], 9)
      expect(northM).toBeCloseTo(wanted[end]![1], 9)
    })
  })

  it('of an L ends its ridge at the walls it meets, never over the missing corner (exact geometry)', () => {
    // 12 by 8 m, the north-east 6 by 3 m missing: the ridge runs at 4 m, over both end walls.
    const corner = ring([0, 0], [12, 0], [12, 5], [6, 5], [6, 8], [0, 8])
    const roof = only(thing('house', corner, { heightM: 3, ridgeM: 6 })).screens.slice(6)
    const gables = roof.slice(1).flatMap(({ from, to }) => [from, to])
    for (const { eastM, northM } of gables) expect(eastM > 6 && northM > 5).toBe(false)
    expect([roof[0]?.from.northM, roof[0]?.to.northM]).toEqual([4, 4])
  })
})

describe('a wall, fence or hedge', () => {
  it('is one screen on even ground, its top parallel to the bank (exact geometry)', () => {
    const { screens } = only(thing('wall', ring([5, 15], [5, 5]), { heightM: 2 }), bank)
    expect(screens).toHaveLength(1)
    expect(screens[0]?.topFromM).toBeCloseTo(9.5, 9)
    expect(screens[0]?.topToM).toBeCloseTo(4.5, 9)
  })

  it('is cut where the ground bends, its top never more than 2 cm off the ground it follows (exact geometry)', () => {
    const bent = groundOf((_, northM) => Math.max(0, northM - 10))
    const { screens } = only(thing('fence', ring([5, 2], [5, 18]), { heightM: 1 }), bent)
    expect(screens.length).toBeGreaterThan(1)
    const topAt = (northM: number) => {
      const piece = screens.find(({ from, to }) => from.northM <= northM && northM <= to.northM)!
      const share = (northM - piece.from.northM) / (piece.to.northM - piece.from.northM)
      return piece.topFromM + share * (piece.topToM - piece.topFromM)
    }
    // At whole cells, where the ground read between cell centres is that of the formula but beside the bend itself.
    for (const northM of [2, 4, 6, 8, 12, 14, 16, 18])
      expect(Math.abs(topAt(northM) - 1 - Math.max(0, northM - 10))).toBeLessThanOrEqual(0.02)
  })

  it('stays open: three corners are two sides (exact geometry)', () => {
    const { screens } = only(thing('hedge', ring([2, 2], [8, 2], [8, 8]), { heightM: 2 }))
    expect(screens.map(({ from, to }) => [from.eastM, from.northM, to.eastM, to.northM])).toEqual([
      [2, 2, 8, 2],
      [8, 2, 8, 8],
    ])
  })

  it('off the plot stands on the nearest ground (exact geometry)', () => {
    const { screens } = only(thing('wall', ring([5, 40], [8, 40]), { heightM: 2 }), bank)
    // The northernmost cell centres lie at 19.5 m north, 9.75 m up.
    for (const { topFromM, topToM } of screens) expect([topFromM, topToM]).toEqual([11.75, 11.75])
  })
})

describe('a tree', () => {
  it('has its crown where it is drawn, with base, top and width as measured (exact geometry)', () => {
    const { crowns, screens } = only(
      thing('tree', ring([6, 8]), { heightM: 9, crownBaseM: 2, crownWidthM: 5 }),
      bank,
    )
    expect(screens).toEqual([])
    expect(crowns).toEqual([{ at: { eastM: 6, northM: 8 }, radiusM: 2.5, baseM: 6, topM: 13 }])
  })

  it('drawn as an outline has its middle and mean radius (exact geometry)', () => {
    const corners = Array.from({ length: 8 }, (_, at): [number, number] => [
      10 + 3 * Math.cos((at * Math.PI) / 4),
      10 + 3 * Math.sin((at * Math.PI) / 4),
    ])
    const [crown] = only(thing('tree', ring(...corners), { heightM: 8 })).crowns
    expect(crown?.at.eastM).toBeCloseTo(10, 9)
    expect(crown?.at.northM).toBeCloseTo(10, 9)
    expect(crown?.radiusM).toBeCloseTo(3, 9)
  })

  it('of which only the height is known takes the shares of the table', () => {
    const { baseShare, widthShare } = tables.things.crown
    const [crown] = only(thing('tree', ring([6, 8]), { heightM: 10 })).crowns
    expect(crown?.baseM).toBeCloseTo(10 + 10 * baseShare, 9)
    expect(crown?.topM).toBe(20)
    expect(crown?.radiusM).toBeCloseTo(5 * widthShare, 9)
  })

  it('refuses lowest branches that are not below its top', () => {
    const tree = thing('tree', ring([6, 8]), { heightM: 3, crownBaseM: 3 })
    expect(() => only(tree)).toThrow(
      new RangeError('crownOf: crownBaseM [m] must be below heightM, 3, got 3'),
    )
  })
})

describe('light that comes through', () => {
  const at = ring([6, 8], [9, 8])
  const through = (kind: string, more: Partial<Thing> = {}, latitudeDeg = LATITUDE_DEG) =>
    only(thing(kind, at, { heightM: 3, ...more }), flat, latitudeDeg).through

  it.each(['house', 'building', 'wall', 'fence'])(
    'is none through a %s of which nothing more is known',
    (kind) => {
      expect(through(kind)).toEqual(eachMonth(() => 0))
    },
  )

  it('is that of the gaps of a fence all year', () => {
    expect(through('fence', { leafyLight: 0.4 })).toEqual(eachMonth(() => 0.4))
  })

  it('Konarska 2014: crowns in leaf let 1.3 to 5.3 % of direct light through, bare ones 40.2 to 51.9 % (memory)', () => {
    const months = through('tree')
    const inLeaf = [4, 5, 6, 7, 8, 9]
    months.forEach((share, month) => {
      const [least, most] = inLeaf.includes(month) ? [0.013, 0.053] : [0.402, 0.519]
      expect(share).toBeGreaterThanOrEqual(least)
      expect(share).toBeLessThanOrEqual(most)
    })
  })

  it('comes half a year later in the south', () => {
    const north = through('tree')
    const south = through('tree', {}, -37)
    expect(south).toEqual(eachMonth((month) => north[(month + 6) % 12]))
  })

  it('is that of leaves in the months given, which hold as they are and may run over the new year', () => {
    const leafMonths = { from: 11, to: 2 }
    const given = { leaf: 'deciduous', leafyLight: 0.1, bareLight: 0.6, leafMonths } as const
    for (const latitudeDeg of [51, -37])
      expect(through('hedge', given, latitudeDeg)).toEqual([
        0.1, 0.1, 0.6, 0.6, 0.6, 0.6, 0.6, 0.6, 0.6, 0.6, 0.1, 0.1,
      ])
  })

  it('is the same all year through an evergreen', () => {
    expect(through('tree', { leaf: 'evergreen', leafyLight: 0.2, bareLight: 0.7 })).toEqual(
      eachMonth(() => 0.2),
    )
  })
})
