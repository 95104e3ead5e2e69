import { describe, expect, it } from 'vitest'
import { booksOut, months } from '#core/units'
import { coverKinds } from '#core/cover'
import { careYear, jobsInMonth } from '#core/care'
import { bank, brief, careOf, named, northDeg, sumHours, tables, truth } from './tables'

const year = (zones: Parameters<typeof careYear>[0], given = brief()) =>
  careYear(zones, tables, given, northDeg)
const asZone = (zoneId: string, zone: ReturnType<typeof bank>) => ({ ...zone, zoneId })

describe('hours on a slope', () => {
  it.each(['weed-cover', 'weed-cover-new', 'weed-shrubs', 'prune-shrubs', 'prune-trees', 'plant-cover'])(
    '%s never takes less time on a slope than on the flat (common practice, no source)',
    (operation) => {
      const choice = operation.includes('shrubs')
        ? 'shrubs'
        : operation.includes('trees')
          ? 'trees'
          : 'ground-cover'
      const hours = [0, 5, 10, 20, 28].map((deg) => sumHours(named(careOf(bank({ deg, choice })), operation)))
      for (let at = 1; at < hours.length; at++) expect(hours[at]).toBeGreaterThan(hours[at - 1] ?? Infinity)
    },
  )

  it('Tobler 1993: walk-behind mowing takes the round-trip penalty in full', () => {
    for (const { deg, ratio } of truth.tobler.roundTrip.filter((row) => row.deg <= 15)) {
      const flat = sumHours(named(careOf(bank({ deg: 0, choice: 'mown' })), 'mow'))
      const tilted = named(careOf(bank({ deg, choice: 'mown' })), 'mow')
      expect(Math.abs(sumHours(tilted) / flat - ratio)).toBeLessThan(0.005)
      const added = tilted.reduce((sum, { slopeHours }) => sum + slopeHours, 0)
      expect(added).toBeCloseTo(sumHours(tilted) - flat, 9)
    }
  })

  it('a robot costs no more of a person’s time on a slope it may work', () => {
    const robot = { machines: [{ id: 'robot' }], choice: 'mown' as const, slopeAreaM2: 5000 }
    expect(sumHours(named(careOf(bank({ ...robot, deg: 5 })), 'mow'))).toBeCloseTo(
      sumHours(named(careOf(bank({ ...robot, deg: 0 })), 'mow')),
      9,
    )
  })
})

