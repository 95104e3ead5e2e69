import { describe, expect, it } from 'vitest'
import { eachMonth } from '#core/units'
import { careYear } from '#core/care'
import { bank, brief, careOf, mild, mildSouth, named, tables, truth } from './tables'

const timesOf = (jobs: readonly { readonly times: number }[]) =>
  jobs.reduce((sum, { times }) => sum + times, 0)

describe('how often', () => {
  it('GrassCheck: no cut in a month of 6 °C or less, cuts in every warmer one', () => {
    const months = named(careOf(bank({ choice: 'mown' })), 'mow').map(({ month }) => month)
    expect(months).toEqual([3, 4, 5, 6, 7, 8, 9])
    const cool = mild.map((normals) => ({ ...normals, tMinC: truth.growthC - 4, tMaxC: truth.growthC + 4 }))
    expect(named(careOf(bank({ choice: 'mown' }), brief({ months: cool })), 'mow')).toEqual([])
  })

  it('turf is cut about every two weeks in season (common practice, no source)', () => {
    for (const job of named(careOf(bank({ choice: 'mown' })), 'mow')) expect(job.times).toBe(2)
  })

  it('council service standards: cuts a year lie between the fewest and the most published', () => {
    const cuts = timesOf(named(careOf(bank({ choice: 'mown' })), 'mow'))
    expect(cuts).toBeGreaterThanOrEqual(Math.min(...truth.councilCutsPerYear))
    expect(cuts).toBeLessThanOrEqual(Math.max(...truth.councilCutsPerYear))
  })

  it('a meadow is cut twice a year, and cleared each time (common practice, no source)', () => {
    const care = careOf(bank({ choice: 'meadow' }))
    const lasting = care.jobs.filter(({ firstYearOnly }) => !firstYearOnly)
    expect(timesOf(lasting.filter(({ mark }) => mark === 'cut'))).toBe(2)
    const cutMonths = lasting.filter(({ mark }) => mark === 'cut').map(({ month }) => month)
    const rakeMonths = lasting.filter(({ mark }) => mark === 'rake').map(({ month }) => month)
    expect(rakeMonths).toEqual(cutMonths)
  })

  it('Sussex Wildlife Trust: no lasting cut of a meadow between April and late July', () => {
    const { fromMonth, fromDay, toMonth } = truth.meadowCut
    for (const wetMonth of [7, 8, 9] as const) {
      const zone = bank({ choice: 'meadow', wetDays: eachMonth((month) => (month === wetMonth ? 30 : 0)) })
      for (const job of careOf(zone).jobs.filter(
        ({ mark, firstYearOnly }) => mark === 'cut' && !firstYearOnly,
      )) {
        const dayOfYear = (job.month + 1) * 100 + job.fromDay
        expect(dayOfYear >= fromMonth * 100 + fromDay || job.month + 1 <= toMonth).toBe(true)
      }
    }
  })

  it('meadow growers: three to six cuts in the first year', () => {
    const cuts = timesOf(named(careOf(bank({ choice: 'meadow' })), 'first-cuts-meadow'))
    expect(cuts).toBeGreaterThanOrEqual(truth.firstYearMeadowCuts[0])
    expect(cuts).toBeLessThanOrEqual(truth.firstYearMeadowCuts[1])
  })
})

