import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { professionalAdvice, trueBearing } from '#core/booking'
import { tables } from './books'

const ids = (slopeDeg: number, areaM2: number) =>
  professionalAdvice({ slopeDeg, areaM2 }, tables).map(({ id }) => id)

describe('a professional survey, own judgement', () => {
  it('is not asked for on ground that is steep or large alone', () => {
    expect(ids(40, 50)).toEqual([])
    expect(ids(5, 50_000)).toEqual([])
    expect(ids(15, 400)).toEqual([])
  })

  it.each([
    ['steep-and-large', 18, 1000],
    ['hard-to-stand', 25, 300],
    ['may-slip', 35, 100],
    ['very-large', 10, 5000],
  ])('%s fires at %d° and %d m², and not just below either', (id, slopeDeg, areaM2) => {
    expect(ids(slopeDeg, areaM2)).toContain(id)
    expect(ids(slopeDeg - 0.1, areaM2)).not.toContain(id)
    expect(ids(slopeDeg, areaM2 - 1)).not.toContain(id)
  })

  it('says why with the figures of the ground', () => {
    const [first] = professionalAdvice({ slopeDeg: 27.6, areaM2: 1234.4 }, tables)
    expect(first?.because).toContain('28° over 1234 m²')
    for (const { because } of professionalAdvice({ slopeDeg: 60, areaM2: 9000 }, tables))
      expect(because).not.toMatch(/[{}]/)
  })

  it('more slope or more area never takes a reason away', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 80, noNaN: true }),
        fc.double({ min: 0, max: 10_000, noNaN: true }),
        (slopeDeg, areaM2) => {
          const more = ids(slopeDeg + 5, areaM2 + 500)
          expect(ids(slopeDeg, areaM2).filter((id) => !more.includes(id))).toEqual([])
        },
      ),
    )
  })

  it('refuses ground that cannot be', () => {
    expect(() => ids(91, 10)).toThrow(RangeError)
    expect(() => ids(10, -1)).toThrow(RangeError)
  })
})

describe('a compass bearing turned to true north', () => {
  // True bearing = magnetic bearing + declination, east positive: the definition of declination.
  it.each([
    [90, 10, 100],
    [355, 10, 5],
    [3, -15.75, 347.25],
    [360, 0, 0],
  ])('%d° with a declination of %d° is %d°', (magneticDeg, declinationDeg, expectedDeg) => {
    expect(trueBearing(magneticDeg, declinationDeg)).toBeCloseTo(expectedDeg, 12)
  })

  it('refuses what is no bearing', () => {
    expect(() => trueBearing(NaN, 0)).toThrow(RangeError)
    expect(() => trueBearing(10, 181)).toThrow(RangeError)
  })
})
