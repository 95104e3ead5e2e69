import { useTables } from '../stores/tables'

/** A source, as it is written beside a reason and as it is cited in full. */
export interface Cited {
  readonly short: string
  readonly full: string
}

/** How sources are named when nothing was published. */
const plain: Readonly<Record<string, string>> = {
  yours: 'yours',
  'common-practice': 'common practice',
  'own-judgement': 'our own judgement',
}

/** Names sources: author and year on the sheet, the whole citation on asking. */
export function useCite(): (source: string) => Cited {
  const { sources } = useTables()
  return (source) => {
    const full = plain[source] ?? sources[source]?.cite ?? source
    return { short: shortened(full), full }
  }
}

/** Up to the year, or the first stop: "Allen RG, Pereira LS, Raes D, Smith M 1998" becomes "Allen 1998". */
function shortened(cite: string): string {
  const year = /\b(1[89]|20)\d\d\b/.exec(cite)
  if (!year) return cite.split(/[:.;,(]/)[0]?.trim() ?? cite
  const author =
    cite
      .slice(0, year.index)
      .split(/[,;:(]/)[0]
      ?.replace(/\s[A-Z]{1,3}$/, '')
      .trim() ?? ''
  return `${author} ${year[0]}`.trim()
}
