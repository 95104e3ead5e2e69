import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import {
  factInWords,
  factNames,
  factTable,
  lightClassOf,
  moistureClassOf,
  scoreNames,
  scoreRulesSchema,
  scoreZone,
  whatWouldChange,
  type ScoreFacts,
  type ScoreName,
  type ScoreRule,
} from '#core/scores'
import { lightClassOf as shadeLightClass } from '#core/shade'
import { booksOut } from '#core/units'
import { loadTables } from '#io'
import { describe, expect, it } from 'vitest'
import { middling, randomFacts, rules, tables } from './score-tables'

const { lightClasses } = loadTables().shade

const everyRule = scoreNames.flatMap((name) => rules[name].map((rule) => [name, rule.id, rule] as const))
const scoreOf = (name: ScoreName, change: Partial<ScoreFacts> = {}, facts: ScoreFacts = middling) =>
  scoreZone({ ...facts, ...change }, rules, {}, 'zone B')[name]

describe('the level book', () => {
  it('books out in whole points for all soils and climates', () => {
    for (const facts of randomFacts(3000, 7)) {
      const scores = scoreZone(facts, rules, {}, 'zone B')
      for (const name of scoreNames) {
        const { ours, value, account } = scores[name]
        expect(account.lines.reduce((sum, { amount }) => sum + amount, 0)).toBe(ours)
        expect(booksOut(account) && account.total === ours && value === ours).toBe(true)
        expect(account.lines.every(({ amount }) => Number.isInteger(amount))).toBe(true)
        expect(ours >= 0 && ours <= 100).toBe(true)
      }
    }
  })

  it('starts at the base and gives every line a reason with its figures filled in, and a source', () => {
    const sources = JSON.parse(
      readFileSync(join(import.meta.dirname, '../../../data/sources.json'), 'utf8'),
    ) as Record<string, unknown>
    for (const facts of randomFacts(300, 11))
      for (const name of scoreNames) {
        const { lines, subject, unit } = scoreOf(name, {}, facts).account
        expect(lines[0]?.id).toBe(`${name}-base`)
        expect(new Set(lines.map(({ id }) => id)).size).toBe(lines.length)
        expect(subject).toContain('zone B')
        expect(unit).toBe('points of 100')
        for (const { because, source } of lines) {
          expect(because).not.toMatch(/[{}]|undefined|NaN/)
          expect(sources).toHaveProperty([source])
        }
      }
  })

  it('shipped rules can never pass 0 or 100, so that no difference is ever cut off', () => {
    for (const name of scoreNames) {
      const base = rules.bases.find(({ score }) => score === name)?.points ?? NaN
      const ends = rules[name].map(({ points }) =>
        typeof points === 'number' ? [0, points] : [0, ...points.table.map(([, given]) => given)],
      )
      expect(base + ends.reduce((sum, each) => sum + Math.min(...each), 0)).toBeGreaterThanOrEqual(0)
      expect(base + ends.reduce((sum, each) => sum + Math.max(...each), 0)).toBeLessThanOrEqual(100)
    }
  })

  it('rules of one’s own that do pass the ends are limited by a line that says so', () => {
    const extra = (id: string, points: number): ScoreRule => ({
      id,
      score: 'wetness',
      points,
      because: 'A spring rises here.',
      source: 'yours',
    })
    for (const [points, total] of [
      [90, 100],
      [-90, 0],
    ] as const) {
      const own = { ...rules, wetness: [...rules.wetness, extra('spring', points)] }
      const { account, ours } = scoreZone(middling, own, {}, 'zone B').wetness
      expect(ours).toBe(total)
      expect(account.lines.at(-1)?.id).toBe('limit')
      expect(account.lines.at(-1)?.because).toContain(`ends at ${total}`)
      expect(account.lines.reduce((sum, { amount }) => sum + amount, 0)).toBe(total)
    }
  })

  it('a person’s own score stands, and ours stays on show', () => {
    const own = { score: 88, reason: 'A land drain ends here.' }
    const { wetness, sun } = scoreZone(middling, rules, { wetness: own }, 'zone B')
    expect(wetness).toMatchObject({ value: 88, class: 'soaked', override: own })
    expect(wetness.ours).toBe(scoreOf('wetness').ours)
    expect(sun.override).toBeUndefined()
  })
})

