import { describe, expect, it } from 'vitest'
import { bindingClass } from '../../../src/core/plants/binding'
import { needed, realTables } from './read-plants'
import { practiceTruth } from './read-truth'

describe('soil binding class', () => {
  it('by hand: 0.35 mat, 0.25 depth, 0.20 regrowth, 0.20 cover all year', () => {
    // 0.35·3 + 0.25·2 + 0.20·4 + 0.20·5 = 3.35
    expect(bindingClass({ mat: 3, depth: 2, regrowth: 4, yearRound: 5 })).toBe(3)
    // 0.35·4 + 0.25·4 + 0.20·5 + 0.20·2 = 3.8
    expect(bindingClass({ mat: 4, depth: 4, regrowth: 5, yearRound: 2 })).toBe(4)
    // 0.35·2 + 0.25·2 + 0.20·2 + 0.20·4.5 = 2.5: halves go up
    expect(bindingClass({ mat: 2, depth: 2, regrowth: 2, yearRound: 4.5 })).toBe(3)
  })

  it('holds nothing with nothing, all with all', () => {
    expect(bindingClass({ mat: 0, depth: 0, regrowth: 0, yearRound: 0 })).toBe(0)
    expect(bindingClass({ mat: 5, depth: 5, regrowth: 5, yearRound: 5 })).toBe(5)
  })

  it('refuses parts outside 0 to 5', () => {
    expect(() => bindingClass({ mat: 6, depth: 0, regrowth: 0, yearRound: 0 })).toThrow(RangeError)
    expect(() => bindingClass({ mat: 0, depth: -1, regrowth: 0, yearRound: 0 })).toThrow(RangeError)
    expect(() => bindingClass({ mat: 0, depth: 0, regrowth: Number.NaN, yearRound: 0 })).toThrow(RangeError)
  })

  const tables = realTables()
  for (const { class: expected, names } of practiceTruth.bindingClasses)
    for (const name of names)
      it(`common practice, no source: ${name} is of binding class ${expected}, within one class`, () => {
        expect(Math.abs(bindingClass(needed(tables, name).binding) - expected)).toBeLessThanOrEqual(1)
      })

  it('common practice, no source: suckering shrubs outrank low mats, and mats outrank annuals', () => {
    const classOf = (name: string) => bindingClass(needed(tables, name).binding)
    expect(classOf('Salix purpurea')).toBeGreaterThan(classOf('Ajuga reptans'))
    expect(classOf('Ajuga reptans')).toBeGreaterThan(classOf('Rhinanthus minor'))
  })
})
