import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openPlan } from '#plan'
import { months } from '#core/units'

type Loose = Record<string, unknown>

interface Demo {
  readonly site: Loose
  readonly climate: { readonly months: readonly Loose[] }
  readonly survey: Loose
}

const demo = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../data/demos/bank-below-the-house.lynchet.json'), 'utf8'),
) as Demo

const problemsOf = (changes: Loose) => {
  const opened = openPlan(JSON.stringify({ ...demo, trials: [], ...changes }))
  return opened.ok ? [] : opened.problems
}

/** Where and what goes wrong when something else stands there. */
const saidOf = (changes: Loose) => problemsOf(changes).map(({ where, what }) => `${where}: ${what}`)

const things = (...obstacles: Loose[]) => ({ survey: { ...demo.survey, obstacles } })

const at = [{ eastM: 2, northM: 3 }]
const tree = { id: 'cherry', kind: 'tree', name: 'Cherry', ring: at, heightM: 6 }
const house = { id: 'house', kind: 'house', name: 'House', ring: at, heightM: 5 }

describe('things that cannot stand so', () => {
  it('branches not below the top, and ridges below the eaves', () => {
    expect(saidOf(things({ ...tree, crownBaseM: 6 }, { ...house, ridgeM: 4 }))).toEqual([
      'plan › survey › obstacles, row 1 › crownBaseM: The lowest branches of Cherry at 6 m are not below its top at 6 m.',
      'plan › survey › obstacles, row 2 › ridgeM: The ridge of House at 4 m is below its eaves at 5 m.',
    ])
    expect(saidOf(things({ ...tree, crownBaseM: 5.9 }, { ...house, ridgeM: 5 }))).toEqual([])
  })

  it('a direction of the far skyline given twice', () => {
    const skyline = [0, 90, 0].map((azimuthDeg) => ({ azimuthDeg, angleDeg: 4 }))
    expect(saidOf({ survey: { ...demo.survey, skyline } })).toEqual([
      'plan › survey › skyline, row 3: The direction 0° is given twice.',
    ])
  })
})

describe('trials that cannot be', () => {
  const trial = (...changes: Loose[]) => ({
    ...things({ ...tree, crownBaseM: 2 }),
    trials: [{ id: 't', name: 'Less shade', changes }],
  })

  it('of things that are not there, with what is there', () => {
    const [problem] = problemsOf(trial({ thingId: 'oak', gone: true }))
    expect(problem).toEqual({
      where: 'plan › trials, row 1 › changes, row 1 › thingId',
      what: 'Less shade: there is no thing “oak” to change.',
      mend: 'Take the change out, or use one of cherry.',
    })
  })

  it('that lower a tree below its branches', () => {
    expect(saidOf(trial({ thingId: 'cherry', heightM: 2 }))).toEqual([
      'plan › trials, row 1 › changes, row 1 › crownBaseM: The lowest branches of Cherry at 2 m are not below its top at 2 m.',
    ])
    expect(saidOf(trial({ thingId: 'cherry', heightM: 2, crownBaseM: 1 }))).toEqual([])
    expect(saidOf(trial({ thingId: 'cherry', heightM: 2, gone: true }))).toEqual([])
  })

  it('with one id for two', () => {
    const { trials, ...others } = trial({ thingId: 'cherry', gone: true })
    expect(saidOf({ ...others, trials: [...trials, ...trials] })).toEqual([
      'plan › trials, row 2: The id “t” is used by another trial.',
    ])
  })
})

describe('time zones', () => {
  it.each(['Europe/London', 'Australia/Melbourne', 'UTC'])('%s of the IANA list is one', (timeZone) => {
    expect(saidOf({ site: { ...demo.site, timeZone } })).toEqual([])
  })

  it.each(['Europe/Nowhere', '', '+01:00', 'summer time'])('“%s” is none', (timeZone) => {
    expect(saidOf({ site: { ...demo.site, timeZone } })).toEqual([
      `plan › site › timeZone: “${timeZone}” is not a time zone.`,
    ])
  })
})

describe('radiation and sunshine', () => {
  const climateWith = (of: (month: number) => Loose, site: Loose = {}) => ({
    site: { ...demo.site, ...site },
    climate: {
      ...demo.climate,
      months: months.map((month) => ({ tMinC: 5, tMaxC: 15, rainMm: 60, ...of(month) })),
    },
  })

  it('are given for all months or for none', () => {
    const given = climateWith((month) => (month === 4 ? {} : { solarMjPerM2: 1, sunshineHours: 2 }))
    expect(saidOf(given)).toEqual([
      'plan › climate › months, row 5 › solarMjPerM2: Radiation is given for some months, but not for May.',
      'plan › climate › months, row 5 › sunshineHours: Sunshine is given for some months, but not for May.',
    ])
  })

  it('FAO-56 table 2.6, 52° north: no more than comes to the top of the air, 41.6 MJ/m² in June and 6.4 in December', () => {
    const level = (june: number, december: number) =>
      saidOf(
        climateWith((month) => ({ solarMjPerM2: month === 5 ? june : month === 11 ? december : 5 }), {
          latitudeDeg: 52,
        }),
      )
    expect(level(41.6, 6.4)).toEqual([])
    const [june, december] = level(43, 9)
    expect(june).toContain('months, row 6 › solarMjPerM2: Radiation of 43 MJ/m² a day in June is more than')
    expect(december).toContain('months, row 12 › solarMjPerM2')
  })

  it('FAO-56 table 2.7, 52° north: no more sunshine than the day is long, 16.5 h in June and 7.5 in December', () => {
    const level = (june: number, december: number) =>
      problemsOf(
        climateWith((month) => ({ sunshineHours: month === 5 ? june : month === 11 ? december : 5 }), {
          latitudeDeg: 52,
        }),
      )
    expect(level(16.4, 7.5)).toEqual([])
    // Hours of the whole month typed as hours a day are told by the mend.
    expect(level(17.2, 8.6).map(({ where, mend }) => `${where}: ${mend}`)).toEqual([
      'plan › climate › months, row 6 › sunshineHours: Give hours a day: divide the hours of the month by its days.',
      'plan › climate › months, row 12 › sunshineHours: Give hours a day: divide the hours of the month by its days.',
    ])
  })
})
