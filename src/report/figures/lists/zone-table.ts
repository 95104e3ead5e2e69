import { windName } from '#core/units'
import { degrees, hours, metres, squareMetres } from '../../drawing/measures'
import { coverWords, verdictWords } from '../../figures/section/verdict-words'
import { amountWords } from '../../figures/strips/planting-lines'
import type { StripView, StripZone } from '../../figures/strips/strip-view.types'
import type { TableTwin } from '../../figures/strips/table-twin.types'
import { grouped } from '../../words/figures-in-words'

const columns: readonly (readonly [string, (zone: StripZone) => string])[] = [
  ['Zone', ({ letter, name }) => `${letter} ${name}`],
  [
    'From the top edge',
    ({ spans }) =>
      spans.map(({ fromM, toM }) => `${metres(fromM)} to ${metres(toM)}`).join(', ') || 'beside the section',
  ],
  ['Gradient, mean and steep', (zone) => `${degrees(zone.slopeDegMean)}, ${degrees(zone.slopeDegSteep)}`],
  ['Faces', ({ aspectDeg }) => (aspectDeg === undefined ? 'level' : windName(aspectDeg))],
  ['Plan area', ({ planAreaM2 }) => squareMetres(planAreaM2)],
  ['Slope area', ({ slopeAreaM2 }) => squareMetres(slopeAreaM2)],
  [
    'Soil',
    ({ soil }) => `${soil.texture}, ${soil.depthM.toFixed(2)} m, holds ${Math.round(soil.availableMm)} mm`,
  ],
  ['Wetness', ({ scores }) => `${scores.wetness.value} ${scores.wetness.class}`],
  ['Wet and dry days', (zone) => `${grouped(total(zone.wetDays))} wet, ${grouped(total(zone.dryDays))} dry`],
  ['Sun', ({ scores }) => `${scores.sun.value} ${scores.sun.class}`],
  ['Erosion', ({ scores }) => `${scores.erosion.value} ${scores.erosion.class}`],
  ['Frost', ({ scores }) => `${scores.frost.value} ${scores.frost.class}`],
  ['Difficulty of working', ({ scores }) => `${scores.working.value} ${scores.working.class}`],
  ['Mowing', ({ mowing }) => verdictWords[mowing]],
  ['Cover', ({ chosen, chosenByPerson }) => `${coverWords[chosen]}${chosenByPerson ? ', yours' : ''}`],
  [
    'Planting',
    ({ planting }) => (planting.length > 0 ? `${amountWords(planting)} of ${planting.length} kinds` : 'none'),
  ],
  ['Care', ({ care }) => `${hours(care.hours)} a year`],
]

/** Every zone with all its facts: the twin of the whole sheet. */
export function zoneTable({ zones }: StripView): TableTwin {
  return {
    caption: 'Every zone in figures',
    columns: columns.map(([head]) => head),
    rows: zones.map((zone) => columns.map(([, cell]) => cell(zone))),
    note: 'Scores run from 0 to 100. Areas for ordering plants and seed are those on the slope.',
  }
}

function total(days: readonly number[]): number {
  return Math.round(days.reduce((sum, day) => sum + day, 0))
}
