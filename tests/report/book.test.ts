import { describe, expect, it } from 'vitest'
import { scoreNames } from '#core/scores'
import { book, type Account } from '#core/units'
import { bookRows, letterAt } from '../../src/report/figures/book/book-rows'
import { sourceWords, wholeCitation } from '../../src/report/figures/book/source-words'
import LevelBook from '../../src/report/figures/book/LevelBook.vue'
import WaterBook from '../../src/report/figures/book/WaterBook.vue'
import SettleList from '../../src/report/figures/lists/SettleList.vue'
import { tables } from '../plan/plans'
import { demos, wordsOf, written } from './hung'

const read = (printed: string) =>
  Number(
    printed
      .replace(/,/g, '')
      .replace('−', '-')
      .replace(/[^\d.-]/g, ''),
  )

const accounts = demos.flatMap(({ name, findings }) => [
  ...findings.zones.flatMap((zone) => [
    ...scoreNames.map((score) => ({ name, account: zone.scores[score].account })),
    ...zone.cover.options.map(({ fitness }) => ({ name, account: fitness })),
  ]),
  ...findings.care.zones.map(({ account }) => ({ name, account })),
  ...findings.water.units.map(({ account }) => ({ name, account })),
  { name, account: findings.water.account },
])

describe('every level book of the demos', () => {
  it('prints a sum that is right as printed', () => {
    for (const { account } of accounts) {
      const { proof, booksOut } = bookRows(account)
      expect(booksOut, account.subject).toBe(true)
      const sum = /^(.+) = (\S+)\. /.exec(proof)
      if (!sum) continue
      const [, left = '', right = ''] = sum
      const parts = left
        .split(/ (?=[+−] )/)
        .map((part) => read(part.replace(/^([+−]) /, (_, sign: string) => (sign === '−' ? '-' : ''))))
      expect(
        parts.reduce((all, part) => all + part, 0),
        `${account.subject}: ${proof}`,
      ).toBeCloseTo(read(right), 6)
    }
  })

  it('runs down to the total, entry by entry', () => {
    for (const { account } of accounts) {
      const { rows, total } = bookRows(account)
      expect(rows).toHaveLength(account.lines.length)
      expect(rows.at(-1)?.running ?? total).toBe(total)
      for (const row of rows) expect(row.adds === '' || row.takes === '').toBe(true)
    }
  })

  it('gives every entry a letter of its own', () => {
    for (const { account } of accounts) {
      const letters = bookRows(account)
        .rows.map(({ letter }) => letter)
        .filter(Boolean)
      expect(new Set(letters).size).toBe(letters.length)
    }
  })
})

describe('the sum that proves itself', () => {
  const score: Account = book('Wetness of zone B', 'points of 100', [
    { id: 'wetness-base', amount: 50, because: 'Start.', source: 'own-judgement' },
    { id: 'steep', amount: -14, because: 'Steep.', source: 'yours' },
    { id: 'clay', amount: 6, because: 'Clay.', source: 'yours' },
    { id: 'sun', amount: -24, because: 'Sun.', source: 'yours' },
  ])

  it('is written as start, adds, takes and total', () => {
    expect(bookRows(score).proof).toBe('50 + 6 − 38 = 18. It books out.')
  })

  it('says so when nothing is left over', () => {
    const water = book('Water', 'mm a year', [
      { id: 'rain', amount: 700, because: '', source: 'yours' },
      { id: 'used', amount: -700, because: '', source: 'yours' },
    ])
    expect(bookRows(water).proof).toBe('700 − 700 = 0. Nothing unaccounted for.')
  })

  it('refuses an account that does not add up', () => {
    const wrong = { ...score, total: 19 }
    expect(bookRows(wrong).booksOut).toBe(false)
    expect(bookRows(wrong).proof).toContain('does not book out')
  })

  it('takes more decimals where whole figures would print a wrong sum', () => {
    const mixed = book('Hours', 'mm a year', [
      { id: 'one', amount: 1.4, because: '', source: 'yours' },
      { id: 'two', amount: -0.4, because: '', source: 'yours' },
      { id: 'three', amount: 1.4, because: '', source: 'yours' },
    ])
    expect(bookRows(mixed).proof).toBe('2.8 − 0.4 = 2.4. It books out.')
  })

  it('letters go on after z', () => {
    expect([letterAt(0), letterAt(25), letterAt(26), letterAt(27)]).toEqual(['a', 'z', 'aa', 'ab'])
  })
})

describe('the book as a page', () => {
  const { findings } = demos[0] ?? { findings: undefined }
  const zone = findings?.zones[0]

  it('is a table with caption, scopes, every reason and its source', async () => {
    const score = zone?.scores.wetness
    const html = await written(LevelBook, {
      account: score?.account,
      score,
      asks: 'Why?',
      sources: tables.sources,
    })
    expect(html).toMatch(/<caption[^>]*>/)
    expect([...html.matchAll(/scope="col"/g)]).toHaveLength(6)
    expect([...html.matchAll(/scope="row"/g)]).toHaveLength((score?.account.lines.length ?? 0) + 1)
    const words = wordsOf(html)
    for (const line of score?.account.lines ?? []) {
      expect(words).toContain(line.because.replace(/\u00A0/g, ' '))
      expect(words).toContain(sourceWords(line.source, tables.sources).replace(/\u00A0/g, ' '))
    }
  })

  it('keeps our score beside the person’s own', async () => {
    const ours = zone?.scores.wetness
    const score = {
      ...ours,
      value: 30,
      class: 'dry',
      override: { score: 30, reason: 'It cracks every June.' },
    }
    const words = wordsOf(
      await written(LevelBook, { account: ours?.account, score, asks: 'Why?', overridable: true }),
    )
    expect(words).toContain('30 is yours: It cracks every June.')
    expect(words).toContain(`Ours is ${ours?.ours}`)
  })

  it('books the plot’s water to nothing', async () => {
    const words = wordsOf(await written(WaterBook, { water: findings?.water }))
    expect(words).toContain('= 0. Nothing unaccounted for.')
  })

  it('lists dangers first, each with its place and how to mend it', async () => {
    for (const { findings: own } of demos) {
      const words = wordsOf(await written(SettleList, { items: own.toSettle, zones: own.zoning.zones }))
      for (const item of own.toSettle) {
        expect(words).toContain(item.what.replace(/\u00A0/g, ' '))
        expect(words).toContain(item.mend.replace(/\u00A0/g, ' '))
      }
      const kinds = [...words.matchAll(/(Danger|Clash|Gap): /g)].map(([, kind]) => kind)
      const order = ['Danger', 'Clash', 'Gap']
      expect(kinds).toEqual(
        [...kinds].sort((one, other) => order.indexOf(one ?? '') - order.indexOf(other ?? '')),
      )
      expect(kinds).toHaveLength(own.toSettle.length)
    }
  })
})

describe('where a reason comes from', () => {
  it('is said in plain words or by author and year, never by a key', () => {
    for (const key of Object.keys(tables.sources)) {
      const words = sourceWords(key, tables.sources)
      expect(words.replace('…', '').length, key).toBeGreaterThan(3)
      expect(wholeCitation(key, tables.sources)).toBe(tables.sources[key]?.cite)
    }
    expect(sourceWords('yours')).toBe('yours')
  })
})
