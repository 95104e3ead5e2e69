import { unitLengthM, unitNames } from './length-unit'
import { lostDecimals } from './lost-decimals'
import { rangeOf } from './spread'
import type { Doubt, LengthUnit, SurveyPart, SurveyRead } from './survey-read.types'

/** Highest and lowest dry ground on Earth, rounded outwards [m]: Everest 8849, shore of the Dead Sea -440. */
const HIGHEST_GROUND_M = 9000
const LOWEST_GROUND_M = -500
/** A gap below the other levels, as a share of their own fall, from which on a zero stands apart. */
const APART = 0.2
/** Points named in one sentence at most. */
const NAMED = 5

/**
 * What looks wrong in the levels of a part.
 *
 * @param part - in the file's own unit
 * @param read - the file it comes from
 * @returns doubts: zeros among other levels, lost decimal points, levels all alike, levels no ground has
 */
export function levelDoubts(part: SurveyPart, read: SurveyRead): Doubt[] {
  const levels = levelsOf(part)
  if (levels.length < 3) return []
  return [
    ...(asksOfZerosItself.includes(read.format) ? [] : zeroDoubts(levels, part)),
    ...decimalDoubts(levels, part),
    ...flatDoubts(levels, part),
    ...heightDoubts(levels, part, read.levelUnit ?? read.unit),
  ]
}

/** Formats whose readers know better which zeros are no ground. */
const asksOfZerosItself: readonly SurveyRead['format'][] = ['landxml', 'dxf']

/**
 * All levels of a part.
 *
 * @param part - points or a grid
 * @returns levels in the file's own unit, without places that have none
 */
export function levelsOf({ points, grid }: SurveyPart): number[] {
  return grid ? grid.levelsM.filter((level) => level !== null) : points.map(({ levelM }) => levelM)
}

function zeroDoubts(levels: readonly number[], part: SurveyPart): Doubt[] {
  const others = levels.filter((level) => level !== 0)
  const zeros = levels.length - others.length
  if (zeros === 0 || others.length === 0) return []
  const { lowest, highest } = rangeOf(others)
  const gap = lowest > 0 ? lowest : highest < 0 ? -highest : 0
  if (gap <= (highest - lowest) * APART) return []
  return [
    {
      about: 'levels',
      where: part.name,
      what: `${zeros} of ${levels.length} levels are exactly 0; the others run from ${lowest} to ${highest}. A zero often means that nobody measured a level there.`,
      mend: 'Say whether these are ground. If not, leave them out.',
    },
  ]
}

function decimalDoubts(levels: readonly number[], part: SurveyPart): Doubt[] {
  const lost = lostDecimals(levels)
  if (lost.length === 0) return []
  const named = lost
    .slice(0, NAMED)
    .map(({ at, rather }) => `${nameOf(part, at)} ${levels[at] ?? ''} (rather ${rather}?)`)
  return [
    {
      about: 'decimals',
      where: part.name,
      what: `Levels that may have lost their decimal point: ${named.join(', ')}${lost.length > NAMED ? ` and ${lost.length - NAMED} more` : ''}.`,
      mend: 'Compare them with the field book and correct them in the file.',
    },
  ]
}

const nameOf = ({ points, grid }: SurveyPart, at: number): string =>
  grid ? 'cell' : `point ${points[at]?.mark ?? at + 1}`

function flatDoubts(levels: readonly number[], part: SurveyPart): Doubt[] {
  const { lowest, highest } = rangeOf(levels)
  if (lowest !== highest) return []
  return [
    {
      about: 'levels',
      where: part.name,
      what: `Every level is ${lowest}.`,
      mend: 'Check that the right column, layer or band holds the levels.',
    },
  ]
}

function heightDoubts(levels: readonly number[], part: SurveyPart, unit: LengthUnit | undefined): Doubt[] {
  if (unit === undefined) return []
  const { lowest, highest } = rangeOf(levels)
  const length = unitLengthM[unit]
  if (highest * length <= HIGHEST_GROUND_M && lowest * length >= LOWEST_GROUND_M) return []
  return [
    {
      about: 'unit',
      where: part.name,
      what: `In ${unitNames[unit]}, the levels run from ${Math.round(lowest * length)} m to ${Math.round(highest * length)} m, where there is no ground on Earth.`,
      mend: 'Say which unit the levels are in, or mark false levels as no data.',
    },
  ]
}
