import { windName } from '#core/units'
import { withUnit } from '#report'
import type { Findings } from '#plan'
import { columns, wrapped } from './text-layout'

/** The zones with their measures, and their scores. */
export function zoneLines({ zoning, zones }: Findings): readonly string[] {
  const measures = columns(
    ['Zone', 'Name', 'Slope', 'Steep part', 'Faces', 'On plan', 'On slope', 'Soil'],
    zoning.zones.map((zone) => [
      zone.letter,
      zone.name,
      withUnit(zone.slopeDegMean, '°', 0),
      withUnit(zone.slopeDegSteep, '°', 0),
      zone.aspectDeg === undefined ? 'level' : windName(zone.aspectDeg),
      withUnit(zone.planAreaM2, 'm²', 0),
      withUnit(zone.slopeAreaM2, 'm²', 0),
      zones.find(({ zoneId }) => zoneId === zone.id)?.soil.textureClass ?? '',
    ]),
  )
  const known = columns(
    ['Zone', 'Slope as measured', 'Steep part as measured'],
    zones.map(({ zoneId, slopeError }) => {
      const zone = zoning.zones.find(({ id }) => id === zoneId)
      return [
        zone?.letter ?? '',
        giveOrTake(zone?.slopeDegMean ?? 0, slopeError.meanDeg),
        giveOrTake(zone?.slopeDegSteep ?? 0, slopeError.steepDeg),
      ]
    }),
  )
  const scores = columns(
    ['Zone', 'Wetness', 'Sun', 'Erosion', 'Frost', 'Working'],
    zones.map(({ zoneId, scores: { wetness, sun, erosion, frost, working } }) => [
      zoning.zones.find(({ id }) => id === zoneId)?.letter ?? '',
      ...[wetness, sun, erosion, frost, working].map(
        (score) => `${score.value} ${score.class}${score.override ? ` (yours; ours is ${score.ours})` : ''}`,
      ),
    ]),
  )
  return [
    ...measures,
    '',
    ...known,
    ...wrapped(
      'About two truths in three lie within what is given or taken, nineteen in twenty within twice as much.',
    ),
    '',
    ...scores,
    ...wrapped('Scores run from 0 to 100. The level book behind each stands in the report and in --json.'),
  ]
}

// Below a degree the error is shown finer, so that it never reads as none.
function giveOrTake(slopeDeg: number, sdDeg: number): string {
  const error = sdDeg < LEAST_DEG ? 'under 0.1' : sdDeg.toFixed(sdDeg < FINE_DEG ? 1 : 0)
  return `${withUnit(slopeDeg, '°', 0)}, give or take ${error}`
}

/** Errors below the first are shown with a decimal, below the second as under a tenth [°]. */
const FINE_DEG = 0.95
const LEAST_DEG = 0.05
