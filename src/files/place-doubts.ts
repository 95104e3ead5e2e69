import type { Doubt, SurveyPart, SurveyRead } from './survey-read.types'
import { levelsOf } from './level-doubts'
import { lostDecimals } from './lost-decimals'
import { rangeOf } from './spread'

/** Points named in one sentence at most. */
const NAMED = 5

/**
 * What looks wrong in the places of a part.
 *
 * @param part - in the file's own unit
 * @param read - the file it comes from
 * @returns doubts: points in one line, lost decimal points, places used twice, more fall than extent
 */
export function placeDoubts(part: SurveyPart, read: SurveyRead): Doubt[] {
  if (part.grid || part.points.length < 3) return []
  return [
    ...lineDoubts(part),
    ...decimalDoubts(part),
    ...doubleDoubts(part),
    ...(read.inDegrees ? [] : steepDoubts(part)),
  ]
}

const axes = [
  { name: 'east', of: (point: SurveyPart['points'][number]) => point.eastM },
  { name: 'north', of: (point: SurveyPart['points'][number]) => point.northM },
] as const

function lineDoubts(part: SurveyPart): Doubt[] {
  return axes.flatMap(({ name, of }) => {
    const { lowest, highest } = rangeOf(part.points.map(of))
    return lowest === highest
      ? [
          {
            about: 'columns' as const,
            where: part.name,
            what: `Every point has the same ${name}, ${lowest}.`,
            mend: 'Check which column holds what. Points in one line are a profile, not a surface.',
          },
        ]
      : []
  })
}

function decimalDoubts(part: SurveyPart): Doubt[] {
  return axes.flatMap(({ name, of }) => {
    const figures = part.points.map(of)
    const lost = lostDecimals(figures)
    if (lost.length === 0) return []
    const named = lost
      .slice(0, NAMED)
      .map(
        ({ at, rather }) =>
          `point ${part.points[at]?.mark ?? at + 1} ${figures[at] ?? ''} (rather ${rather}?)`,
      )
    return [
      {
        about: 'decimals' as const,
        where: part.name,
        what: `Of some points, ${name} may have lost its decimal point: ${named.join(', ')}${lost.length > NAMED ? ` and ${lost.length - NAMED} more` : ''}.`,
        mend: 'Compare them with the field book and correct them in the file.',
      },
    ]
  })
}

/** Two levels at one place, farther apart than any book would be out [share of the fall]. */
const SAME_LEVEL = 0.02

function doubleDoubts(part: SurveyPart): Doubt[] {
  const levels = rangeOf(levelsOf(part))
  const near = (levels.highest - levels.lowest) * SAME_LEVEL
  const seen = new Map<string, number>()
  const twice = part.points.filter(({ eastM, northM, levelM }) => {
    const place = `${eastM} ${northM}`
    const before = seen.get(place)
    seen.set(place, before ?? levelM)
    return before !== undefined && Math.abs(before - levelM) > near
  })
  if (twice.length === 0) return []
  const named = twice.slice(0, NAMED).map(({ mark, eastM, northM }) => mark ?? `${eastM}, ${northM}`)
  return [
    {
      about: 'places',
      where: part.name,
      what: `Points stand at one place with different levels: ${named.join('; ')}${twice.length > NAMED ? ` and ${twice.length - NAMED} more` : ''}.`,
      mend: 'Top and foot of a wall need two places a little apart, or a wall line. Otherwise keep the right one of each two.',
    },
  ]
}

function steepDoubts(part: SurveyPart): Doubt[] {
  const [east, north] = axes.map(({ of }) => rangeOf(part.points.map(of)))
  const levels = rangeOf(levelsOf(part))
  const across = Math.hypot(
    (east?.highest ?? 0) - (east?.lowest ?? 0),
    (north?.highest ?? 0) - (north?.lowest ?? 0),
  )
  const fall = levels.highest - levels.lowest
  if (fall <= across) return []
  return [
    {
      about: 'unit',
      where: part.name,
      what: `The levels differ by ${fall}, which is more than the survey is across (${Math.round(across * 100) / 100}).`,
      mend: 'Levels may be in another unit than east and north, or in another column. Say the unit of the levels, or which column holds what.',
    },
  ]
}
