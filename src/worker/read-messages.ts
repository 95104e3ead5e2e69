import type { Problem } from '#core/units'
import type { SurveyGround, SurveyRead, SurveyWish } from '#files'
import type { LevelColumns } from '#io'

/** What the page asks of the reader. To cancel, the page ends the worker and starts another. */
export type ReadAsk =
  | {
      readonly kind: 'read'
      readonly id: number
      readonly name: string
      readonly bytes: Uint8Array
      /** Which column of a table holds what, where the person says so. */
      readonly columns?: LevelColumns
    }
  /** The table read last, with the columns that the person says. */
  | { readonly kind: 'columns'; readonly id: number; readonly columns: LevelColumns }
  /** The file read last, as ground. */
  | { readonly kind: 'ground'; readonly id: number; readonly wish: SurveyWish }

/** What the reader tells the page. */
export type ReadAnswer =
  | { readonly kind: 'read'; readonly id: number; readonly read: SurveyRead }
  | { readonly kind: 'ground'; readonly id: number; readonly ground: SurveyGround }
  | { readonly kind: 'problems'; readonly id: number; readonly problems: readonly Problem[] }
  | { readonly kind: 'failed'; readonly id: number; readonly message: string }
