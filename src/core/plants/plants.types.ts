import type { LegalRow, Plant, PlantRegion, ToxicityRow } from './plant.schema'

/** Everything the plant stage reads from data/. */
export interface PlantTables {
  readonly plants: readonly Plant[]
  readonly legal: readonly LegalRow[]
  readonly toxicity: readonly ToxicityRow[]
}

/** What a zone offers a plant. */
export interface Site {
  readonly zoneId: string
  /** Wetness score, 0 parched to 100 soaked, and its place on the plants' 1 to 12 moisture scale. */
  readonly wetness: number
  readonly moistureClass: number
  readonly wetWinterDrySummer: boolean
  /** Days a year when the root zone is so full of water that roots are short of air [d]. */
  readonly wetDays: number
  /** Hours of direct sun at midsummer [h]; light on the plants' 1 to 9 scale. */
  readonly midsummerSunHours: number
  readonly lightClass: number
  readonly ph: number | undefined
  readonly texture: 'sand' | 'loam' | 'clay'
  readonly soilDepthM: number
  /** Lowest temperature to expect in a hard winter, cold-air pooling counted [°C]. */
  readonly hardWinterC: number
  readonly slopeDeg: number
  readonly slopeAreaM2: number
  readonly region: PlantRegion
  /** Name of the place whose laws count, such as "England and Wales"; undefined when not said. */
  readonly legalRegion: string | undefined
}

/** One reason for or against a plant. */
export interface MatchReason {
  readonly id: string
  readonly for: boolean
  readonly because: string
  readonly source: string
}

export interface PlantFlags {
  readonly legal: readonly LegalRow[]
  readonly toxicity: ToxicityRow | undefined
  /** True when planting or selling is barred where the plot is. */
  readonly barred: boolean
  /** True when it will take the zone over. */
  readonly takesOver: boolean
}

/** The verdict on one plant for one site. */
export interface PlantVerdict {
  readonly plant: Plant
  readonly offered: boolean
  /** Fit, 0 to 100; 0 when refused. */
  readonly fit: number
  readonly bindingClass: number
  readonly reasons: readonly MatchReason[]
  readonly flags: PlantFlags
}

export interface MixLine {
  readonly plantId: string
  readonly layer: 'ground' | 'shrub' | 'tree' | 'meadow'
  /** Share of the zone's slope area, 0 to 1; of a sown mix, share of the seed by weight. */
  readonly share: number
  /** Distance along the slope between plants, staggered rows [m]. */
  readonly spacingM: number
  readonly perM2: number
  readonly count: number
  /** Seed to sow, for meadows [g]; count and plants per m² are 0 then. */
  readonly seedG: number | undefined
  readonly monthsToCover: { readonly from: number; readonly to: number } | undefined
  readonly because: string
}

export interface ZonePlanting {
  readonly zoneId: string
  /** Best first; every offered plant, and how many were refused. */
  readonly offered: readonly PlantVerdict[]
  readonly refused: readonly PlantVerdict[]
  readonly mix: readonly MixLine[]
  /** Months to 80 % cover of the mix [months]. */
  readonly monthsToCover: { readonly from: number; readonly to: number } | undefined
  /** Cover of the ground by year, 0 to 1, years 0 to 10; empty when nothing is planted. */
  readonly coverByYear: readonly number[]
  /** Indicative cost class of the mix per m² of slope, 1 to 5. */
  readonly costClass: number | undefined
  /** Why the mix is empty, when it is. */
  readonly none: string | undefined
}
