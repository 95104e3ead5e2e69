import type { Plant } from './plant.schema'

/** Words that stand between a species and a kind within it. */
const RANKS = /^(subsp\.|var\.|f\.|subvar\.|nothosubsp\.|group\b|'|‘|\()/

/** A genus and a species and nothing to be put right, as most names are. */
const TWO_WORDS = /^[A-Z][a-z]+ (?!(?:ssp|subspecies|agg)$)[a-z]+$/

/**
 * A plant name in the one spelling used for comparing: small letters, one sign for hybrids and ranks.
 *
 * @param name - a name as written
 * @returns the same name for comparing
 */
export function plainName(name: string): string {
  if (TWO_WORDS.test(name)) return name.toLowerCase()
  return name
    .trim()
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .replace(/(^| )(?:x |× ?)/g, '$1× ')
    .replace(/\b(?:ssp|subspecies)\b\.?/g, 'subsp.')
    .replace(/\bagg\.?$/, '')
    .trim()
}

/**
 * The entries of a list that would cover a plant of this name: itself, its species, its genus. A list entry for
 * one subspecies is not among those of the plain species, so it never hits it.
 *
 * @param name - botanical name as written
 * @returns names for comparing, closest first
 */
export function coveringNames(name: string): string[] {
  const full = plainName(name)
  const [genus = '', ...rest] = full.split(' ')
  const speciesWords = rest[0] === '×' ? rest.slice(0, 2) : rest.slice(0, 1)
  const species = [genus, ...speciesWords].join(' ')
  const tail = rest.slice(speciesWords.length).join(' ')
  const closest = tail !== '' && RANKS.test(tail) ? [full, species] : [full]
  return [...new Set([...closest, `${genus} spp.`])]
}

const known = new WeakMap<Plant, readonly string[]>()

/**
 * All names of a plant for comparing with lists, closest first: accepted name before older names.
 *
 * @param plant - a row of the plant table
 * @returns covering names of its accepted name, then of each synonym
 */
export function namesOf(plant: Plant): readonly string[] {
  const before = known.get(plant)
  if (before) return before
  const names = [...new Set([plant.name, ...plant.synonyms].flatMap(coveringNames))]
  known.set(plant, names)
  return names
}
