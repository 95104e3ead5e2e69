import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { SunTaker, ZoneSun } from '#core/shade'
import { eachMonth, type Month } from '#core/units'
import { darkSentence, lightWords, SunTakers, sunTakersTable, TrialCompare, trialTable } from '#report'
import { loadShadeTables } from '../../src/io/shade-tables'
import { changeColour, changeNames, changeWords } from '../../src/report/words/change-classes'
import { takerRows } from '../../src/report/figures/sun/taker-rows'
import { roundedGain } from '../../src/report/figures/sun/trial-rows'
import { contrast, ramps, wordOn } from '../../src/report/ramps'
import { numbersOf, wordsOf, written } from './hung'

/** A zone's sun of one account, alike in all months; its figures prove nothing. */
function zoneSun(
  open: number,
  takers: readonly (Pick<SunTaker, 'what' | 'name'> & { hours: number })[],
): ZoneSun {
  const left = takers.reduce((rest, { hours }) => rest - hours, open)
  const all = (hours: number) => eachMonth(() => hours)
  return {
    sunHours: all(left),
    morningHours: all(left / 2),
    dappledHours: all(0),
    usualWhPerM2: all(2000),
    skyView: 0.9,
    openHours: all(open),
    takers: takers.map(({ what, name, hours }) => ({
      what,
      name,
      thingId: what === 'thing' ? name : undefined,
      hours: all(hours),
    })),
    litShares: eachMonth(() => Array.from({ length: 24 }, () => 0.5)),
    lightClass: 'part-shade',
    middle: { eastM: 0, northM: 0 },
    dark: { kind: 'none' },
    heatLoad: undefined,
    heatLoadShaded: undefined,
  }
}

const JUNE: readonly Month[] = [5]

describe('the account of sun', () => {
  it('property: figures as told add up to the sun that arrives, each within a tenth of an hour of the truth', () => {
    const taker = fc.record({
      what: fc.constantFrom('own-slope', 'ground', 'far', 'several', 'thing' as const),
      name: fc.constantFrom('House', 'Oak', 'Hedge', 'Barn'),
      hours: fc.double({ min: -0.5, max: 2, noNaN: true }),
    })
    const takers = fc.uniqueArray(taker, { selector: ({ what, name }) => (what === 'thing' ? name : what) })
    fc.assert(
      fc.property(fc.double({ min: 7, max: 24, noNaN: true }), takers, (open, taken) => {
        const sun = zoneSun(open, taken)
        const rows = takerRows(sun, { months: JUNE })
        const [first, ...rest] = rows
        const last = rest.at(-1)
        const taking = rest.slice(0, -1).reduce((sum, { hours }) => sum + hours, 0)
        expect((first?.hours ?? 0) - taking).toBeCloseTo(last?.hours ?? NaN, 9)
        expect(Math.abs((last?.hours ?? NaN) - sun.sunHours[5])).toBeLessThanOrEqual(0.05 + 1e-9)
        for (const row of rest.slice(0, -1)) {
          const truth = sun.takers.find(({ thingId, what }) => (thingId ?? what) === row.key)
          expect(Math.abs(row.hours - (truth?.hours[5] ?? NaN))).toBeLessThanOrEqual(0.1 + 1e-9)
        }
      }),
    )
  })

  it.each([320, 768, 1440])('is drawn at %s px as its table tells it', async (widthPx) => {
    const sun = zoneSun(16.3, [
      { what: 'own-slope', name: '', hours: 1.04 },
      { what: 'thing', name: 'Neighbour’s very old and spreading walnut', hours: 2.61 },
      { what: 'several', name: '', hours: -0.21 },
    ])
    const asked = { zoneSun: sun, letter: 'C', name: 'Shelf', time: { name: 'June', months: JUNE } }
    const html = await written(SunTakers, { ...asked, widthPx })
    const drawn = wordsOf(html.replace(/<(title|desc)[\s\S]*?<\/\1>/g, ''))
    for (const row of sunTakersTable(asked).rows)
      for (const cell of row)
        expect(drawn.toLowerCase()).toContain(cell.replace(/\u00A0/g, ' ').toLowerCase())
    expect(html).not.toMatch(/NaN|undefined/)
    for (const x of numbersOf(html, 'x')) expect(x).toBeLessThanOrEqual(widthPx)
    expect(numbersOf(html, 'width').every((wide) => wide >= 0)).toBe(true)
  })
})

