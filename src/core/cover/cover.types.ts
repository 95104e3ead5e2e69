import type { Account } from '#core/units'

export const coverKinds = ['mown', 'meadow', 'ground-cover', 'shrubs', 'trees', 'terrace', 'leave'] as const

export type CoverKind = (typeof coverKinds)[number]

/** How a zone may be mown: the verdict drawn under the turf. */
export type MowingVerdict = 'mow' | 'mow-on-foot' | 'cut-once' | 'leave' | 'never'

/** What one cover would mean on one zone. */
export interface CoverOption {
  readonly kind: CoverKind
  readonly verdict: 'good' | 'possible' | 'refused'
  /** Points of 100 and the reasons for and against. */
  readonly fitness: Account
  /** Warnings that go with it: the usual caution, whom to ask. */
  readonly cautions: readonly Caution[]
  /** Said when the error of the slope could put the zone on the other side of this cover's limit. */
  readonly closeCall?: string | undefined
}

export interface Caution {
  readonly id: string
  readonly text: string
  readonly source: string
}

export interface ZoneCover {
  readonly zoneId: string
  readonly mowing: MowingVerdict
  /** Why the mowing verdict is what it is, machine by machine. */
  readonly machines: readonly MachineVerdict[]
  readonly options: readonly CoverOption[]
  /** Best option that is not refused. */
  readonly suggested: CoverKind
  /** What stands: the person's choice, or the suggestion. */
  readonly chosen: CoverKind
  readonly chosenByPerson: boolean
  /** What terraces of each width would do to the ground; none where terraces are refused. */
  readonly terraces: readonly TerraceFigures[]
}

/** What one width of terrace does to the ground of a zone: geometry only, never a design. */
export interface TerraceFigures {
  readonly id: string
  /** Level ground from one step to the next [m]. */
  readonly treadM: number
  /** What the width has room for. */
  readonly because: string
  readonly source: string
  /** Height of a step where the ground is as steep as the zone's mean [m]. */
  readonly stepM: number
  /** Height of a step in the zone's steep part [m]: cautions go by this one. */
  readonly stepSteepM: number
  /** Ground cut from the back half of a tread and laid on its front half [m³ per metre of terrace]. */
  readonly cutM3PerM: number
  /** Ground cut over the whole zone [m³]; as much is filled. */
  readonly cutM3: number
  /** Level ground for plants, the steps being upright [m²]. */
  readonly levelM2: number
  /** Level ground over the slope area it is cut from, 0 to 1. */
  readonly levelShare: number
  readonly cautions: readonly Caution[]
}

export interface MachineVerdict {
  readonly machineId: string
  readonly name: string
  readonly limitDeg: number
  readonly allowed: boolean
  readonly because: string
  readonly source: string
  /** Said when the error of the slope could put the zone on the other side of the machine's limit. */
  readonly closeCall?: string | undefined
}

/** What the cover stage needs to know of a zone. */
export interface CoverFacts {
  readonly zoneId: string
  readonly letter: string
  readonly name: string
  readonly slopeDegMean: number
  /** Nine tenths of the zone are no steeper [°]. */
  readonly slopeDegSteep: number
  /** Standard error of the steep figure [°]; undefined where nothing is known of it. */
  readonly slopeSdDegSteep?: number | undefined
  readonly slopeAreaM2: number
  readonly planAreaM2: number
  /** Wetness score, 0 parched to 100 soaked. */
  readonly wetness: number
  /** Days a year with the root zone above field capacity [d]. */
  readonly wetDays: number
  /** Direct sun at midsummer [h]. */
  readonly midsummerSunHours: number
  /** Soil the zone would lose if it lay bare [t/ha a year]. */
  readonly bareErosionTPerHa: number
  readonly soilDepthM: number
  /** A house stands within reach of a tree's roots or fall. */
  readonly nearHouse: boolean
  /** Pipes, cables or drains are marked in or beside the zone. */
  readonly servicesNear: boolean
}

/** What the person said that bears on cover. */
export interface CoverBrief {
  /** What mows here, with the figure on the maker's plate where it is known [°]. */
  readonly machines: readonly { readonly id: string; readonly limitDeg?: number | undefined }[]
  readonly fallsTowardsHouse: boolean
}
