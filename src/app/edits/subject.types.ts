import type { PlanPoint } from '#core/geometry'
import type { Outcome } from '#core/units'
import type { Findings, Plan } from '#plan'

/** What is worked on at a time on the plan. */
export type SubjectId =
  'levels' | 'lines' | 'outline' | 'things' | 'beyond' | 'views' | 'sections' | 'backdrop'

/** The ground as it is now, for what is read from it while something is put down. */
export type GroundNow = Pick<Findings, 'surface' | 'terrain'>

/** Something that lies on the plan and can be picked and moved. */
export interface Placed {
  readonly id: string
  /** As in “move level 14”. */
  readonly name: string
  readonly ring: readonly PlanPoint[]
  readonly closed: boolean
  /** Its corners may be added and taken out, down to this many. */
  readonly least: number | undefined
  /** It may be taken out altogether. */
  readonly mayGo: boolean
}

/** One more figure of something placed, besides where it is. */
export interface PlacedFigure {
  readonly key: string
  readonly label: string
  readonly unit: string
  readonly value: number | undefined
  readonly optional: boolean
}

/** Which figure is changed. */
interface FigureChange {
  readonly id: string
  /** Which corner, from 0. */
  readonly corner: number
  readonly key: string
  readonly value: number | undefined
}

/** What can be put down, and in how many places. */
export interface PutKind {
  readonly id: string
  readonly text: string
  readonly lies: 'point' | 'pair' | 'line' | 'outline'
}

/** One kind of thing that can be worked on, the same on the plan as in its table. */
export interface Subject {
  readonly id: SubjectId
  readonly name: string
  readonly kinds: (plan: Plan) => readonly PutKind[]
  /** Why there is nothing to work on, where that is so. */
  readonly missing: (plan: Plan) => string
  readonly all: (plan: Plan, ground: GroundNow) => readonly Placed[]
  readonly put: (plan: Plan, kind: string, places: readonly PlanPoint[], ground: GroundNow) => Outcome<Plan>
  readonly reshape: (plan: Plan, id: string, places: readonly PlanPoint[], ground: GroundNow) => Outcome<Plan>
  readonly takeOut: (plan: Plan, id: string) => Outcome<Plan>
  readonly figures: (plan: Plan, id: string, corner: number) => readonly PlacedFigure[]
  readonly setFigure: (plan: Plan, change: FigureChange) => Outcome<Plan>
}
