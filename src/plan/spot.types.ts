import type { Climate } from '#core/climate'
import type { PlantRegion, Site } from '#core/plants'
import type { ScoreFacts, Scores } from '#core/scores'
import type { SoilProperties, SoilSample } from '#core/soil'

/** How ground bends, as the eye sees it. */
export const spotForms = ['concave', 'straight', 'convex'] as const

export type SpotForm = (typeof spotForms)[number]

/** One place on a slope, described without a survey. */
export interface Spot {
  readonly id: string
  /** Latitude [°], north positive, -90 to 90. */
  readonly latitudeDeg: number
  readonly elevationM: number
  /** Steepness [°], 0 to 80. */
  readonly slopeDeg: number
  /** Direction faced, clockwise from true north [°]; undefined only on level ground. */
  readonly aspectDeg: number | undefined
  /** Place on the slope, 0 (foot) to 1 (crest). */
  readonly position: number
  readonly formDown: SpotForm
  readonly formAcross: SpotForm
  readonly soil: SoilSample
  readonly climate: Climate
  readonly plantRegion: PlantRegion
  /** Place whose plant laws count; undefined when not said. */
  readonly legalRegion: string | undefined
}

/** All that follows from one place. */
export interface SpotFindings {
  readonly id: string
  readonly soil: SoilProperties
  readonly facts: ScoreFacts
  readonly scores: Scores
  /** McCune & Keon's heat load [MJ/cm² and year]; undefined beyond 60° of latitude, where it does not hold. */
  readonly heatLoad: number | undefined
  readonly site: Site
}
