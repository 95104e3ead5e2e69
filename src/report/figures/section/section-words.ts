import { windName } from '#core/units'
import { accuracyBand } from '../../drawing/accuracy-band'
import { degrees, metres } from '../../drawing/measures'
import { COMPACT_PX, isLevel, type SectionScale } from '../../drawing/scale'
import type { DrawnSun } from '../../drawing/sun-places'
import { textWidthPx } from '../../drawing/text-width'
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
  const falls = isLevel(view)
    ? `The ground is level over ${metres(view.lengthM)}`
    : `The ground falls ${metres(view.fallM)} in ${metres(view.lengthM)} towards the ${windName(view.bearingDeg)}, ` +
      `steepest ${degrees(steepest.slopeDeg)} at ${metres(steepest.distanceM)}`
  const cuts = scale.axis.breaks.map(
    ({ fromM, toM }) =>
      ` ${metres(toM - fromM)} of even ground from ${metres(fromM)} on is left out of the drawing.`,
  )
  return (
    `${falls}. ${scaleWords(view, scale)}.${cuts.join('')} ` +
    `Zones from the top: ${zones}.${dangers.join('')}`
  )
}

/** The scale, always declared; level ground has none to declare. */
function scaleWords(view: SectionView, scale: SectionScale): string {
  if (isLevel(view)) return `Section A to A′, level over ${metres(view.lengthM)}: there is no slope to draw`
  const heights =
    scale.exaggeration === 1
      ? 'heights true to lengths'
      : `heights drawn ${scale.exaggeration} times too tall`
  return `Section A to A′, ${metres(view.fallM)} down in ${metres(view.lengthM)}, ${heights}`
}

/** What the caption speaks of. */
interface Captioned {
  readonly question: Question
  readonly suns: readonly DrawnSun[]
}

/** The line under the drawing: the scale, and what its marks stand for, as far as the line is long. */
export function captionWords(view: SectionView, scale: SectionScale, { question, suns }: Captioned): string {
  const compact = scale.widthPx < COMPACT_PX
  const told = marksTold(view, scale, { question, suns })
  const full = compact ? '' : fitting([scaleWords(view, scale), ...told], scale)
  return told.every((words) => full.includes(words))
    ? full || shortScaleWords(view, scale)
    : fitting([shortScaleWords(view, scale), ...told], scale)
}

function marksTold(view: SectionView, scale: SectionScale, { question, suns }: Captioned): string[] {
  if (question === 'water') return [threadWords(view, scale)]
  if (question === 'ground') return groundMarks(view, scale)
  return question === 'sun' ? [...untold(suns), ...SUN_MARKS] : []
}

/** What the survey's marks mean, and how well the line is known. */
function groundMarks(view: SectionView, scale: SectionScale): string[] {
  const band = accuracyBand(view, scale)
  const known = `Level good to ${centimetres(band.leastM, band.mostM)}${band.lines.length > 0 ? ' (dotted)' : ''}`
  return view.measured.length > 0 ? [known, 'Red marks: levels measured here'] : [known]
}

function centimetres(leastM: number, mostM: number): string {
  const [least, most] = [leastM, mostM].map((errorM) =>
    Number((errorM * 100).toPrecision(errorM < 0.1 ? 1 : 2)),
  )
  return least === most ? `${most} cm` : `${least} to ${most} cm`
}

/** Suns with no place in the sky are told under it. */
function untold(suns: readonly DrawnSun[]): string[] {
  return suns
    .filter((sun) => !sun.disc)
    .map(({ words }) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`)
}

const SUN_MARKS = [
  'Sun in hours a day under a clear sky',
  'Ticks under the turf: in shade at noon, midsummer above midwinter',
] as const

/** Size of the caption, and room kept at both of its ends [px]. */
const CAPTION_PX = { type: 11, ends: 12 }

/** Sentences in their order, as many as the line has room for; the first always. */
function fitting(sentences: readonly string[], scale: SectionScale): string {
  const roomPx = scale.widthPx - scale.axis.startPx - CAPTION_PX.ends
  let line = sentences[0] ?? ''
  for (const sentence of sentences.slice(1)) {
    const longer = `${line}. ${sentence}`
    if (textWidthPx(longer, 'sans', CAPTION_PX.type) <= roomPx) line = longer
  }
  return line
}

function shortScaleWords(view: SectionView, scale: SectionScale): string {
  if (isLevel(view)) return 'Level: no slope'
  return scale.exaggeration === 1 ? 'True to scale' : `Heights × ${scale.exaggeration}`
}

function threadWords(view: SectionView, { axis }: SectionScale): string {
  const counted = waterThreads(view.zones, axis.endPx - axis.startPx)
  return counted ? `Each line is ${counted.volumeM3} m³ a year` : 'No water balance yet'
}