describe('every rule', () => {
  it.each(everyRule)('%s: %s can be reached, with each of its sentences', (name, id, rule) => {
    const inside = Object.entries(rule.when ?? {}).map(([fact, { above, below }]) => [
      fact,
      above === undefined ? (below ?? 0) - 1 : above + 0.5,
    ])
    const facts = { ...middling, ...(Object.fromEntries(inside) as Partial<ScoreFacts>) }
    const { points } = rule
    const amounts =
      typeof points === 'number'
        ? [amountOf(name, id, facts)]
        : points.table.map(([at]) => amountOf(name, id, { ...facts, [points.fact]: at }))
    expect(amounts.some((amount) => amount !== 0)).toBe(true)
    expect(amounts.some((amount) => amount < 0)).toBe(rule.becauseLess !== undefined)
  })

  it('gives exactly the points of its table at the rows of the table', () => {
    for (const [name, id, { points, when }] of everyRule)
      if (typeof points !== 'number' && !when)
        for (const [at, given] of points.table)
          expect(amountOf(name, id, { ...middling, [points.fact]: at })).toBe(given)
  })

  it('does nothing outside its conditions', () => {
    expect(amountOf('sun', 'over-6-h', { ...middling, midsummerSunHours: 6 })).toBe(0)
    expect(amountOf('frost', 'cold-level', { ...middling, slopeDeg: 0, coldestMonthTMinC: 12 })).toBe(0)
  })

  it('and every fact is used, and every fact has its words', () => {
    const text = JSON.stringify(tables)
    expect(factNames.filter((name) => !text.includes(name))).toEqual([])
    expect(factNames.every((name) => factTable[name].meaning.length > 5)).toBe(true)
    expect(factInWords('slopeDeg', 12.4)).toBe('12°')
    expect(factInWords('position', 0.834)).toBe('83 %')
    expect(factInWords('wetDays', 1.2)).toBe('1 day')
    expect(factInWords('yearRainLessEtMm', -120.4)).toBe('−120 mm')
    expect(factInWords('formAcross', -0.001)).toBe('0.00 1/m')
  })

  it('is told on the method page', () => {
    const page = readFileSync(join(import.meta.dirname, '../../../docs/methods/scores.md'), 'utf8').replace(
      / +/g,
      ' ',
    )
    const ids = [...everyRule.map(([, id]) => id), ...rules.changes.map(({ id }) => id)]
    expect(ids.filter((id) => !page.includes(`| ${id} |`))).toEqual([])
    for (const [, id, { points }] of everyRule) {
      const row = page.split('\n').find((line) => line.includes(`| ${id} |`)) ?? ''
      const told =
        typeof points === 'number' ? `+${points}` : points.table.map(([x, p]) => `${x}: ${p}`).join(', ')
      expect(row).toContain(told)
    }
  })
})

function amountOf(name: ScoreName, id: string, facts: ScoreFacts): number {
  return scoreOf(name, {}, facts).account.lines.find((line) => line.id === id)?.amount ?? 0
}

describe('classes of sun', () => {
  /** Score classes that each light class may have; dappled shade is told by leaves, not by hours. */
  const allowed: Readonly<Record<string, readonly string[]>> = {
    'full sun': ['full sun'],
    'part shade': ['part shade', 'mostly sunny'],
    shade: ['shade'],
    'deep shade': ['deep shade'],
  }

  it.each([
    [0, 'deep shade'],
    [1, 'deep shade'],
    [1.1, 'shade'],
    [2.5, 'shade'],
    [3, 'shade'],
    [3.1, 'part shade'],
    [6, 'part shade'],
    [6.1, 'full sun'],
    [12, 'full sun'],
  ])('common practice, no source: %s h of sun at midsummer is %s, in both tables', (hours, name) => {
    const id = shadeLightClass({ sunHours: hours, clearHours: hours, leafyHours: 0 }, lightClasses)
    expect(lightClasses.find((row) => row.id === id)?.name).toBe(name)
    // However strong the season and however bright the winter.
    for (const seasonSunRatio of [0, 1.4])
      for (const midwinterSunHours of [0, 8]) {
        const sun = scoreOf('sun', { midsummerSunHours: hours, seasonSunRatio, midwinterSunHours })
        expect(allowed[name]).toContain(sun.class)
      }
  })
})

