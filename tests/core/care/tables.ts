import { readFileSync } from 'node:fs'
import { z } from 'zod'
import { eachMonth } from '#core/units'
import { coverOf, type CoverBrief, type CoverFacts, type CoverKind } from '#core/cover'
import {
  careWindowsSchema,
  careYear,
  operationsSchema,
  type CareBrief,
  type CareFacts,
  type CareTables,
  type Job,
  type ZoneCare,
} from '#core/care'
import { steep, tables as coverTables } from '../cover/tables'

const read = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'))

export const tables: CareTables = {
  cover: coverTables,
  operations: operationsSchema.parse(read('data/care/operations.json')),
  windows: careWindowsSchema.parse(read('data/care/windows.json')),
}

const twoNumbers = z.tuple([z.number(), z.number()])

/** Published figures, from tests/truth/care-practice.json. */
export const truth = z
  .object({
    tobler: z.object({
      flatKmh: z.number(),
      roundTrip: z.array(z.object({ deg: z.number(), ratio: z.number() })).length(4),
    }),
    jkila: z.object({ weedingM2PerH: z.number(), clippingM2PerH: z.number() }),
    nrpa: z.object({ walkBehindHoursPerAcre: z.number(), rakingHoursPer1000SqFt: z.number() }),
    scytheHaPerDay: z.number(),
    growthC: z.number(),
    meadowCut: z.object({ fromMonth: z.number(), fromDay: z.number(), toMonth: z.number() }),
    firstYearMeadowCuts: twoNumbers,
    councilCutsPerYear: z.array(z.number()),
    waterLPerM2Week: z.number(),
    germanNesting: z.object({ from: z.string(), to: z.string() }),
    karlsruheEurPerM2Year: z.object({
      meadow1Cut: z.number(),
      lawn10Cuts: z.number(),
      lawn20Cuts: z.number(),
    }),
  })
  .parse(read('tests/truth/care-practice.json'))

/** A mild northern year: seven months above 6 °C (April to October), no frost month, dry-ish summer. */
const mildMeanC = [4, 4.5, 5.8, 8.5, 12, 15, 17, 17, 14, 11, 5.9, 4.5]
export const mild: CareBrief['months'] = mildMeanC.map((mean) => ({
  tMinC: mean - 3.5,
  tMaxC: mean + 3.5,
  rainMm: 60,
}))

/** The same year six months on. */
export const mildSouth: CareBrief['months'] = mild.map((_, month) => mild[(month + 6) % 12] ?? mild[0]!)

export const brief = (changes: Partial<CareBrief> = {}): CareBrief => ({
  ratePerHourMinor: 3200,
  legalRegion: undefined,
  months: mild,
  ...changes,
})

interface Bank extends Partial<CareFacts> {
  readonly deg?: number
  readonly choice?: CoverKind
  readonly machines?: CoverBrief['machines']
  readonly ground?: Partial<CoverFacts>
}

/** A zone of 200 m², under the cover asked for. */
export function bank({
  deg = 0,
  choice,
  machines = [{ id: 'walk-behind' }],
  ground,
  ...changes
}: Bank): CareFacts {
  const facts = steep(deg, { slopeAreaM2: 200, slopeDegMean: deg, ...ground })
  return {
    zoneId: facts.zoneId,
    letter: facts.letter,
    name: facts.name,
    slopeDegMean: deg,
    slopeDegSteep: deg,
    slopeAreaM2: 200,
    edgeM: 60,
    wetDays: eachMonth(() => 3),
    plants: { ground: 400, shrub: 40, tree: 4 },
    cover: coverOf(facts, { machines, fallsTowardsHouse: false }, coverTables, choice),
    ...changes,
  }
}

export const northDeg = 52

export function careOf(zone: CareFacts, given: CareBrief = brief(), latitudeDeg = northDeg): ZoneCare {
  const [care] = careYear([zone], tables, given, latitudeDeg).zones
  if (!care) throw new Error('no zone')
  return care
}

export const named = (care: ZoneCare, operation: string): Job[] =>
  care.jobs.filter((job) => job.operation === operation)

export const sumHours = (jobs: readonly Job[]): number => jobs.reduce((sum, { hours }) => sum + hours, 0)