describe('accounts', () => {
  const zones = coverKinds.map((choice, at) => asZone(`z${at}`, bank({ deg: at * 4, choice })))
  const whole = year(zones)

  it('book out job by job and make up the months and the year', () => {
    for (const { account, jobs } of whole.zones) {
      expect(booksOut(account)).toBe(true)
      expect(account.total).toBeCloseTo(sumHours(jobs.filter((job) => !job.firstYearOnly)), 9)
    }
    const byZone = whole.zones.reduce((sum, { account }) => sum + account.total, 0)
    const byMonth = whole.hoursByMonth.reduce((sum, hours) => sum + hours, 0)
    expect(whole.hoursTotal).toBeCloseTo(byZone, 9)
    expect(byMonth).toBeCloseTo(byZone, 9)
  })

  it('keep first-year hours apart', () => {
    for (const { jobs, firstYearHours } of whole.zones)
      expect(firstYearHours).toBeCloseTo(sumHours(jobs.filter((job) => job.firstYearOnly)), 9)
    expect(careOf(bank({ choice: 'ground-cover' })).firstYearHours).toBeGreaterThan(0)
  })

  it('count no planting and no watering where nothing is planted', () => {
    const marks = careOf(bank({ choice: 'trees', plants: { ground: 0, shrub: 0, tree: 0 } })).jobs.map(
      ({ operation }) => operation,
    )
    expect(marks).not.toContain('plant-trees')
    expect(marks).not.toContain('water-shrubs')
  })

  it('count each layer at its own pace, and water no more ground than there is', () => {
    const jobs = careOf(bank({ choice: 'shrubs', plants: { ground: 300, shrub: 20, tree: 0 } })).jobs
    const flatH = (operation: string) =>
      sumHours(jobs.filter((job) => job.operation === operation)) -
      jobs.filter((job) => job.operation === operation).reduce((sum, job) => sum + job.slopeHours, 0)
    expect(flatH('plant-cover')).toBeCloseTo(300 / 30, 9)
    expect(flatH('plant-shrubs')).toBeCloseTo(20 / 10, 9)
    const crowded = careOf(bank({ choice: 'shrubs', plants: { ground: 0, shrub: 5000, tree: 0 } })).jobs
    const full = careOf(bank({ choice: 'shrubs', plants: { ground: 0, shrub: 200, tree: 0 } })).jobs
    const watering = (of: typeof jobs) => sumHours(of.filter((job) => job.operation === 'water-shrubs'))
    expect(watering(crowded)).toBeCloseTo(watering(full), 9)
  })

  it('steep hours are those of zones from 15° on', () => {
    const steepOnly = year(zones.filter((zone) => zone.slopeDegSteep >= 15))
    expect(whole.steepHoursByMonth).toEqual(steepOnly.hoursByMonth)
    for (const month of months)
      expect(whole.steepHoursByMonth[month]).toBeLessThanOrEqual(whole.hoursByMonth[month])
  })

  it('cost is in whole minor units, and unknown without a rate', () => {
    expect(Number.isInteger(whole.costMinor)).toBe(true)
    expect(Math.abs((whole.costMinor ?? 0) - whole.hoursTotal * 3200)).toBeLessThanOrEqual(0.5)
    expect(year(zones, brief({ ratePerHourMinor: undefined })).costMinor).toBeUndefined()
    for (const { compared } of whole.zones)
      for (const { costMinor, hours } of compared)
        expect(Number.isInteger(costMinor)).toBe(hours !== undefined)
  })

  it('put every job in one month’s sheet', () => {
    const sheets = months.map((month) => jobsInMonth(whole, month))
    expect(sheets.flat()).toHaveLength(whole.zones.flatMap(({ jobs }) => jobs).length)
    for (const month of months) for (const job of sheets[month] ?? []) expect(job.month).toBe(month)
  })
})