describe('two states side by side', () => {
  const zones = ['A', 'B', 'C'].map((letter) => ({ id: letter, letter, name: `Zone ${letter}` }))
  const now = [8.44, 3.05, 12].map((hours) => zoneSun(hours, []))
  const then = [8.46, 5.2, 11.2].map((hours, at) => ({
    ...zoneSun(hours, []),
    ...(at === 1 && { lightClass: 'full-sun' as const }),
  }))
  const asked = { zones, now, then, name: 'Oak thinned', latitudeDeg: 52 }

  it.each([320, 768, 1440])(
    'tells hours, their change with its sign, and the class before and after at %s px',
    async (widthPx) => {
      const html = await written(TrialCompare, { ...asked, widthPx })
      const words = wordsOf(html.replace(/<(title|desc)[\s\S]*?<\/\1>/g, ''))
      for (const told of ['8.4 h', '8.5 h', '+0.1 h', '+2.2 h', '−0.8 h', 'part shade, then full sun'])
        expect(words).toContain(told)
      expect(words).not.toContain('+−')
      expect(html).not.toMatch(/NaN|undefined/)
      for (const x of numbersOf(html, 'x')) expect(x).toBeLessThanOrEqual(widthPx)
      const table = trialTable(asked)
      expect(table.rows.map(([, summer]) => summer?.replace(/\u00A0/g, ' '))).toEqual([
        '8.4 h, then 8.5 h: +0.1 h',
        '3.0 h, then 5.2 h: +2.2 h',
        '12.0 h, then 11.2 h: −0.8 h',
      ])
    },
  )

  it('property: the change agrees with the figures beside it', () => {
    const hours = fc.double({ min: 0, max: 24, noNaN: true })
    fc.assert(
      fc.property(hours, hours, (before, after) => {
        const shown = (time: number) => Number(time.toFixed(1))
        expect(roundedGain(before, after)).toBeCloseTo(shown(after) - shown(before), 9)
      }),
    )
  })

  it('WCAG 2.2: every class of change carries words of 4.5:1, its sign and a name', () => {
    const changes = [-3, -1.5, -0.5, 0, 0.5, 1.5, 3]
    expect(changes.map(changeColour)).toEqual(ramps.change)
    expect(changeNames).toHaveLength(7)
    for (const change of changes) {
      const fill = changeColour(change)
      expect(contrast(fill, wordOn(fill))).toBeGreaterThanOrEqual(4.5)
      expect(changeWords(change)).toMatch(/^[+−±]/)
    }
  })
})

describe('words of light and dark', () => {
  it('calls every light class what its table calls it', () => {
    for (const { id, name } of loadShadeTables().lightClasses) expect(lightWords[id]).toBe(name)
  })

  it.each([
    [{ kind: 'spell', lastDay: 315, firstDay: 31, days: 80 }, 'From 12 November to 30 January'],
    [{ kind: 'spell', lastDay: 365, firstDay: 3, days: 2 }, 'From 1 January to 2 January'],
    [{ kind: 'spell', lastDay: 340, firstDay: 1, days: 25 }, 'From 7 December to 31 December'],
    [{ kind: 'spell', lastDay: 171, firstDay: 173, days: 1 }, 'On 21 June'],
  ] as const)('calendar: dark days of %j', (dark, says) => {
    expect(darkSentence(dark, 'A')).toContain(says)
  })
})
