import type { PlaceSunBody, SunBodies } from '#io'
import { windName } from '#core/units'
import { dayWords, timeWords, withUnit } from '#report'
import type { Plan } from '#plan'
import { accountTable } from './sun-zones-text'
import { darkWords, steeringMonths } from './sun-words'
import { columns, heading, plain, wrapped } from './text-layout'

/** Sun and sky from one place. */
export function placeSunLines(place: PlaceSunBody, plan: Plan, { zones }: SunBodies): readonly string[] {
  const zone = zones.find(({ zoneId }) => zoneId === place.zoneId)
  return [
    ...heading(`Sun at east ${place.at.eastM} m, north ${place.at.northM} m`),
    ...wrapped(groundWords(place)),
    '',
    ...columns(
      ['Clear day of', 'Date', 'Sun, h', 'When, by the sun', ...clockHead(plan)],
      dayRows(place, plan),
    ),
    ...wrapped(
      plan.site.timeZone === undefined
        ? 'By the sun, 12:00 is when it is highest. Give the plan a time zone to have the times by the clock as well.'
        : `By the sun, 12:00 is when it is highest. The clock is that of ${plan.site.timeZone}, daylight time counted in.`,
    ),
    ...wrapped(darkWords(place.dark, 'The place')),
    ...(zone
      ? [
          ...heading(`Hours that are taken from zone ${zone.letter}, ${zone.name}`),
          ...accountTable(zone.sun, steeringMonths(plan.site.latitudeDeg)),
        ]
      : []),
    ...heading('The skyline, in degrees above the horizontal'),
    ...skylineTable(place),
    ...(place.skyline.some(({ things }) => things.length > 0)
      ? wrapped('A thing covers from the lower to the higher angle; light passes below a crown.')
      : []),
  ]
}

function groundWords({ levelM, slopeDeg, facesDeg, letter, className }: PlaceSunBody): string {
  const faces = facesDeg === null ? 'level' : `${withUnit(slopeDeg, '°', 0)} facing ${windName(facesDeg)}`
  const zone = letter === null ? 'in no zone' : `in zone ${letter}${className ? `, ${className}` : ''}`
  return `Level ${withUnit(levelM, 'm', 2)}, ${faces}, ${zone}.`
}

const clockHead = ({ site }: Plan): string[] => (site.timeZone === undefined ? [] : ['By the clock'])

function dayRows({ days }: PlaceSunBody, { site }: Plan) {
  return days.flatMap(({ name, dayOfYear, sunHours, spells }) => {
    const rows = spells.map(({ fromH, toH, through, fromClock, toClock }) => [
      `${timeWords(fromH)} to ${timeWords(toH)}${throughWords(through)}`,
      ...(site.timeZone === undefined ? [] : [`${fromClock ?? ''} to ${toClock ?? ''}`]),
    ])
    const [first = ['no direct sun'], ...others] = rows
    const called = name === 'asked' ? 'the date asked' : name
    return [
      [called, dayWords(dayOfYear), sunHours.toFixed(1), ...first],
      ...others.map((row) => ['', '', '', ...row]),
    ]
  })
}

/** Light of which less than this is lost counts as whole [1]. */
const WHOLE = 0.995

const throughWords = (through: number): string =>
  through >= WHOLE ? '' : `, ${withUnit(through * 100, '%', 0)} of it`

function skylineTable({ skyline }: PlaceSunBody): readonly string[] {
  const far = skyline.some(({ farDeg }) => farDeg > 0)
  return columns(
    ['Towards', '°', 'Ground', ...(far ? ['Far hills'] : []), 'What stands there'],
    skyline.map(({ azimuthDeg, groundDeg, farDeg, things }) => [
      windName(azimuthDeg),
      azimuthDeg,
      groundDeg.toFixed(1),
      ...(far ? [farDeg.toFixed(1)] : []),
      things
        .map(({ name, fromDeg, toDeg }) => `${name} ${fromDeg.toFixed(0)} to ${toDeg.toFixed(0)}`)
        .join('; '),
    ]),
  ).map(plain)
}