describe('refusals', () => {
  it('refuses a ride-on above its limit for any area: no hours, and the reason names machine, limit, gradient', () => {
    for (const slopeAreaM2 of [5, 500, 50_000]) {
      const zone = bank({ deg: 18.5, machines: [{ id: 'ride-on' }], choice: 'mown', slopeAreaM2 })
      const care = careOf(zone)
      expect(named(care, 'mow')).toEqual([])
      expect(care.jobs.map(({ mark }) => mark)).toEqual(care.jobs.map(() => 'look'))
      expect(care.account.lines[0]?.because).toMatch(/Ride-on mower: limit 15°.*18\.5°/)
      const mown = care.compared.find(({ cover }) => cover === 'mown')
      expect(mown).toMatchObject({ hours: undefined, costMinor: undefined })
      expect(mown?.refusal).toMatch(/Ride-on mower: limit 15°.*18\.5°/)
    }
  })

  it('compares mown, meadow and ground cover, refused ones without hours', () => {
    const kinds = careOf(bank({ deg: 30 })).compared
    expect(kinds.map(({ cover }) => cover)).toEqual(['mown', 'meadow', 'ground-cover'])
    expect(kinds.map(({ hours }) => hours === undefined)).toEqual([true, true, false])
    for (const { hours, refusal } of kinds) expect(hours === undefined).toBe(refusal !== undefined)
  })

  it('cuts tall grass with the plan’s own machine, or says that one must be borrowed', () => {
    const borrowed = named(careOf(bank({ choice: 'meadow' })), 'cut-meadow')[0]
    expect(borrowed?.how).toContain('none is among your machines')
    const machines = [{ id: 'scythe' }, { id: 'hill-tractor' }]
    const own = named(careOf(bank({ choice: 'meadow', machines })), 'cut-meadow')[0]
    expect(own?.how).toContain('Hill tractor')
    expect(own?.how).toContain('straight up and down')
  })

  it('never sends anyone up a bank above 35°', () => {
    const care = careOf(bank({ deg: 40 }))
    expect(care.cover).toBe('leave')
    expect(care.jobs.map(({ operation }) => operation)).toEqual(['look-leave', 'look-leave', 'look-leave'])
    expect(care.jobs.every(({ slopeHours }) => slopeHours === 0)).toBe(true)
  })

  it('never designs a wall: terraces are looked at, and the engineer called', () => {
    const care = careOf(bank({ deg: 12, choice: 'terrace' }))
    expect(named(care, 'look-terrace')[0]?.how).toContain('call the engineer')
    const building = care.jobs.filter(({ operation }) => /wall|build|cut-ground/.test(operation))
    expect(building).toEqual([])
    expect(care.jobs.filter(({ mark }) => mark === 'plant').map(({ operation }) => operation)).toEqual([
      'plant-cover',
    ])
  })

  it('throws on bad sizes, latitudes, climates and tables', () => {
    expect(() => careOf(bank({ slopeAreaM2: -1 }))).toThrow(/slopeAreaM2 must be 0 or more, got -1/)
    expect(() => careOf(bank({ edgeM: NaN }))).toThrow(/edgeM/)
    expect(() => careOf(bank({}), brief(), 91)).toThrow(/latitudeDeg must be -90 to 90, got 91/)
    expect(() => careOf(bank({}), brief({ months: [] }))).toThrow(/12 normals, got 0/)
    const zone = bank({ choice: 'shrubs' })
    const broken = (windows: Partial<typeof tables.windows>) => () =>
      careYear([zone], { ...tables, windows: { ...tables.windows, ...windows } }, brief(), northDeg)
    expect(broken({ limits: [] })).toThrow(/must hold growing/)
    expect(broken({ nesting: [] })).toThrow(/nesting row for \*/)
    expect(broken({ effort: [] })).toThrow(/must hold effort/)
    const noOptions = { ...zone, cover: { ...zone.cover, options: [] } }
    expect(() => careOf(noOptions)).toThrow(/options must hold shrubs/)
    const noMachine = bank({ choice: 'mown' })
    expect(() => careOf({ ...noMachine, cover: { ...noMachine.cover, machines: [] } })).toThrow(
      /must have a machine allowed/,
    )
  })
})

describe('against costs of a parks office', () => {
  it('Karlsruhe parks office 2015: one cleared meadow cut costs less than ten lawn cuts, by the same machine', () => {
    const { meadow1Cut, lawn10Cuts } = truth.karlsruheEurPerM2Year
    const crew = { slopeAreaM2: 5000, machines: [{ id: 'hill-tractor' }] }
    const lawn = named(careOf(bank({ ...crew, choice: 'mown' })), 'mow')
    const tenCuts = (10 * sumHours(lawn)) / lawn.reduce((sum, { times }) => sum + times, 0)
    const meadow = careOf(bank({ ...crew, choice: 'meadow' }))
    const ratio = sumHours([...named(meadow, 'cut-meadow'), ...named(meadow, 'rake-meadow')]) / tenCuts
    expect(ratio).toBeLessThan(1)
    expect(Math.abs(Math.log2(ratio / (meadow1Cut / lawn10Cuts)))).toBeLessThan(1)
  })

  it('a meadow cleared by hand costs more hours than one cleared by a tractor (common practice, no source)', () => {
    const hours = (id: string) =>
      sumHours(
        named(careOf(bank({ slopeAreaM2: 5000, choice: 'meadow', machines: [{ id }] })), 'rake-meadow'),
      )
    expect(hours('scythe')).toBeGreaterThan(hours('hill-tractor'))
  })
})
