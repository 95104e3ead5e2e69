import { describe, expect, it } from 'vitest'
import { outOfSight, type Section } from '#core/terrain'

/** A section from distance and level pairs, a station every half metre. */
function section(levelAt: (distanceM: number) => number, lengthM: number): Section {
  const stations = Array.from({ length: lengthM * 2 + 1 }, (_, at) => ({
    distanceM: at / 2,
    levelM: levelAt(at / 2),
    eastM: 0,
    northM: -at / 2,
    slopeDeg: 0,
    cell: 0,
  }))
  return { from: { eastM: 0, northM: 0 }, to: { eastM: 0, northM: -lengthM }, lengthM, stations }
}

describe('what the ground hides', () => {
  it('exact: a shelf of 10 m, then a bank of 1:2; an eye 1.5 m up at its back sees nothing of a bank steeper than 1.5 in 10', () => {
    const ground = section((distanceM) => (distanceM <= 10 ? 20 : 20 - (distanceM - 10) / 2), 30)
    const [stretch, ...more] = outOfSight(ground, { distanceM: 0, levelM: 21.5 })
    expect(more).toEqual([])
    expect(stretch).toEqual({ fromM: 10, toM: 30 })
  })

  it('exact: the same eye sees all of a bank gentler than its sight line', () => {
    const ground = section((distanceM) => (distanceM <= 10 ? 20 : 20 - (distanceM - 10) / 10), 30)
    expect(outOfSight(ground, { distanceM: 0, levelM: 21.5 })).toEqual([])
  })

  it('exact: ground beyond a hidden bank is seen again where it rises over the sight line', () => {
    // The sight line over the edge at 10 m falls 0.15 m a metre: it is at 18.5 m level 20 m out.
    const ground = section((distanceM) => (distanceM <= 10 ? 20 : distanceM < 20 ? 15 : 19), 30)
    expect(outOfSight(ground, { distanceM: 0, levelM: 21.5 })).toEqual([{ fromM: 10, toM: 19.5 }])
  })

  it('a slope falling away hides its lower part from the house (common practice, no source)', () => {
    const ground = section((distanceM) => 20 - (distanceM * distanceM) / 80, 40)
    const hidden = outOfSight(ground, { distanceM: -4, levelM: 21.6 })
    expect(hidden.at(-1)?.toM).toBe(40)
  })

  it('refuses an eye below the ground', () => {
    expect(() =>
      outOfSight(
        section(() => 20, 10),
        { distanceM: 0, levelM: 19 },
      ),
    ).toThrow(RangeError)
  })
})
