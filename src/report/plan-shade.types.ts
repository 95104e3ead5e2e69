import type { Findings, Plan } from '#plan'
import type { RampName } from './ramps'

/** A class of a shading: its colour, what it stands for, and how much of the plot it takes. */
interface ShadeClass {
  readonly colour: string
  readonly words: string
  readonly planAreaM2: number
}

/** The plan shaded by one measure of the ground. */
export interface PlanShade {
  readonly name: string
  readonly classes: readonly ShadeClass[]
  /** Class of each cell of the surface's frame, -1 outside the plot. */
  readonly classOfCell: Int8Array
}

/** What a plan can be shaded by. */
export interface Shading {
  readonly id: string
  readonly name: string
  /** What it belongs to in a list. */
  readonly group: 'ground' | 'sun' | 'trials' | 'views'
}

/** How one shading comes about. */
export interface ShadingRow extends Shading {
  readonly unit: string
  readonly ramp: RampName
  /** Lower limits of the classes; equal steps over what there is when left out. */
  readonly limits?: readonly number[]
  /** Names of the classes; told by their limits when left out. */
  readonly words?: readonly string[]
  readonly values: (plan: Plan, findings: Findings) => ArrayLike<number>
}
