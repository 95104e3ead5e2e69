import type { SunBodies } from '#io'
import { monthNames } from '#core/units'
import { grouped } from '#report'
import type { Plan } from '#plan'
import { seasonEnds } from './sun-words'
import { columns, heading, wrapped } from './text-layout'

/** Every trial beside the plan as it is; nothing where the plan has none. */
export function trialLines({ zones, trials }: SunBodies, plan: Plan): readonly string[] {
  const [midsummer, midwinter] = seasonEnds(plan.site.latitudeDeg)
  return trials.flatMap((trial) => [
    ...heading(`Trial: ${trial.name}`),
    ...trial.changes.flatMap((change) => wrapped(change, '* ')),
    ...columns(
      [
        'Zone',
        'Light now',
        'With it',
        ...[midsummer, midwinter].flatMap((month) => [`${monthNames[month]}, h`, 'With it', 'Change']),
      ],
      trial.zones.map(({ letter, zoneId, sun, gainHours }) => {
        const now = zones.find((zone) => zone.zoneId === zoneId)?.sun
        return [
          letter,
          now?.className ?? '',
          sun.className,
          ...[midsummer, midwinter].flatMap((month) => [
            now?.sunHours[month].toFixed(2) ?? '',
            sun.sunHours[month].toFixed(2),
            grouped(gainHours[month], 2),
          ]),
        ]
      }),
    ),
  ])
}
