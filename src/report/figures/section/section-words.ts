import { windName } from '#core/units'
import { degrees, metres } from '../../drawing/measures'
import type { SectionScale } from '../../drawing/scale'
import { waterThreads } from '../../drawing/threads'
import type { SectionView } from '../../section-view.types'
import { coverWords, verdictWords } from './verdict-words'

/** The section in words, for those who do not see it. */
export function sectionWords(view: SectionView, scale: SectionScale): string {
  const { steepest } = view
  const zones = view.zones
    .map(
      (zone) =>
        `${zone.letter}, ${zone.name}, ${zone.spans.map((span) => `${metres(span.fromM)} to ${metres(span.toM)}`).join(' and ')}, ` +
        `${degrees(zone.slopeDegMean)}, ${coverWords[zone.cover].toLowerCase()}, ${verdictWords[zone.mowing].toLowerCase()}`,
    )
    .join('; ')
  const dangers = view.dangers.map(
    (danger) => ` Danger at ${metres(danger.fromM)}: ${danger.what}. ${danger.mend}`,
  )
  return (
    `The ground falls ${metres(view.fallM)} in ${metres(view.lengthM)} towards the ${windName(view.bearingDeg)}, ` +
    `steepest ${degrees(steepest.slopeDeg)} at ${metres(steepest.distanceM)}. ${scaleWords(view, scale)}. ` +
    `Zones from the top: ${zones}.${dangers.join('')}`
  )
}

/** The scale, always declared. */
export function scaleWords(view: SectionView, scale: SectionScale): string {
  const heights =
    scale.exaggeration === 1
      ? 'heights true to lengths'
      : `heights drawn ${scale.exaggeration} times too tall`
  return `Section A to A′, ${metres(view.fallM)} down in ${metres(view.lengthM)}, ${heights}`
}

/** What one thread of the water drawing stands for. */
export function threadWords(view: SectionView): string | undefined {
  const counted = waterThreads(view.zones)
  return counted && `Each line is ${counted.volumeM3} m³ a year`
}
