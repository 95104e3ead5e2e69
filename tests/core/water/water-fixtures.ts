import { readFileSync } from 'node:fs'
import { daysInMonth, eachMonth, type Twelve } from '#core/units'
import { soilProperties, type SoilProperties, type SoilSample, type TextureClass } from '#core/soil'
import {
  typicalSlope,
  waterTablesSchema,
  type WaterClimate,
  type WaterCover,
  type WaterTables,
  type WaterUnit,
  type WaterYear,
} from '#core/water'
import { pit, soilTables } from '../soil/soil-tables'

const read = (path: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8'))

/** Published values of tests/truth, shaped as the test says. */
export const truth = <Shape>(name: string): Shape => read(`tests/truth/${name}.json`) as Shape

export const waterTables: WaterTables = waterTablesSchema.parse({
  curveNumbers: read('data/water/curve-numbers.json'),
  coverUse: read('data/water/cover-use.json'),
  groundCover: read('data/water/ground-cover.json'),
  stages: read('data/water/erosion-stages.json'),
  beyond: read('data/water/beyond.json'),
})

const perDay = (mmPerDay: Twelve<number>): Twelve<number> =>
  eachMonth((month) => mmPerDay[month] * daysInMonth[month])

/** Invented climates of broad kinds, to try the balance on. */
export const climates: Readonly<Record<string, WaterClimate>> = {
  'temperate north': {
    rainMm: [55, 40, 42, 44, 50, 45, 45, 50, 49, 69, 59, 55],
    referenceEtMm: perDay([0.5, 0.8, 1.4, 2.2, 3, 3.5, 3.6, 3.1, 2.1, 1.2, 0.6, 0.4]),
  },
  'wet north': {
    rainMm: [190, 150, 170, 115, 105, 130, 150, 190, 280, 270, 260, 235],
    referenceEtMm: perDay([0.3, 0.5, 1, 1.7, 2.5, 2.9, 2.8, 2.3, 1.4, 0.7, 0.4, 0.3]),
  },
  'dry summers': {
    rainMm: [60, 55, 45, 40, 25, 10, 3, 5, 25, 55, 75, 70],
    referenceEtMm: perDay([1.2, 1.7, 2.6, 3.6, 4.8, 5.9, 6.4, 5.7, 4.2, 2.7, 1.6, 1.1]),
  },
  'near desert': {
    rainMm: [20, 18, 15, 8, 4, 1, 0, 0, 3, 8, 14, 18],
    referenceEtMm: perDay([2, 2.7, 4, 5.5, 7, 8, 8.2, 7.6, 6.2, 4.4, 2.8, 2]),
  },
  'temperate south': {
    rainMm: [50, 48, 52, 58, 60, 55, 52, 58, 60, 68, 62, 60],
    referenceEtMm: perDay([5.2, 4.6, 3.3, 2.1, 1.3, 0.9, 1, 1.5, 2.2, 3.2, 4.1, 4.9]),
  },
  'wet tropics': {
    rainMm: [240, 160, 185, 180, 170, 160, 160, 175, 170, 195, 255, 290],
    referenceEtMm: perDay([3.8, 4.4, 4.5, 4.3, 4, 4, 4.1, 4.2, 4.2, 4.1, 3.7, 3.4]),
  },
  'no rain at all': {
    rainMm: [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
    referenceEtMm: perDay([3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3, 3]),
  },
}

export const climate = (name: string): WaterClimate => {
  const found = climates[name]
  if (!found) throw new Error(`no climate called ${name}`)
  return found
}

export const soilOf = (name: TextureClass, changes: Partial<SoilSample> = {}): SoilProperties =>
  soilProperties(pit({ by: 'class', class: name }, { depthM: 0.8, ...changes }), soilTables)

/** Five alike units of 4 m down a slope, top first. */
export const slope = (
  changes: Partial<{
    soil: SoilProperties
    cover: WaterCover
    slopeDeg: number
    referenceEtMm: Twelve<number>
  }> = {},
): readonly WaterUnit[] =>
  typicalSlope({
    soil: soilOf('loam'),
    cover: 'mown',
    slopeDeg: 12,
    referenceEtMm: climate('temperate north').referenceEtMm,
    ...changes,
  })

type Figure =
  | 'rainMm'
  | 'demandMm'
  | 'runOnMm'
  | 'lateralInMm'
  | 'actualEtMm'
  | 'runoffMm'
  | 'lateralOutMm'
  | 'drainageMm'
  | 'storedChangeMm'
  | 'fullness'
  | 'availableMm'
  | 'dryDays'
  | 'wetDays'
  | 'airlessDays'

/** A figure summed over the year. */
export const yearSum = (year: WaterYear | undefined, figure: Figure): number => {
  if (!year) throw new Error('there is no such unit')
  return year.months.reduce((sum, month) => sum + month[figure], 0)
}
