import { ringAreaM2 } from '#core/geometry'
import type { Outcome } from '#core/units'
import {
  addZone,
  mergeZones,
  removeZone,
  renameZone,
  reshapeZone,
  splitZone,
  zoningOf,
  zonesFromSuggestion,
  type Zone,
} from '#core/zones'
import { describe, expect, it } from 'vitest'
import { steppedGround } from './ground'

const square = (westM: number, southM: number, eastM: number, northM: number): Zone['ring'] => [
  { eastM: westM, northM: southM },
  { eastM, northM: southM },
  { eastM, northM },
  { eastM: westM, northM },
]
const upper: Zone = { id: 'a', name: 'Upper bank', ring: square(0, 6, 10, 12) }
const foot: Zone = { id: 'b', name: 'Foot', ring: square(0, 0, 10, 6) }
const both = [upper, foot]

const areaM2 = (zones: readonly Zone[]) => zones.reduce((sum, { ring }) => sum + ringAreaM2(ring), 0)

function value(outcome: Outcome<Zone[]>): Zone[] {
  if (!outcome.ok) throw new Error(outcome.problems.map(({ what }) => what).join(' '))
  return outcome.value
}

function refusal(outcome: Outcome<Zone[]>): string {
  if (outcome.ok) throw new Error('was not refused')
  for (const { where, what, mend } of outcome.problems)
    expect([where, what, mend].every((words) => words.length > 3)).toBe(true)
  return outcome.problems.map(({ what }) => what).join(' ')
}

describe('splitting and joining', () => {
  it('exact solution: the pieces of a split hold the area of the whole', () => {
    for (const [east, north] of [
      [0, 7],
      [3.3, 11.9],
      [10, 12],
    ] as const) {
      const split = value(
        splitZone(both, 'a', [
          { eastM: -1, northM: 6.5 },
          { eastM: east, northM: north + 0.1 },
        ]),
      )
      expect(split).toHaveLength(3)
      expect(areaM2(split)).toBeCloseTo(120, 9)
      expect(split.map(({ id, name }) => [id, name])).toEqual([
        ['a', 'Upper bank'],
        ['a-2', 'Upper bank 2'],
        ['b', 'Foot'],
      ])
    }
  })

  it('exact solution: what was split joins again to the same area', () => {
    const split = value(
      splitZone(both, 'b', [
        { eastM: 2, northM: 0 },
        { eastM: 7, northM: 6 },
      ]),
    )
    const joined = value(mergeZones(split, ['b', 'b-2']))
    expect(joined).toHaveLength(2)
    expect(areaM2(joined)).toBeCloseTo(120, 9)
    expect(joined[1]?.ring).toHaveLength(4)
  })

  it('exact solution: squares that overlap join to both less what they share', () => {
    const zones = [upper, { id: 'c', name: 'Corner', ring: square(8, 4, 14, 8) }]
    expect(areaM2(value(mergeZones(zones, ['a', 'c'])))).toBeCloseTo(60 + 24 - 4, 9)
  })

  it('exact solution: sides that touch only in part join without a gap', () => {
    const zones = [upper, { id: 'c', name: 'Nook', ring: square(3, 2, 5, 6) }]
    expect(areaM2(value(mergeZones(zones, ['c', 'a'])))).toBeCloseTo(68, 9)
  })

  it('a zone that lies within another is taken in', () => {
    const zones = [{ id: 'c', name: 'Bed', ring: square(3, 7, 5, 9) }, upper]
    expect(areaM2(value(mergeZones(zones, ['a', 'c'])))).toBeCloseTo(60, 9)
  })

  it('three join in whatever order they touch', () => {
    const row = [0, 1, 2].map((at) => ({
      id: `z${at}`,
      name: `Strip ${at}`,
      ring: square(at * 2, 0, at * 2 + 2, 5),
    }))
    const joined = value(mergeZones(row, ['z0', 'z2', 'z1']))
    expect(joined).toHaveLength(1)
    expect(areaM2(joined)).toBeCloseTo(30, 9)
  })

  it('suggested zones, taken over, fill the plot and join to the whole of it', () => {
    const suggestion = zoningOf(steppedGround([{ lengthM: 50, slopeDeg: 20 }]), [])
    const zones = value(zonesFromSuggestion(suggestion))
    expect(areaM2(zones)).toBeCloseTo(500, 9)
    const again = zoningOf(steppedGround([{ lengthM: 50, slopeDeg: 20 }]), zones)
    expect(again.zones.map(({ id, planAreaM2 }) => [id, planAreaM2])).toEqual(
      suggestion.zones.map(({ id, planAreaM2 }) => [id, planAreaM2]),
    )
    const joined = value(
      mergeZones(
        zones,
        zones.map(({ id }) => id),
      ),
    )
    expect(areaM2(joined)).toBeCloseTo(500, 9)
  })
})

