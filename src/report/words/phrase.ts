/** A piece of a sentence: plain words, or a figure that may be asked for its reasons. */
export type Phrase = string | Figure

interface Figure {
  /** The figure with its unit, such as "311 m²". */
  readonly figure: string
  /** The account behind it, when it can be asked. */
  readonly ask?: AccountKey
}

/** Names an account in the findings: which zone (or the whole plot), and about what. */
export interface AccountKey {
  readonly zoneId: string | undefined
  readonly about: 'wetness' | 'sun' | 'erosion' | 'frost' | 'working' | 'water' | 'hours' | 'cover'
}

/** What a question is answered with: a sentence in the sky, and one line of notes. */
export interface Answer {
  readonly says: readonly Phrase[]
  readonly note: readonly Phrase[]
}

/** A sentence as plain text, for a screen reader, a printout or a test. */
export function plainText(phrases: readonly Phrase[]): string {
  return phrases.map((phrase) => (typeof phrase === 'string' ? phrase : phrase.figure)).join('')
}
