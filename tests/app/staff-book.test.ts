import { describe, expect, it } from 'vitest'
import { reduceSights, type Sight } from '../../src/app/edits/staff-book'

/** Down a slope with one change point; the level stands twice. */
const sights: readonly Sight[] = [
  { kind: 'back', distanceM: 0, staffM: 0.512 },
  { kind: 'between', distanceM: 4, staffM: 1.734 },
  { kind: 'fore', distanceM: 8, staffM: 3.905 },
  { kind: 'back', distanceM: 8, staffM: 0.287 },
  { kind: 'between', distanceM: 12, staffM: 1.65 },
  { kind: 'fore', distanceM: 16, staffM: 2.948 },
]

describe('a booking of staff readings', () => {
  it('common practice, no source: back sights less fore sights are the last level less the first', () => {
    const reduced = reduceSights(sights)
    if (!reduced.ok) throw new Error('not reduced')
    const sum = (kind: Sight['kind']) =>
      sights.filter((sight) => sight.kind === kind).reduce((total, { staffM }) => total + staffM, 0)
    const [first, last] = [reduced.value[0], reduced.value.at(-1)]
    expect((last?.levelM ?? 0) - (first?.levelM ?? 0)).toBeCloseTo(sum('back') - sum('fore'), 9)
  })

  it('common practice, no source: rise and fall gives the same levels as the height of the instrument', () => {
    const reduced = reduceSights(sights)
    if (!reduced.ok) throw new Error('not reduced')
    let levelM = 100
    const byFalls = [levelM]
    for (const [at, sight] of sights.entries()) {
      const before = sights[at - 1]
      if (!before || sight.kind === 'back') continue
      levelM += before.staffM - sight.staffM
      byFalls.push(levelM)
    }
    expect(reduced.value.map((station) => station.levelM)).toEqual(
      byFalls.map((level) => Number(level.toFixed(3))),
    )
    expect(reduced.value.map(({ distanceM }) => distanceM)).toEqual([0, 4, 8, 12, 16])
  })

  it('a change point stands once, however often it is read', () => {
    const reduced = reduceSights(sights.slice(0, 4))
    expect(reduced.ok && reduced.value.map(({ distanceM }) => distanceM)).toEqual([0, 4, 8])
  })

  it.each([
    [[{ kind: 'between', distanceM: 0, staffM: 1 }], 'reading 1'],
    [[...sights.slice(0, 3), { kind: 'between', distanceM: 10, staffM: 1 }], 'reading 4'],
  ] as const)('%# asks for a back sight first', (readings, where) => {
    const reduced = reduceSights(readings)
    expect(reduced.ok ? '' : reduced.problems[0]?.where).toBe(where)
  })
})
