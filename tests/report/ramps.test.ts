import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { contrast, rampColour, ramps, wordOn, type RampName } from '../../src/report/ramps'
import { apart, linearOf, oklabOf, oklabOfXyz, sights } from './colour-vision'

/** Least step between neighbours that reads as another class [OKLab × 100]. */
const LEAST_STEP = 8

/** Ramps whose classes are told apart by colour; the others always carry a figure or a sign beside it. */
const told: readonly RampName[] = ['wetness', 'sun', 'gradient', 'hours', 'change']

describe('our own measure of colour', () => {
  it.each([
    [
      [0.95, 1, 1.089],
      [1, 0, 0],
    ],
    [
      [1, 0, 0],
      [0.45, 1.236, -0.019],
    ],
    [
      [0, 1, 0],
      [0.922, -0.671, 0.263],
    ],
    [
      [0, 0, 1],
      [0.153, -1.415, -0.449],
    ],
  ] as const)('Ottosson 2020, table of XYZ %j gives OKLab %j', (xyz, lab) => {
    const measured = oklabOfXyz(xyz)
    lab.forEach((value, at) => expect(Math.abs((measured[at] ?? NaN) - value)).toBeLessThan(0.001))
  })

  it.each(Object.keys(sights))('a grey stays that grey to %s, as both papers construct it', (sight) => {
    const grey = linearOf('#808080')
    expect(apart(grey, sights[sight]?.(grey) ?? [0, 0, 0])).toBeLessThan(0.6)
  })

  it('WCAG 2.2: black on white is 21:1', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5)
  })
})

describe('ramps', () => {
  describe.each(told)('%s', (name) => {
    it.each(Object.entries(sights))('neighbours stay apart: %s', (_, see) => {
      const seen = ramps[name].map((colour) => see(linearOf(colour)))
      const steps = seen.slice(1).map((colour, at) => apart(colour, seen[at] ?? colour))
      expect(Math.min(...steps)).toBeGreaterThanOrEqual(LEAST_STEP)
    })

    it('WCAG 2.2: words on every step reach 4.5:1', () => {
      for (const fill of ramps[name]) expect(contrast(fill, wordOn(fill))).toBeGreaterThanOrEqual(4.5)
    })
  })

  it.each(['wetness', 'sun', 'gradient', 'hours'] as const)(
    '%s reads in grey: lightness only falls or rises',
    (name) => {
      const lightness = ramps[name].map((colour) => oklabOf(linearOf(colour))[0])
      const steps = lightness.slice(1).map((value, at) => value - (lightness[at] ?? value))
      expect(new Set(steps.map(Math.sign)).size).toBe(1)
    },
  )

  it('takes a step by share and refuses what is outside', () => {
    expect(rampColour('wetness', 0)).toBe(ramps.wetness[0])
    expect(rampColour('wetness', 1)).toBe(ramps.wetness[6])
    expect(() => rampColour('sun', 1.01)).toThrow(RangeError)
    expect(() => rampColour('sun', NaN)).toThrow(RangeError)
  })
})

describe('tokens', () => {
  const css = readFileSync(new URL('../../src/report/style/tokens.css', import.meta.url), 'utf8')
  const themes = { light: tokensIn(css, ':root {'), dark: tokensIn(css, ":root[data-theme='dark'] {") }
  const systemDark = tokensIn(css, ":root:not([data-theme='light']) {")

  it('dark is the same by system and by choice', () => {
    expect(systemDark).toEqual(themes.dark)
  })

  describe.each(Object.entries(themes))('%s', (_, tokens) => {
    const words = ['ink', 'graphite', 'leaf', 'water', 'red', 'hours'] as const
    it.each(words)('WCAG 2.2: --%s reads on paper, margin and earth at 4.5:1', (word) => {
      for (const ground of ['paper', 'margin', 'earth'])
        expect(contrast(tokens[word] ?? '', tokens[ground] ?? '')).toBeGreaterThanOrEqual(4.5)
    })

    it('WCAG 2.2: lines that carry meaning reach 3:1 on the earth', () => {
      for (const line of ['root', 'earth-line', 'water', 'red'])
        expect(contrast(tokens[line] ?? '', tokens.earth ?? '')).toBeGreaterThanOrEqual(3)
    })
  })
})

/** Colours of one block of the style sheet, by name. */
function tokensIn(css: string, opening: string): Record<string, string> {
  const from = css.indexOf(opening)
  const block = css.slice(from, css.indexOf('}', from))
  const found: Record<string, string> = {}
  for (const [, name = '', colour = ''] of block.matchAll(/--([a-z-]+): (#[0-9a-f]{6})/g))
    found[name] = colour
  return found
}
