import { windName } from '#core/units'
import { degrees, metres } from '../../drawing/measures'
import { COMPACT_PX, type SectionScale } from '../../drawing/scale'
import { waterThreads } from '../../drawing/threads'
import type { Question, SectionView } from '../../section-view.types'
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
function scaleWords(view: SectionView, scale: SectionScale): string {
  const heights =
    scale.exaggeration === 1
      ? 'heights true to lengths'
      : `heights drawn ${scale.exaggeration} times too tall`
  return `Section A to A′, ${metres(view.fallM)} down in ${metres(view.lengthM)}, ${heights}`
}

/** The line under the drawing: the scale, and what its marks stand for. */
export function captionWords(view: SectionView, scale: SectionScale, question: Question): string {
  const compact = scale.widthPx < COMPACT_PX
  const words = compact ? shortScaleWords(scale) : scaleWords(view, scale)
  if (question === 'water') return `${words}. ${threadWords(view, scale)}`
  if (question === 'sun' && !compact)
    return `${words}. Ticks under the turf: in shade at noon, midsummer above midwinter`
  return words
}

function shortScaleWords(scale: SectionScale): string {
  return scale.exaggeration === 1 ? 'True to scale' : `Heights × ${scale.exaggeration}`
}

function threadWords(view: SectionView, { axis }: SectionScale): string {
  const counted = waterThreads(view.zones, axis.endPx - axis.startPx)
  return counted ? `Each line is ${counted.volumeM3} m³ a year` : 'No water balance yet'
}
