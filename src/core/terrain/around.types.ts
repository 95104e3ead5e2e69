import type { PlanPoint, Ring } from '#core/geometry'

/** A place from which water cannot run off over the surface. */
export interface Hollow {
  /** Its deepest place [m]. */
  readonly at: PlanPoint
  /** Cells under its water line. */
  readonly cells: readonly number[]
  /** Outline of its water when full [m]. */
  readonly ring: Ring
  /** Level to which it fills before it runs over [m]. */
  readonly lipM: number
  /** Greatest depth [m]. */
  readonly depthM: number
  /** Plan area of its water when full [m²]. */
  readonly areaM2: number
  /** Water it holds before it runs over [m³]. */
  readonly volumeM3: number
}

/** A stretch of the boundary over which water leaves the plot. */
export interface Leaving {
  /** Where most of it leaves [m]. */
  readonly at: PlanPoint
  /** The stretch, along the boundary [m]. */
  readonly line: readonly PlanPoint[]
  /** Plan area whose water leaves here [m²]. */
  readonly areaM2: number
  /** Its share of the whole plot's area, 0 to 1. */
  readonly share: number
  /** Id of the stretch of `beyond` it runs to; undefined when the person did not say what lies there. */
  readonly beyondId: string | undefined
}

/** How the ground falls beside one wall of a house. */
export interface WallFall {
  /** Ends of the wall, in the order of the house's corners [m]. */
  readonly from: PlanPoint
  readonly to: PlanPoint
  /** Fall straight towards the wall where it is worst [m/m]; negative where the ground falls away from it. */
  readonly gradient: number
  /** By how much the ground stands above the wall's foot at its highest within reach, there [m]; 0 when it does not. */
  readonly aboveM: number
  /** The place on the wall where that is [m]. */
  readonly at: PlanPoint
}

/** How the ground falls beside a house. */
export interface HouseFall {
  readonly obstacleId: string
  readonly name: string
  /** Steepest fall towards a wall within the reach looked at [m/m]; 0 when none falls towards it. */
  readonly towardsGradient: number
  /** By how much the ground stands above the wall's foot within that reach [m]. */
  readonly towardsM: number
  /** Steepest fall away from a wall [m/m]. */
  readonly awayGradient: number
  /** Where the ground falls most towards the house [m]; undefined when nowhere. */
  readonly at: PlanPoint | undefined
  /** How far from the walls was looked [m]. */
  readonly reachM: number
  /** Wall by wall, those with ground of the plot beside them; none when the house stands clear of the plot. */
  readonly walls: readonly WallFall[]
}

/** What is seen of the plot from one place. */
export interface SeenFrom {
  readonly viewpointId: string
  readonly name: string
  /** 1 for each cell that is seen. */
  readonly seen: Uint8Array
  /** Seen share of the plot's plan area, 0 to 1. */
  readonly seenShare: number
  /** Level of the eye [m]. */
  readonly eyeLevelM: number
  /** Names of what may stand in the way but has no height, so that it hides nothing. */
  readonly withoutHeight: readonly string[]
}

/** What follows from the ground for a house, a neighbour and the eye. */
export interface Around {
  /** Deepest first. */
  readonly hollows: readonly Hollow[]
  /** Hollows shallower than this are left out, as the survey cannot tell them from error [m]. */
  readonly leastHollowM: number
  /** The largest share first. */
  readonly leaving: readonly Leaving[]
  readonly houses: readonly HouseFall[]
  readonly views: readonly SeenFrom[]
  /** Named position of each cell: 0 outside the plot, else 1 + its place in `namedPositions`. */
  readonly namedPosition: Uint8Array
}
