import { squareMetres } from '../../drawing/measures'
import type { SectionScale } from '../../drawing/scale'
import { textWidthPx } from '../../drawing/text-width'
import type { SectionView, SectionZone, Stretch } from '../../section-view.types'
import { verdictWords } from './verdict-words'
import { zoneWords, type Asked, type Words } from './zone-words'

/** What is said of a zone, or of neighbours that share it. */
export interface ZoneLabel {
  readonly id: string
  readonly words: Words
  /** The ground it speaks of. */
  readonly stretch: Stretch
}

/** Type of a label's first line [px]. */
const TITLE_PX = 14

/** What each zone answers; a zone too narrow for its words names its letter, and may share them with a neighbour. */
export function zoneLabels(view: SectionView, scale: SectionScale, asked: Asked): ZoneLabel[] {
  const told = view.zones.flatMap((zone): Told[] => {
    const words = zoneWords(view, zone, asked)
    const stretch = longestOf(zone)
    return words && stretch ? [{ zones: [zone], words, stretch }] : []
  })
  const shared = asked.question === 'mow' ? shareVerdicts(told, scale) : told
  return shared.map(({ zones, words, stretch }) => ({
    id: `zone-${zones.map((zone) => zone.id).join('-')}`,
    words: isNarrow({ words, stretch }, scale) || zones.length > 1 ? lettered(zones, words) : words,
    stretch,
  }))
}

interface Told {
  readonly zones: readonly [SectionZone, ...SectionZone[]]
  readonly words: Words
  readonly stretch: Stretch
}

/** Neighbours under one verdict share a label when either is too narrow for its own. */
function shareVerdicts(told: readonly Told[], scale: SectionScale): Told[] {
  const shared: Told[] = []
  for (const next of told) {
    const before = shared.at(-1)
    if (before && sameVerdict(before, next) && (isNarrow(before, scale) || isNarrow(next, scale)))
      shared[shared.length - 1] = joined(before, next)
    else shared.push(next)
  }
  return shared
}

function sameVerdict(one: Told, other: Told): boolean {
  return one.zones[0].mowing === other.zones[0].mowing && one.words.note === other.words.note
}

function joined(one: Told, other: Told): Told {
  const areaM2 = [...one.zones, ...other.zones].reduce((sum, zone) => sum + zone.slopeAreaM2, 0)
  return {
    zones: [one.zones[0], ...one.zones.slice(1), ...other.zones],
    words: { ...other.words, title: `${verdictWords[one.zones[0].mowing]} ${squareMetres(areaM2)}` },
    stretch: { fromM: one.stretch.fromM, toM: other.stretch.toM },
  }
}

function isNarrow({ words, stretch }: Pick<Told, 'words' | 'stretch'>, scale: SectionScale): boolean {
  const face = words.voice === 'name' ? 'serifItalic' : 'sansBold'
  return scale.axis.x(stretch.toM) - scale.axis.x(stretch.fromM) < textWidthPx(words.title, face, TITLE_PX)
}

/** "E and F: mow on foot 92 m²". Names keep their capital. */
function lettered(zones: readonly SectionZone[], words: Words): Words {
  const letters = zones.map((zone) => zone.letter)
  const last = letters.at(-1) ?? ''
  const who = letters.length > 1 ? `${letters.slice(0, -1).join(', ')} and ${last}` : last
  const title =
    words.voice === 'name' ? words.title : `${words.title.charAt(0).toLowerCase()}${words.title.slice(1)}`
  return { ...words, title: `${who}: ${title}` }
}

function longestOf(zone: SectionZone): Stretch | undefined {
  return [...zone.spans].sort((a, b) => b.toM - b.fromM - (a.toM - a.fromM))[0]
}
