/** Something the gardener can mend: what is wrong, where it stands, and how to put it right. */
export interface Problem {
  /** Where it stands: a path into a plan, or a row and column of a file. */
  readonly where: string
  /** What is wrong, in plain words. */
  readonly what: string
  /** How to mend it. */
  readonly mend: string
}

/** A value, or every problem that kept us from having it. */
export type Outcome<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: readonly Problem[] }