describe('common practice, no source: what must hold for all soils and climates', () => {
  const sets = randomFacts(400, 3)
  const grows = (
    name: ScoreName,
    worse: Partial<ScoreFacts>,
    better: Partial<ScoreFacts>,
    strictly: boolean,
  ) => {
    for (const facts of sets) {
      const [more, less] = [scoreOf(name, worse, facts).ours, scoreOf(name, better, facts).ours]
      if (strictly) expect(more).toBeGreaterThan(less)
      else expect(more).toBeGreaterThanOrEqual(less)
    }
  }

  it('common practice, no source: the crest is drier than the foot', () => {
    grows('wetness', { position: 0 }, { position: 1 }, true)
  })

  it('common practice, no source: higher is never wetter', () => {
    for (let at = 0; at < 20; at++)
      grows('wetness', { position: at / 20 }, { position: (at + 1) / 20 }, false)
  })

  it('common practice, no source: facing the midday sun is sunnier and drier, in both hemispheres alike', () => {
    grows(
      'sun',
      { seasonSunRatio: 1.2, midwinterSunHours: 6 },
      { seasonSunRatio: 0.7, midwinterSunHours: 1 },
      true,
    )
    grows('wetness', { seasonSunRatio: 0.7 }, { seasonSunRatio: 1.2 }, true)
  })

  it('common practice, no source: sand is drier than clay', () => {
    const sand = { availableWaterMm: 45, conductivityMmPerH: 110, drainableMm: 150 }
    const clay = { availableWaterMm: 90, conductivityMmPerH: 1.1, drainableMm: 40 }
    grows('wetness', clay, sand, true)
    grows(
      'wetness',
      { ...clay, dryDays: 20, wetDays: 90, airlessDays: 20 },
      { ...sand, dryDays: 60, wetDays: 5, airlessDays: 0 },
      true,
    )
  })

  it('common practice, no source: frost is worse at the foot and in a hollow wherever it freezes', () => {
    const cold = sets.map((facts) => ({ ...facts, coldestMonthTMinC: Math.min(facts.coldestMonthTMinC, 9) }))
    for (const facts of cold) {
      const frost = (change: Partial<ScoreFacts>) => scoreOf('frost', change, facts).ours
      expect(frost({ position: 0, heightAboveFootM: 0 })).toBeGreaterThan(
        frost({ position: 1, heightAboveFootM: 9 }),
      )
      expect(frost({ formAcross: -0.05 })).toBeGreaterThan(frost({ formAcross: 0 }))
    }
    grows('frost', { position: 0.1 }, { position: 0.6 }, false)
  })

  it('common practice, no source: working is harder the steeper and the wetter', () => {
    for (let deg = 0; deg < 40; deg += 5)
      grows('working', { steepSlopeDeg: deg + 5 }, { steepSlopeDeg: deg }, true)
    grows('working', { wetDays: 120 }, { wetDays: 10 }, true)
  })

  it('common practice, no source: above 35° is never for people on foot, below it the class never says so', () => {
    for (const facts of sets) {
      expect(scoreOf('working', { steepSlopeDeg: 35.1 }, facts).class).toBe('not for people on foot')
      expect(scoreOf('working', { steepSlopeDeg: 35 }, facts).class).toBe('hard')
    }
  })

  it('common practice, no source: erosion is worse the steeper and the barer', () => {
    grows('erosion', { slopeDeg: 25 }, { slopeDeg: 10 }, true)
    grows('erosion', { erosionBareTPerHa: 60 }, { erosionBareTPerHa: 20 }, true)
    grows('erosion', { erosionCoveredTPerHa: 8 }, { erosionCoveredTPerHa: 1 }, true)
  })
})

