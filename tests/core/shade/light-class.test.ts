import { describe, expect, it } from 'vitest'
import { lightClassOf } from '#core/shade'
import { classes } from './scenes'

const clear = (hours: number) => ({ sunHours: hours, clearHours: hours, leafyHours: 0 })

describe('lightClassOf', () => {
  it.each([
    [24, 'full-sun'],
    [6.01, 'full-sun'],
    [6, 'part-shade'],
    [3.01, 'part-shade'],
  ])('common practice, no source: %s hours of direct sun at midsummer are %s', (hours, name) => {
    expect(lightClassOf(clear(hours), classes)).toBe(name)
  })

  it.each([
    [3, 'shade'],
    [1.01, 'shade'],
    [1, 'deep-shade'],
    [0, 'deep-shade'],
  ])('own judgement: %s hours of direct sun at midsummer are %s', (hours, name) => {
    expect(lightClassOf(clear(hours), classes)).toBe(name)
  })

  it('own judgement: dappled where more than half of the hours with sun, and three or more, come through leaves', () => {
    const hours = (clearHours: number, leafyHours: number, through: number) => ({
      sunHours: clearHours + through * leafyHours,
      clearHours,
      leafyHours,
    })
    expect(lightClassOf(hours(0, 10, 0.2), classes)).toBe('dappled')
    expect(lightClassOf(hours(2.9, 3, 0.2), classes)).toBe('dappled')
    expect(lightClassOf(hours(3, 3, 0.2), classes)).toBe('part-shade')
    expect(lightClassOf(hours(0, 2.9, 0.2), classes)).toBe('deep-shade')
    expect(lightClassOf(hours(0, 12, 0.6), classes)).toBe('full-sun')
    expect(lightClassOf(hours(4, 5, 0.4), classes)).toBe('dappled')
  })

  it('refuses a table with no class for the place', () => {
    expect(() => lightClassOf(clear(2), [{ id: 'full-sun', aboveHours: 6 }])).toThrow(RangeError)
  })
})
