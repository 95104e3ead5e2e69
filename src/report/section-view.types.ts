import type { LevelPoint, PlanPoint, Ring } from '#core/geometry'
import type { CoverKind, MowingVerdict } from '#core/cover'
import type { Plant } from '#core/plants'
import type { TextureClass } from '#core/soil'
import type { Month, Twelve } from '#core/units'
import type { Backdrop, Obstacle } from '#plan'

/** The questions a sheet answers, in their order. */
export const questions = ['ground', 'water', 'sun', 'mow', 'hold', 'month', 'handover'] as const

export type Question = (typeof questions)[number]

/** A stretch of the section [m from the top edge]. */
export interface Stretch {
  readonly fromM: number
  readonly toM: number
}

/** A point of the cut ground. */
export interface GroundPoint {
  /** Plan distance from the top edge [m]. */
  readonly distanceM: number
  /** Height above the lowest point of the section [m]. */
  readonly heightM: number
  readonly slopeDeg: number
  /** Standard error of the level [m]. */
  readonly levelSdM: number
}

/** A measured level on the section, or close beside it. */
export interface MeasuredMark {
  readonly distanceM: number
  readonly heightM: number
}

/** A line of a zone's planting with what its drawing needs. */
export interface DrawnPlanting {
  readonly plant: Plant
  readonly layer: 'ground' | 'shrub' | 'tree' | 'meadow'
  /** Share of the zone, 0 to 1. */
  readonly share: number
  /** Distance between plants along the slope [m]. */
  readonly spacingM: number
  /** Plants in the whole zone. */
  readonly count: number
}

/** Where a usual year's water of a zone goes [m³ a year]. */
export interface ZoneVolumes {
  readonly rainM3: number
  readonly usedM3: number
  readonly ranOffM3: number
  readonly sidewaysM3: number
  readonly drainedM3: number
}

/** Water standing on the base of the soil in the wettest month. */
export interface StandingWater {
  readonly month: Month
  /** Thickness above the base of the soil [m]. */
  readonly thicknessM: number
}

export interface SectionZone {
  readonly id: string
  readonly letter: string
  readonly name: string
  readonly spans: readonly Stretch[]
  readonly slopeDegMean: number
  readonly slopeDegSteep: number
  /** Standard error of the mean slope [°]. */
  readonly slopeSdDeg: number
  readonly planAreaM2: number
  readonly slopeAreaM2: number
  readonly soil: { readonly texture: TextureClass; readonly depthM: number; readonly stonesPercent: number }
  readonly cover: CoverKind
  readonly mowing: MowingVerdict
  /** The machines that may work here. */
  readonly allowedMachines: readonly string[]
  /** Clear-sky hours of direct sun a day, each month [h]. */
  readonly sunHours: Twelve<number>
  /** Days with the root zone above field capacity, each month [d]. */
  readonly wetDays: Twelve<number>
  readonly volumes: ZoneVolumes | undefined
  readonly standing: StandingWater | undefined
  readonly planting: readonly DrawnPlanting[]
  /** Months when it is better left alone. */
  readonly keepOff: readonly Month[]
}

/** Something that stands on, in or near the section. */
export interface SectionObstacle extends Stretch {
  readonly id: string
  readonly kind: Obstacle['kind']
  readonly name: string
  readonly heightM: number | undefined
  /** True when the section cuts it; false when it stands beside the line and is projected onto it. */
  readonly cut: boolean
  /** How it stands in the light; undefined of what lies flat and of what has no height. */
  readonly standing?: StandingShape | undefined
}

/** A thing as the sun is reckoned with; heights above the lowest point of the section [m]. */
export interface StandingShape {
  /** Share of direct light that comes through it, month by month, 0 to 1. */
  readonly through: Twelve<number>
  readonly crown: StandingCrown | undefined
  /** Top of walls, fences and hedges; of a building its eaves and its ridge, seen from the gable or from the side. */
  readonly roof: StandingRoof | undefined
}

interface StandingCrown {
  readonly lowM: number
  readonly highM: number
  readonly wideM: number
}

