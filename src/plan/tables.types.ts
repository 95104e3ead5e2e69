import type { AssumedMethods } from '#core/accuracy'
import type { SurveyTables } from '#core/booking'
import type { CareTables } from '#core/care'
import type { Place } from '#core/climate'
import type { PlantTables } from '#core/plants'
import type { ScoreRules } from '#core/scores'
import type { ShadeTables } from '#core/shade'
import type { SoilTables } from '#core/soil'
import type { WaterTables } from '#core/water'

/** A source that rows and rules point at. */
export interface Source {
  readonly kind: 'published' | 'standard' | 'common-practice' | 'memory' | 'own-judgement' | 'measured'
  readonly cite: string
  readonly note?: string | undefined
}

/** Every table that deriving reads, checked on loading. */
export interface Tables {
  readonly survey: SurveyTables
  /** How ground was measured when nobody says. */
  readonly assumed: AssumedMethods
  /** How things stand in the light, and what the light of a place is called. */
  readonly shade: ShadeTables
  readonly soil: SoilTables
  readonly water: WaterTables
  readonly scores: ScoreRules
  readonly care: CareTables
  readonly plants: PlantTables
  readonly places: readonly Place[]
  readonly sources: Readonly<Record<string, Source>>
}