describe('keeping off', () => {
  it('Bundesnaturschutzgesetz section 39(5): nothing woody is cut from 1 March to 30 September in Germany', () => {
    for (const choice of ['shrubs', 'trees'] as const)
      for (const wetMonth of eachMonth((month) => month)) {
        const zone = bank({ choice, wetDays: eachMonth((month) => (month === wetMonth ? 30 : 0)) })
        const care = careOf(zone, brief({ legalRegion: 'Germany' }))
        const birds = care.keepOff.find(({ reason }) => reason === 'birds')
        const [from, to] = [truth.germanNesting.from, truth.germanNesting.to].map((day) =>
          Number(day.slice(0, 2)),
        )
        expect(birds?.months[0]).toBe((from ?? 0) - 1)
        expect(birds?.months.at(-1)).toBe((to ?? 0) - 1)
        expect(birds?.months).toHaveLength(7)
        expect(birds?.source).toBe('bnatschg-39')
        for (const job of care.jobs.filter(({ mark }) => mark === 'cut'))
          expect([9, 10, 11, 0, 1]).toContain(job.month)
      }
  })

  it('elsewhere woody cover rests from March to August (common practice, no source)', () => {
    const birds = careOf(bank({ choice: 'shrubs' })).keepOff.find(({ reason }) => reason === 'birds')
    expect(birds?.months).toEqual([2, 3, 4, 5, 6, 7])
    expect(birds?.source).toBe('common-practice')
  })

  it('moves work out of a wet month and says so, and mows only in firm ones', () => {
    const wetDays = eachMonth((month) => (month === 7 || month === 3 ? 25 : 2))
    const [cut] = named(careOf(bank({ choice: 'meadow', wetDays })), 'cut-meadow')
    expect(cut?.month).toBe(8)
    expect(cut?.because).toContain('August would be usual')
    const turf = careOf(bank({ choice: 'mown', wetDays }))
    expect(named(turf, 'mow').map(({ month }) => month)).toEqual([4, 5, 6, 8, 9])
    expect(turf.keepOff.find(({ reason }) => reason === 'wet')?.months).toEqual([3, 7])
  })

  it('never lets work vanish where every month is wet: the driest month, with a warning', () => {
    const wetDays = eachMonth((month) => (month === 8 ? 22 : 28))
    const [cut] = named(careOf(bank({ choice: 'meadow', wetDays })), 'cut-meadow')
    expect(cut?.month).toBe(8)
    expect(cut?.because).toContain('wait for a firm day')
    const mow = named(careOf(bank({ choice: 'mown', wetDays })), 'mow')
    expect(mow).toHaveLength(1)
    expect(mow[0]).toMatchObject({ month: 8, times: 1 })
    expect(mow[0]?.because).toContain('firm day')
  })

  it('plants in ground that is not frozen, or says to wait', () => {
    const months = mild.map((normals, month) => (month === 9 ? { ...normals, tMinC: -1 } : normals))
    const [planting] = named(careOf(bank({ choice: 'ground-cover' }), brief({ months })), 'plant-cover')
    expect(planting?.month).toBe(8)
    const arctic = mild.map((normals) => ({ ...normals, tMinC: -5 }))
    const [late] = named(careOf(bank({ choice: 'ground-cover' }), brief({ months: arctic })), 'plant-cover')
    expect(late?.because).toContain('wait for open ground')
    const turf = careOf(bank({ choice: 'mown' }), brief({ months: arctic }))
    expect(turf.keepOff.find(({ reason }) => reason === 'frost')?.months).toHaveLength(12)
  })

  it('throws when nesting would leave an operation no month', () => {
    const always = tables.windows.nesting.map((row) => ({ ...row, fromMonth: 1, toMonth: 12 }))
    const zone = bank({ choice: 'shrubs' })
    expect(() => careOfWith(zone, always)).toThrow(/must have a month outside nesting/)
  })
})

describe('the southern year', () => {
  it.each(['mown', 'meadow', 'ground-cover', 'shrubs', 'trees', 'terrace', 'leave'] as const)(
    '%s: every job stands six months on from its northern month',
    (choice) => {
      const north = careOf(bank({ deg: 8, choice }), brief(), 44)
      const south = careOf(bank({ deg: 8, choice }), brief({ months: mildSouth }), -44)
      const shifted = north.jobs
        .map(({ operation, month, hours }) => ({ operation, month: (month + 6) % 12, hours }))
        .map(plainly)
        .sort()
      // Watering follows the days of a month, which differ a little between May and November.
      expect(south.jobs.map(plainly).sort()).toEqual(shifted)
      expect(north.jobs.length).toBeGreaterThan(0)
    },
  )

  it('nesting moves to September to February', () => {
    const birds = careOf(bank({ choice: 'shrubs' }), brief({ months: mildSouth }), -38).keepOff
    expect(birds.find(({ reason }) => reason === 'birds')?.months).toEqual([0, 1, 8, 9, 10, 11])
  })
})

describe('calendar rows', () => {
  it('keep days inside their month, in both hemispheres', () => {
    const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
    for (const latitudeDeg of [50, -50])
      for (const choice of ['mown', 'meadow', 'ground-cover', 'shrubs', 'trees', 'terrace', 'leave'] as const)
        for (const { fromDay, toDay, month } of careOf(bank({ choice }), brief(), latitudeDeg).jobs) {
          expect(fromDay).toBeGreaterThanOrEqual(1)
          expect(toDay).toBeGreaterThanOrEqual(fromDay)
          expect(toDay).toBeLessThanOrEqual(days[month] ?? 0)
        }
  })

  it('have ids that are unique, and stay when a job moves to another month', () => {
    const dry = careOf(bank({ choice: 'meadow' }))
    const wet = careOf(bank({ choice: 'meadow', wetDays: eachMonth((month) => (month === 7 ? 30 : 0)) }))
    const ids = dry.jobs.map(({ id }) => id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(wet.jobs.map(({ id }) => id).sort()).toEqual([...ids].sort())
    expect(named(wet, 'cut-meadow')[0]?.month).not.toBe(named(dry, 'cut-meadow')[0]?.month)
  })
})

function careOfWith(zone: ReturnType<typeof bank>, nesting: typeof tables.windows.nesting) {
  return careYearOf(zone, { ...tables, windows: { ...tables.windows, nesting } })
}

const careYearOf = (zone: ReturnType<typeof bank>, given: typeof tables) =>
  careYear([zone], given, brief(), 52)

function plainly(job: {
  readonly operation: string
  readonly month: number
  readonly hours: number
}): string {
  return `${job.operation} ${job.month} ${job.operation.startsWith('water') ? '' : job.hours.toFixed(9)}`
}