describe('common practice, no source: places everybody knows', () => {
  const desert = {
    yearRainLessEtMm: -2000,
    summerRainLessEtMm: -1100,
    availableWaterMm: 70,
    dryDays: 330,
    wetDays: 0,
    winterFullness: 0.2,
    summerFullness: 0,
  }
  const bog = {
    position: 0,
    yearRainLessEtMm: 900,
    summerRainLessEtMm: 150,
    wetDays: 300,
    airlessDays: 200,
    dryDays: 0,
    winterFullness: 1.2,
    summerFullness: 1.1,
    conductivityMmPerH: 1,
    drainableMm: 30,
  }
  it.each([
    ['a desert is parched', 'wetness', desert, 'parched'],
    ['a middling loam in a mild climate is fresh', 'wetness', {}, 'fresh'],
    ['a blanket bog is soaked', 'wetness', bog, 'soaked'],
    ['more than 6 h of midsummer sun is full sun', 'sun', { midsummerSunHours: 6.1 }, 'full sun'],
    ['6 h and less is not', 'sun', { midsummerSunHours: 6 }, 'mostly sunny'],
    ['3.5 h is part shade', 'sun', { midsummerSunHours: 3.5 }, 'part shade'],
    ['1.5 h is shade', 'sun', { midsummerSunHours: 1.5 }, 'shade'],
    ['half an hour is deep shade', 'sun', { midsummerSunHours: 0.5, midwinterSunHours: 0 }, 'deep shade'],
    [
      'the tropics have hardly any frost',
      'frost',
      { coldestMonthTMinC: 20, hardWinterC: 15, position: 0 },
      'rare',
    ],
    [
      'a continental valley floor has hard frost',
      'frost',
      { coldestMonthTMinC: -12, hardWinterC: -28, position: 0.05, heightAboveFootM: 0.2, slopeDeg: 2 },
      'severe',
    ],
    ['level dry ground is easy', 'working', { steepSlopeDeg: 2 }, 'easy'],
    [
      '30° on soaked, stony clay is hard',
      'working',
      { ...bog, steepSlopeDeg: 30, stonesPercent: 60 },
      'hard',
    ],
    ['36° is not for people on foot', 'working', { steepSlopeDeg: 36, wetDays: 0 }, 'not for people on foot'],
    [
      'a gentle lawn hardly washes away',
      'erosion',
      { slopeDeg: 3, erosionBareTPerHa: 2, erosionCoveredTPerHa: 0.05 },
      'low',
    ],
  ] as const)('common practice, no source: %s', (_, name, change, expected) => {
    expect(scoreOf(name, change).class).toBe(expected)
  })
})

describe('the plants’ scales', () => {
  it('common practice, no source: more than 6 h of midsummer sun is full sun, 8 or 9 of 9', () => {
    expect([0, 1.9, 2.5, 3.9, 4.5, 6, 6.1, 24].map((hours) => lightClassOf(hours, rules))).toEqual([
      1, 3, 4, 5, 6, 7, 8, 9,
    ])
  })

  it('rise with wetness and with sun, and keep to 1 to 10 and 1 to 9', () => {
    const moisture = Array.from({ length: 101 }, (_, score) => moistureClassOf(score, rules))
    const light = Array.from({ length: 97 }, (_, quarter) => lightClassOf(quarter / 4, rules))
    for (const [scale, most] of [
      [moisture, 10],
      [light, 9],
    ] as const) {
      expect(scale).toEqual([...scale].sort((one, other) => one - other))
      expect([scale[0], scale.at(-1)]).toEqual([1, most])
    }
    expect(moistureClassOf(50, rules)).toBe(5)
  })
})

