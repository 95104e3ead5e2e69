/** The sources of data/, by their keys. */
export type SourceList = Readonly<Record<string, { readonly kind: string; readonly cite: string }>>

const plainWords: Readonly<Record<string, string>> = {
  yours: 'yours',
  'common-practice': 'common practice',
  'own-judgement': 'our own judgement',
  memory: 'from memory',
}

/** Author and year, where a citation begins with them. */
const DATED = /^[^:]*?\b(?:1[89]|20)\d\d\b/

/** Longest citation that is printed beside a line whole [characters]. */
const LONGEST = 64

/** Where a reason comes from, in a few words; the whole citation stands in the list of sources. */
export function sourceWords(key: string, sources: SourceList = {}): string {
  const plain = plainWords[key]
  if (plain) return plain
  const cite = sources[key]?.cite
  if (!cite) return key
  const dated = DATED.exec(cite)?.[0]
  if (dated && dated.length <= LONGEST) return dated
  if (cite.length <= LONGEST) return cite
  const cut = cite.slice(0, LONGEST)
  return `${cut.slice(0, cut.lastIndexOf(' '))}…`
}

/** The whole citation, for a tooltip or a list. */
export function wholeCitation(key: string, sources: SourceList = {}): string {
  return sources[key]?.cite ?? plainWords[key] ?? key
}
