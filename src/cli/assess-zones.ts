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
    ...scores,
    ...wrapped('Scores run from 0 to 100. The level book behind each stands in the report and in --json.'),
  ]
}
