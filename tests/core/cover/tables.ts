import { readFileSync } from 'node:fs'
import {
  coverCautionsSchema,
  coverLimitsSchema,
  coverRulesSchema,
  machinesSchema,
  type CoverBrief,
  type CoverFacts,
  type CoverKind,
  type CoverOption,
  type CoverTables,
  type ZoneCover,
} from '#core/cover'

const read = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'))

export const tables: CoverTables = {
  machines: machinesSchema.parse(read('data/care/machines.json')),
  limits: coverLimitsSchema.parse(read('data/cover/limits.json')),
  rules: coverRulesSchema.parse(read('data/cover/rules.json')),
  cautions: coverCautionsSchema.parse(read('data/cover/cautions.json')),
}

/** An ordinary sunny zone of 10°; each test changes what it asks about. */
export const zone = (changes: Partial<CoverFacts> = {}): CoverFacts => ({
  zoneId: 'z1',
  letter: 'B',
  name: 'Middle bank',
  slopeDegMean: 9,
  slopeDegSteep: 10,
  slopeAreaM2: 120,
  planAreaM2: 118.5,
  wetness: 50,
  wetDays: 60,
  midsummerSunHours: 10,
  bareErosionTPerHa: 4,
  soilDepthM: 0.9,
  nearHouse: false,
  servicesNear: false,
  ...changes,
})

/** The same zone tilted. */
export const steep = (deg: number, changes: Partial<CoverFacts> = {}): CoverFacts =>
  zone({ slopeDegMean: Math.max(0, deg - 1), slopeDegSteep: deg, ...changes })

export const brief = (machines: CoverBrief['machines'] = [{ id: 'walk-behind' }]): CoverBrief => ({
  machines,
  fallsTowardsHouse: false,
})

export const option = (cover: ZoneCover, kind: CoverKind): CoverOption => {
  const found = cover.options.find((one) => one.kind === kind)
  if (!found) throw new Error(`no option ${kind}`)
  return found
}

export const degOfPercent = (percent: number): number => (Math.atan(percent / 100) * 180) / Math.PI
