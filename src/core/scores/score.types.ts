import type { Account } from '#core/units'

/** The five scores. */
export const scoreNames = ['wetness', 'sun', 'erosion', 'frost', 'working'] as const

export type ScoreName = (typeof scoreNames)[number]

/** A person's own score in place of ours, with the reason. */
export interface Override {
  readonly score: number
  readonly reason: string
}

/** A score of 0 to 100 with its class and the level book behind it. */
export interface Score {
  readonly name: ScoreName
  /** What stands: the person's own figure when there is one, else ours. 0 to 100, whole. */
  readonly value: number
  /** Named class of `value`, such as "dry". */
  readonly class: string
  /** Ours, whole points, always shown: the lines add up to `ours` exactly. */
  readonly ours: number
  readonly account: Account
  readonly override: Override | undefined
}

export type Scores = Readonly<Record<ScoreName, Score>>
