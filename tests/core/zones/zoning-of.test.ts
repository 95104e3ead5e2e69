import { ringAreaM2 } from '#core/geometry'
import { zoneMeans, zoneProblems, zoningOf, type Zone } from '#core/zones'
import { describe, expect, it } from 'vitest'
import { steppedGround } from './ground'

const square = (westM: number, southM: number, eastM: number, northM: number): Zone['ring'] => [
  { eastM: westM, northM: southM },
  { eastM, northM: southM },
  { eastM, northM },
  { eastM: westM, northM },
]
const sum = (values: readonly number[]) => values.reduce((so, value) => so + value, 0)

describe('zones suggested on an even bank', () => {
  const bank = zoningOf(steppedGround([{ lengthM: 12, slopeDeg: 20 }]), [])

  it('common practice, no source: a short even bank has an upper, a middle and a foot', () => {
    expect(bank.suggested).toBe(true)
    expect(bank.zones.map(({ letter, name, band }) => [letter, name, band])).toEqual([
      ['A', 'Upper bank', 'upper'],
      ['B', 'Middle bank', 'mid'],
      ['C', 'Foot', 'foot'],
    ])
  })

  it('exact solution: slope area of a plane is plan area over the cosine of its slope', () => {
    for (const zone of bank.zones) {
      expect(zone.planAreaM2).toBeCloseTo(40, 9)
      expect(zone.slopeAreaM2).toBeCloseTo(40 / Math.cos((20 * Math.PI) / 180), 9)
      expect(zone.slopeDegMean).toBeCloseTo(20, 9)
      expect(zone.slopeDegSteep).toBe(20)
      expect(zone.aspectDeg).toBeCloseTo(180, 9)
      expect(zone.lengthM).toBeCloseTo(4, 9)
    }
  })

  it('exact solution: on a plane each zone hands all its water to the next, and the last lets it go', () => {
    const [upper, middle, foot] = bank.zones
    expect(upper?.handsOn).toEqual([{ to: middle?.id, share: 1 }])
    expect(middle?.handsOn).toEqual([{ to: foot?.id, share: 1 }])
    expect(foot?.handsOn).toEqual([])
    expect(bank.zones.map(({ upslopeAreaM2 }) => upslopeAreaM2)).toEqual([0, 40, 80])
  })

  it('exact solution: radiation per m² of slope is that per m² of plan times the cosine', () => {
    for (const zone of bank.zones) expect(zone.seasonSunRatio).toBeCloseTo(Math.cos((20 * Math.PI) / 180), 9)
  })

  it('the section crosses the zones one after the other, without a gap', () => {
    expect(bank.zones.flatMap(({ spans }) => spans)).toEqual([
      { fromM: 0, toM: 4 },
      { fromM: 4, toM: 8 },
      { fromM: 8, toM: 12 },
    ])
  })

  it('outlines fill the plot exactly', () => {
    expect(sum(bank.zones.map(({ ring }) => ringAreaM2(ring)))).toBeCloseTo(120, 9)
  })

  it('common practice, no source: a long even bank has five zones', () => {
    const long = zoningOf(steppedGround([{ lengthM: 50, slopeDeg: 12 }]), [])
    expect(long.zones.map(({ band }) => band)).toEqual(['crest', 'upper', 'mid', 'lower', 'foot'])
  })

  it.each([5, 10, 15, 25, 35])('a plane at a limit of %f° is not split by rounding errors', (slopeDeg) => {
    const ground = steppedGround([{ lengthM: 12, slopeDeg }])
    ground.terrain.slopeDeg.forEach((slope, cell) => {
      ground.terrain.slopeDeg[cell] = slope + (cell % 2 === 0 ? 1e-9 : -1e-9)
    })
    expect(zoningOf(ground, []).zones).toHaveLength(3)
  })
})

describe('zones suggested on uneven ground', () => {
  it('common practice, no source: steep faces and shelves become zones of their own', () => {
    const steps = zoningOf(
      steppedGround([
        { lengthM: 8, slopeDeg: 3 },
        { lengthM: 8, slopeDeg: 30 },
        { lengthM: 6, slopeDeg: 4 },
        { lengthM: 8, slopeDeg: 30 },
        { lengthM: 8, slopeDeg: 2 },
      ]),
      [],
    )
    expect(steps.zones.map(({ name }) => name)).toEqual([
      'Crest',
      'Steep face, higher',
      'Shelf',
      'Steep face, lower',
      'Foot',
    ])
    expect(steps.zones.map(({ slopeDegMean }) => Math.round(slopeDegMean))).toEqual([3, 30, 4, 30, 2])
  })

  it('common practice, no source: a shaded end becomes a zone of its own', () => {
    const ground = steppedGround([{ lengthM: 12, slopeDeg: 20 }], 24)
    for (const month of ground.sunHours)
      month.forEach((_, cell) => {
        if (cell % 24 >= 14) month[cell] = 1
      })
    for (const month of ground.sunRatio)
      month.forEach((_, cell) => {
        if (cell % 24 >= 14) month[cell] = 0.4
      })
    const { zones } = zoningOf(ground, [])
    expect(zones.some(({ sunHours }) => sunHours[5] === 1)).toBe(true)
    expect(zones.every(({ sunHours }) => sunHours[5] === 1 || sunHours[5] === 10)).toBe(true)
    expect(zones.some(({ name }) => name.includes('shady side'))).toBe(true)
  })

  it('level ground is one zone', () => {
    const level = zoningOf(steppedGround([{ lengthM: 10, slopeDeg: 0 }]), [])
    expect(level.zones.map(({ name, aspectDeg, lengthM }) => ({ name, aspectDeg, lengthM }))).toEqual([
      { name: 'Level ground', aspectDeg: undefined, lengthM: 10 },
    ])
    expect(ringAreaM2(level.zones[0]?.ring ?? [])).toBe(100)
  })

  it('rough ground of random slopes still gives at most eight zones, with names of their own', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const ground = steppedGround([{ lengthM: 40, slopeDeg: 18 }], 40)
      let state = seed
      ground.terrain.slopeDeg.forEach((_, cell) => {
        state = (state * 48271) % 2147483647
        ground.terrain.slopeDeg[cell] = (state / 2147483647) * 40
      })
      const { zones, zoneOfCell } = zoningOf(ground, [])
      expect(zones.length).toBeGreaterThanOrEqual(1)
      expect(zones.length).toBeLessThanOrEqual(8)
      expect(new Set(zones.map(({ name }) => name)).size).toBe(zones.length)
      expect(zoneOfCell.every((zone) => zone >= 0)).toBe(true)
      expect(sum(zones.map(({ planAreaM2 }) => planAreaM2))).toBeCloseTo(1600, 6)
      for (const zone of zones) {
        expect(zone.planAreaM2).toBeGreaterThanOrEqual(0.05 * 1600)
        expect(sum(zone.handsOn.map(({ share }) => share))).toBeLessThanOrEqual(1 + 1e-9)
        expect(zone.upslopeAreaM2).toBeLessThanOrEqual(1600 - zone.planAreaM2 + 1e-6)
      }
    }
  })
})

