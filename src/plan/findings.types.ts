import type { Accuracy, SlopeError } from '#core/accuracy'
import type { PlanPoint } from '#core/geometry'
import type { Twelve } from '#core/units'
import type { MonthClimate } from '#core/climate'
import type { SoilProperties } from '#core/soil'
import type { Standing, SunOnGround, ZoneSun } from '#core/shade'
import type { Surface } from '#core/survey'
import type { FurtherSection } from './further-sections'
import type { HouseSight } from './house-sight'
import type { Around, Terrain } from '#core/terrain'
import type { PlotWater, SoilLoss } from '#core/water'
import type { Zoning } from '#core/zones'
import type { ScoreFacts, Scores } from '#core/scores'
import type { Caution, ZoneCover } from '#core/cover'
import type { Site, ZonePlanting } from '#core/plants'
import type { CareYear } from '#core/care'

/** Something still to settle, with its place and how to mend it. */
export interface Settlement {
  readonly id: string
  readonly kind: 'danger' | 'clash' | 'gap'
  readonly what: string
  readonly mend: string
  readonly zoneId: string | undefined
  /** Where on the section [m from the top edge]. */
  readonly atM: number | undefined
  /** Where in plan [m]; left out when nowhere in particular or when a zone or the section says it. */
  readonly at?: PlanPoint
  readonly source: string
}

/** All that follows from one zone. */
export interface ZoneFindings {
  readonly zoneId: string
  readonly soil: SoilProperties
  /** How well its slope is known. */
  readonly slopeError: SlopeError
  /** What the rules looked at. */
  readonly facts: ScoreFacts
  readonly scores: Scores
  readonly site: Site
  readonly cover: ZoneCover
  readonly planting: ZonePlanting
  /** Soil lost in a usual year: bare, while plants take hold, and once covered. */
  readonly soilLoss: readonly SoilLoss[]
}

/** What a trial would bring: the sun with some things changed, on the same zones. */
export interface TrialFindings {
  readonly trialId: string
  readonly name: string
  /** What is changed, in words. */
  readonly changes: readonly string[]
  /** Sun of each zone, in the order of the zones. */
  readonly zoneSun: readonly ZoneSun[]
  /** Change of direct sun at midsummer, one value per cell [h a day]. */
  readonly midsummerGainH: Float32Array
}

/** Everything derived from a plan. Never saved. */
export interface Findings {
  readonly surface: Surface
  readonly terrain: Terrain
  /** Sections besides the one of `terrain`, where the person drew some. */
  readonly sections: readonly FurtherSection[]
  /** How good the surface is. */
  readonly accuracy: Accuracy
  /** What each house at the top sees of the slope. */
  readonly sights: readonly HouseSight[]
  /** Hollows, water that leaves, the fall beside houses, and what is seen from where. */
  readonly around: Around
  readonly sun: SunOnGround
  /** What stands in the light. */
  readonly standing: readonly Standing[]
  /** Sun of each zone, in the order of the zones. */
  readonly zoneSun: readonly ZoneSun[]
  /** Sun of each zone with things changed, for every trial of the plan. */
  readonly trials: readonly TrialFindings[]
  /** The twelve months at the plot. */
  readonly climate: Twelve<MonthClimate>
  readonly soils: readonly SoilProperties[]
  readonly zoning: Zoning
  readonly water: PlotWater
  readonly zones: readonly ZoneFindings[]
  readonly care: CareYear
  readonly cautions: readonly Caution[]
  readonly toSettle: readonly Settlement[]
}