describe('what would change a score', () => {
  it('is found by running the rules again, strongest first', () => {
    for (const facts of randomFacts(200, 5))
      for (const name of scoreNames) {
        const told = whatWouldChange(facts, rules, name)
        expect(told.length).toBeLessThanOrEqual(3)
        const moves = told.map((each) => Math.abs(each.moves))
        expect(moves).toEqual([...moves].sort((one, other) => other - one))
        for (const { moves: by, score } of told) {
          expect(by).not.toBe(0)
          expect(score - by).toBe(scoreOf(name, {}, facts).ours)
        }
      }
  })

  it('deeper soil is the same as scoring a zone with deeper soil', () => {
    const dry = {
      ...middling,
      availableWaterMm: 40,
      dryDays: 100,
      drainableMm: 30,
      depthM: 0.3,
      airlessDays: 10,
    }
    const told = whatWouldChange(dry, rules, 'wetness').find(({ id }) => id === 'deeper-soil')
    const deeper = {
      ...dry,
      availableWaterMm: 60,
      dryDays: 85,
      drainableMm: 45,
      depthM: 0.45,
      airlessDays: 9,
    }
    expect(told?.score).toBe(scoreOf('wetness', {}, deeper).ours)
  })

  it.each(rules.changes.map((change) => [change.id, change] as const))(
    '%s can move each of its scores',
    (id, change) => {
      for (const name of change.scores) {
        const only = { ...rules, changes: [change] }
        expect(
          randomFacts(400, 9).some((facts) =>
            whatWouldChange(facts, only, name).some((told) => told.id === id),
          ),
        ).toBe(true)
      }
    },
  )

  it('common practice, no source: mulch never makes ground drier or wash away faster; a canopy never gives sun', () => {
    for (const facts of randomFacts(300, 13)) {
      const moves = (name: ScoreName, id: string) =>
        whatWouldChange(facts, { ...rules, changes: rules.changes.filter((each) => each.id === id) }, name)[0]
          ?.moves ?? 0
      expect(moves('wetness', 'mulch')).toBeGreaterThanOrEqual(0)
      expect(moves('erosion', 'mulch')).toBeLessThanOrEqual(0)
      expect(moves('sun', 'light-canopy')).toBeLessThanOrEqual(0)
      expect(moves('sun', 'lift-canopy')).toBeGreaterThanOrEqual(0)
    }
  })
})

describe('refusals', () => {
  it('of facts, overrides, scores and hours out of range', () => {
    expect(() => scoreOf('wetness', { position: NaN })).toThrow(RangeError)
    for (const score of [-1, 101, 50.5, NaN])
      expect(() => scoreZone(middling, rules, { sun: { score, reason: 'seen' } }, 'zone B')).toThrow(
        RangeError,
      )
    for (const value of [-1, 101, NaN]) expect(() => moistureClassOf(value, rules)).toThrow(RangeError)
    for (const value of [-1, 25, NaN]) expect(() => lightClassOf(value, rules)).toThrow(RangeError)
  })

  const rule = { id: 'spring', score: 'wetness', points: 3, because: 'A spring rises here.', source: 'yours' }
  const withRule = (change: object) => ({ ...tables, wetness: [{ ...rule, ...change }] })
  it.each([
    ['an unknown fact in a sentence', withRule({ because: 'Has {depth} of soil.' }), 'does not exist'],
    [
      'a table that does not rise',
      withRule({
        points: {
          fact: 'depthM',
          table: [
            [1, 2],
            [1, 3],
          ],
        },
      }),
      'rise',
    ],
    ['a table of one row', withRule({ points: { fact: 'depthM', table: [[1, 2]] } }), 'two rows'],
    ['a condition without a limit', withRule({ when: { depthM: {} } }), 'above or below'],
    ['a rule in the wrong table', withRule({ score: 'sun' }), 'another score'],
    ['two rules of one id', { ...tables, wetness: [rule, rule] }, 'share an id'],
    ['a score without a base', { ...tables, bases: [{ ...rule, id: 'b' }] }, 'exactly one base'],
    [
      'classes that do not start at 0',
      { ...tables, classes: [{ score: 'sun', from: 5, name: 'dim', source: 'yours' }] },
      'starts at 0',
    ],
    [
      'a moisture scale that does not start at 0',
      { ...tables, moistureScale: [{ fromScore: 5, class: 1, meaning: '', source: 'yours' }] },
      'start at 0',
    ],
    [
      'a light scale that ends early',
      { ...tables, lightScale: [{ upToHours: 5, class: 1, meaning: '', source: 'yours' }] },
      '24 h',
    ],
  ])('of %s', (_, bad, words) => {
    const parsed = scoreRulesSchema.safeParse(bad)
    expect(parsed.success).toBe(false)
    expect(JSON.stringify(parsed.error?.issues)).toContain(words)
  })
})
