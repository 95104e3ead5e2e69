/** What a fact is, so that every sentence and table can speak of it with its unit. */
interface FactWords {
  readonly meaning: string
  readonly unit: string
  readonly decimals: number
  /** Shown figure over the fact itself, such as 100 for a ratio shown in per cent. */
  readonly shownTimes?: number
}

/** Every fact of a zone that a rule may speak of. */
export const factTable = {
  slopeDeg: { meaning: 'mean slope', unit: '°', decimals: 0 },
  steepSlopeDeg: { meaning: 'slope that nine tenths of the zone do not exceed', unit: '°', decimals: 0 },
  position: { meaning: 'position, 0 foot to 100 % crest', unit: '%', decimals: 0, shownTimes: 100 },
  formDown: { meaning: 'curvature down the slope, negative where it eases', unit: '1/m', decimals: 2 },
  formAcross: { meaning: 'curvature across the slope, negative in a hollow', unit: '1/m', decimals: 2 },
  heightAboveFootM: { meaning: 'mean height above where its water leaves or stops', unit: 'm', decimals: 1 },
  seasonSunRatio: {
    meaning: 'growing-season radiation over open level ground, per m² of slope',
    unit: '%',
    decimals: 0,
    shownTimes: 100,
  },
  midsummerSunHours: { meaning: 'direct sun on a clear midsummer day', unit: 'h', decimals: 1 },
  midwinterSunHours: { meaning: 'direct sun on a clear midwinter day', unit: 'h', decimals: 1 },
  availableWaterMm: { meaning: 'water that plants can take from the rooting depth', unit: 'mm', decimals: 0 },
  drainableMm: { meaning: 'room for water above field capacity', unit: 'mm', decimals: 0 },
  conductivityMmPerH: { meaning: 'saturated conductivity of the soil', unit: 'mm/h', decimals: 1 },
  depthM: { meaning: 'depth that roots can use', unit: 'm', decimals: 2 },
  stonesPercent: { meaning: 'stones by volume', unit: '%', decimals: 0 },
  runOnMm: {
    meaning: 'water from zones above, over and through the soil, in a year',
    unit: 'mm',
    decimals: 0,
  },
  yearRainLessEtMm: { meaning: 'rain less reference evapotranspiration, year', unit: 'mm', decimals: 0 },
  summerRainLessEtMm: {
    meaning: 'rain less reference evapotranspiration, six summer months',
    unit: 'mm',
    decimals: 0,
  },
  wetDays: { meaning: 'days above field capacity in a year', unit: 'days', decimals: 0 },
  airlessDays: { meaning: 'days in a year when roots are short of air', unit: 'days', decimals: 0 },
  dryDays: { meaning: 'days in a year when plants run short of water', unit: 'days', decimals: 0 },
  winterFullness: {
    meaning: 'mean filling of the soil’s store, three winter months',
    unit: '%',
    decimals: 0,
    shownTimes: 100,
  },
  summerFullness: {
    meaning: 'mean filling of the soil’s store, three summer months',
    unit: '%',
    decimals: 0,
    shownTimes: 100,
  },
  erosionBareTPerHa: { meaning: 'soil lost in a year when bare', unit: 't/ha', decimals: 1 },
  erosionCoveredTPerHa: { meaning: 'soil lost in a year when covered', unit: 't/ha', decimals: 1 },
  coldestMonthTMinC: { meaning: 'mean daily minimum of the coldest month', unit: '°C', decimals: 1 },
  hardWinterC: { meaning: 'lowest temperature of a hard winter', unit: '°C', decimals: 0 },
} as const satisfies Record<string, FactWords>

export type FactName = keyof typeof factTable

/** Everything the rules may ask about a zone, in the units of `factTable`. */
export type ScoreFacts = Readonly<Record<FactName, number>>

/** Names of all facts. */
export const factNames = Object.keys(factTable) as FactName[]

/**
 * A fact in words.
 *
 * @param name - the fact
 * @param value - its figure, in the unit of the fact [its own unit]
 * @returns the figure with its unit, such as "12 mm" or "35°"
 */
export function factInWords(name: FactName, value: number): string {
  const { unit, decimals, shownTimes = 1 }: FactWords = factTable[name]
  const figure = (value * shownTimes).toFixed(decimals).replace(/^-(0(\.0*)?)$/, '$1')
  const gap = unit === '°' ? '' : ' '
  const one = figure === '1' && unit === 'days'
  return `${figure.replace('-', '−')}${gap}${one ? 'day' : unit}`
}