describe('drawn zones', () => {
  const ground = steppedGround([{ lengthM: 12, slopeDeg: 20 }])
  const top: Zone = { id: 'top', name: 'Rockery', ring: square(0, 6, 10, 12) }
  const low: Zone = { id: 'low', name: 'Orchard', ring: square(0, 0, 10, 6) }

  it('keep their names and outlines, lettered from the top', () => {
    const { zones, suggested } = zoningOf(ground, [low, top])
    expect(suggested).toBe(false)
    expect(zones.map(({ letter, name, planAreaM2 }) => [letter, name, planAreaM2])).toEqual([
      ['A', 'Rockery', 60],
      ['B', 'Orchard', 60],
    ])
    expect(zones[0]?.ring).toEqual(top.ring)
    expect(zones[0]?.handsOn).toEqual([{ to: 'low', share: 1 }])
  })

  it('the first outline that holds a cell has it', () => {
    const all: Zone = { id: 'all', name: 'All', ring: square(0, 0, 10, 12) }
    const { zones } = zoningOf(ground, [top, all])
    expect(zones.map(({ id, planAreaM2 }) => [id, planAreaM2])).toEqual([
      ['top', 60],
      ['all', 60],
    ])
  })

  it('take slivers of up to two cells; what is farther off is the rest', () => {
    const short: Zone = { ...low, ring: square(0, 0, 10, 4) }
    const near = zoningOf(ground, [{ ...top, ring: square(0, 7, 10, 12) }, short])
    expect(near.zones.map(({ name }) => name)).toEqual(['Rockery', 'Orchard'])
    const far = zoningOf(ground, [short])
    expect(far.zones.map(({ name, planAreaM2 }) => [name, planAreaM2])).toEqual([
      ['Rest', 60],
      ['Orchard', 60],
    ])
    expect(ringAreaM2(far.zones[0]?.ring ?? [])).toBeCloseTo(60, 9)
  })

  it('that are locked stay when the rest is suggested anew', () => {
    const locked: Zone = { ...low, ring: square(0, 0, 10, 2), name: 'Foot', locked: true }
    const { zones, suggested } = zoningOf(ground, [locked])
    expect(suggested).toBe(true)
    expect(zones.at(-1)).toMatchObject({ id: 'low', name: 'Foot' })
    expect(zones.length).toBeGreaterThan(1)
    expect(new Set(zones.map(({ name }) => name)).size).toBe(zones.length)
    expect(sum(zones.map(({ planAreaM2 }) => planAreaM2))).toBeCloseTo(120, 9)
  })

  it('without ground are left out, and the person is told', () => {
    const off: Zone = { id: 'off', name: 'Far field', ring: square(50, 50, 60, 60) }
    const twin: Zone = { ...top, name: 'Twin' }
    const bow: Zone = {
      id: 'bow',
      name: 'Bow',
      ring: [0, 2, 1, 3].flatMap((at) => square(0, 0, 9, 9)[at] ?? []),
    }
    expect(zoningOf(ground, [top, low, off]).zones.map(({ id }) => id)).toEqual(['top', 'low'])
    expect(zoneProblems(ground.surface, [top, low])).toEqual([])
    const told = zoneProblems(ground.surface, [top, low, off, twin, bow])
    expect(told.map(({ where }) => where)).toEqual([
      'zone “Far field”',
      'zone “Twin”',
      'zone “Twin”',
      'zone “Bow”',
    ])
  })
})

describe('refusals', () => {
  it('of columns that do not fit the grid, and of a plot without cells', () => {
    const ground = steppedGround([{ lengthM: 4, slopeDeg: 20 }])
    expect(() =>
      zoningOf({ ...ground, terrain: { ...ground.terrain, slopeDeg: new Float64Array(3) } }, []),
    ).toThrow(RangeError)
    const empty = { ...ground, surface: { ...ground.surface, share: new Float64Array(40) } }
    expect(() => zoningOf(empty, [])).toThrow('the plot has no cell')
    expect(() => zoneMeans(Int16Array.of(0), 2, Float64Array.of(1), [1])).toThrow(RangeError)
  })
})
