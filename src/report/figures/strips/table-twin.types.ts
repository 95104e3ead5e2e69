/** A drawing's twin in figures: what it draws, as rows of a table. */
export interface TableTwin {
  readonly caption: string
  readonly columns: readonly string[]
  /** First cell of each row is its heading. */
  readonly rows: readonly (readonly string[])[]
  readonly note?: string
}
