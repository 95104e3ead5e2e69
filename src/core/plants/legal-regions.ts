const britain = ['England and Wales', 'Great Britain'] as const
const union = ['European Union'] as const

/** Members of the European Union, where its list of invasive species is law [Treaty on European Union, 2020]. */
const unionMembers = [
  'Austria',
  'Belgium',
  'Bulgaria',
  'Croatia',
  'Cyprus',
  'Czechia',
  'Denmark',
  'Estonia',
  'Finland',
  'France',
  'Germany',
  'Greece',
  'Hungary',
  'Ireland',
  'Italy',
  'Latvia',
  'Lithuania',
  'Luxembourg',
  'Malta',
  'Netherlands',
  'Poland',
  'Portugal',
  'Romania',
  'Slovakia',
  'Slovenia',
  'Spain',
  'Sweden',
] as const

/** American states whose lists are kept; a state that is not here has no list in the table. */
const states = [
  'California',
  'Colorado',
  'Delaware',
  'Illinois',
  'Indiana',
  'Maine',
  'Maryland',
  'Massachusetts',
  'Minnesota',
  'New York',
  'Ohio',
  'Oregon',
  'Pennsylvania',
  'Vermont',
  'Washington',
  'Wisconsin',
] as const

/** Whose lists bind in each place: its own and those of the larger place it belongs to. */
const lists: ReadonlyMap<string, readonly string[]> = new Map<string, readonly string[]>([
  // Who says no more than England and Wales may stand in England.
  ['England and Wales', ['England', ...britain]],
  ['England', ['England', ...britain]],
  ['Wales', britain],
  ['Scotland', ['Scotland', 'Great Britain']],
  ['Great Britain', ['England', ...britain, 'Scotland']],
  // The Union's regulation still binds there (Windsor Framework, annex 2; from memory).
  ['Northern Ireland', ['Northern Ireland', ...union]],
  ['European Union', union],
  ...unionMembers.map((member): [string, readonly string[]] => [member, [member, ...union]]),
  ['Norway', ['Norway']],
  ['Switzerland', ['Switzerland']],
  ...states.map((state): [string, readonly string[]] => [`USA: ${state}`, [`USA: ${state}`]]),
  ['Australia', ['Australia']],
  ['Australia: Lord Howe Island (NSW)', ['Australia: Lord Howe Island (NSW)', 'Australia']],
  ['Australia: Tasmania', ['Australia: Tasmania', 'Australia']],
  ['Australia: Victoria', ['Australia: Victoria', 'Australia']],
  ['New Zealand', ['New Zealand']],
])

/** Places whose plant laws are kept, in the order of a picking list. */
export const legalRegions: readonly string[] = [...lists.keys()]

/**
 * The regions whose lists bind in a place.
 *
 * @param legalRegion - name of the place, such as "England and Wales", "Germany", "Delaware"
 * @returns regions as the legal table names them; empty when no list is kept for the place
 */
export function lawsOver(legalRegion: string): readonly string[] {
  return lists.get(legalRegion) ?? lists.get(`USA: ${legalRegion}`) ?? []
}