export interface StandingRoof {
  readonly eavesM: number
  readonly ridgeM: number
  readonly form: 'flat' | 'gable' | 'along'
}

/** A machine's own limit, to be drawn as a slope. */
export interface MachineLimit {
  readonly name: string
  readonly limitDeg: number
}

export interface SectionDanger extends Stretch {
  readonly id: string
  readonly what: string
  readonly mend: string
  readonly zoneId: string | undefined
}

/** Everything the section drawing shows, and nothing else. */
export interface SectionView {
  readonly name: string
  readonly lengthM: number
  /** Difference of level along the section [m]. */
  readonly fallM: number
  /** Level of height 0 above the survey's datum [m]. */
  readonly footLevelM: number
  /** Direction in which the section runs, clockwise from true north [°]. */
  readonly bearingDeg: number
  readonly latitudeDeg: number
  readonly ground: readonly GroundPoint[]
  /** Levels that were measured on it. */
  readonly measured: readonly MeasuredMark[]
  /** Stretch drawn, with what stands just outside the plot [m]. */
  readonly drawn: Stretch
  readonly zones: readonly SectionZone[]
  readonly obstacles: readonly SectionObstacle[]
  readonly machines: readonly MachineLimit[]
  readonly steepest: GroundPoint
  readonly dangers: readonly SectionDanger[]
}

/** Everything the small plan shows. */
export interface PlanView {
  readonly boundary: Ring
  readonly section: { readonly from: PlanPoint; readonly to: PlanPoint; readonly lengthM: number }
  readonly zones: readonly PlanZone[]
  readonly obstacles: readonly Obstacle[]
  /** Crowns as they stand, measured or usual. */
  readonly crowns: readonly PlanCrown[]
  readonly contours: readonly ContourLine[]
  /** Level difference between contours [m]. */
  readonly contourStepM: number
  readonly hachures: readonly Hachure[]
  readonly marked: PlanMarked
  readonly water: PlanWater
}

/** The crown of a tree from above. */
interface PlanCrown {
  /** The tree it belongs to. */
  readonly id: string
  readonly at: PlanPoint
  readonly radiusM: number
}

/** Where water stands on the plot, and where it leaves. */
export interface PlanWater {
  readonly hollows: readonly Ring[]
  readonly leaving: readonly WaterGoing[]
}

/** Water going over the boundary. */
export interface WaterGoing {
  readonly at: PlanPoint
  /** Straight out of the plot, clockwise from true north [°]. */
  readonly towardsDeg: number
  /** Its share of the whole plot's, 0 to 1. */
  readonly share: number
}

/** What was measured and marked in plan. */
export interface PlanMarked {
  /** Spot levels; none on ground measured otherwise. */
  readonly levels: readonly LevelPoint[]
  readonly breaklines: readonly PlanLine[]
  readonly holes: readonly Ring[]
  /** Further sections besides the one drawn large. */
  readonly sections: readonly { readonly name: string; readonly from: PlanPoint; readonly to: PlanPoint }[]
  readonly viewpoints: readonly { readonly name: string; readonly at: PlanPoint }[]
  /** What lies beyond, along the boundary. */
  readonly beyond: readonly PlanLine[]
  readonly backdrop: Backdrop | undefined
}

/** A line of the plan with what it is. */
interface PlanLine {
  readonly kind: string
  readonly name: string
  readonly line: readonly PlanPoint[]
}

interface PlanZone {
  readonly id: string
  readonly letter: string
  readonly ring: Ring
  readonly mowing: MowingVerdict
}

export interface ContourLine {
  readonly levelM: number
  /** Every fifth line is drawn heavier. */
  readonly main: boolean
  readonly rings: readonly Ring[]
}

/** A short stroke down the fall of the ground; the steeper, the blacker. */
export interface Hachure {
  readonly at: PlanPoint
  /** Direction of the fall, clockwise from true north [°]. */
  readonly fallsDeg: number
  readonly slopeDeg: number
}