describe('other edits', () => {
  it('rename, reshape, add and remove leave the given zones as they were', () => {
    const before = JSON.stringify(both)
    expect(value(renameZone(both, 'a', ' Hot bank '))[0]?.name).toBe('Hot bank')
    expect(areaM2(value(reshapeZone(both, 'b', square(0, 0, 10, 5))))).toBe(110)
    expect(
      value(addZone(both, { id: 'c', name: 'Pond', ring: square(4, 4, 6, 6) })).map(({ id }) => id),
    ).toEqual(['c', 'a', 'b'])
    expect(value(removeZone(both, 'a'))).toEqual([foot])
    expect(JSON.stringify(both)).toBe(before)
  })
})

describe('bad edits are refused in plain words', () => {
  const far: Zone = { id: 'c', name: 'Far', ring: square(50, 50, 60, 60) }
  const point = { eastM: 1, northM: 1 }
  const cases: [string, Outcome<Zone[]>, string][] = [
    ['unknown zone renamed', renameZone(both, 'x', 'New'), 'no such zone'],
    ['empty name', renameZone(both, 'a', '  '), 'give the zone a name'],
    ['name taken', renameZone(both, 'a', 'Foot'), 'already has this name'],
    [
      'crossing outline',
      reshapeZone(
        both,
        'a',
        [0, 2, 1, 3].flatMap((at) => upper.ring[at] ?? []),
      ),
      'crosses itself',
    ],
    ['two corners', reshapeZone(both, 'a', upper.ring.slice(0, 2)), 'at least three corners'],
    ['a sliver', reshapeZone(both, 'a', square(0, 0, 0.1, 0.1)), '0.01 m²'],
    ['unknown zone split', splitZone(both, 'x', [point, { eastM: 2, northM: 2 }]), 'no such zone'],
    ['a line beside it', splitZone(both, 'a', [point, { eastM: 2, northM: 1 }]), 'does not cross'],
    ['a point for a line', splitZone(both, 'a', [point, point]), 'single point'],
    [
      'a split that leaves a sliver',
      splitZone(both, 'a', [
        { eastM: 0, northM: 6.01 },
        { eastM: 10, northM: 6.01 },
      ]),
      'less than 0.25 m²',
    ],
    ['one zone joined', mergeZones(both, ['a', 'a']), 'two zones'],
    ['unknown zone joined', mergeZones(both, ['a', 'x']), 'no such zone'],
    ['zones apart joined', mergeZones([...both, far], ['a', 'c']), 'lie apart'],
    ['id taken', addZone(both, { ...far, id: 'a' }), 'already is a zone'],
    ['bad zone added', addZone(both, { ...far, ring: [] }), 'three corners'],
    ['unknown zone removed', removeZone(both, 'x'), 'no such zone'],
    [
      'nothing to take over',
      zonesFromSuggestion({ zones: [], zoneOfCell: new Int16Array(0), suggested: true }),
      'no suggested zones',
    ],
  ]
  it.each(cases)('%s', (_, outcome, words) => {
    expect(refusal(outcome)).toContain(words)
  })
})
