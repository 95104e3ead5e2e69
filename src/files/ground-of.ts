import { groundSurveySchema, type GroundSurvey } from '#core/survey'
import type { Outcome, Problem } from '#core/units'
import { problemsOf } from '#plan'
import { gridGround } from './grid-ground'
import { levelsGround } from './levels-ground'
import { rangeOf } from './spread'
import type { SurveyGround, SurveyPart, SurveyRead, SurveyWish } from './survey-read.types'
import { refusal } from './refusal'

/**
 * The ground of a plan from a survey file, in metres and in the plot's own frame.
 *
 * @param read - the file as understood
 * @param wish - what the person confirmed
 * @returns ground, boundary and place, with what was done to them; or what cannot be kept
 */
export function groundOf(read: SurveyRead, wish: SurveyWish): Outcome<SurveyGround> {
  const parts = partsOf(read, wish)
  if (!parts.ok) return parts
  const [first] = parts.value
  const made = first?.grid ? gridGround(first, read, wish) : levelsGround(parts.value, read, wish)
  if (!made.ok) return made
  const valid = groundSurveySchema.safeParse(made.value.ground)
  if (!valid.success) return { ok: false, problems: mostOf(problemsOf(valid.error.issues, 'survey')) }
  return {
    ok: true,
    value: { ...made.value, notes: [...made.value.notes, ...heightNotes(made.value.ground)] },
  }
}

/** Problems told at once at most: a file that is wrong throughout needs no more. */
const MOST_TOLD = 20

const mostOf = (problems: readonly Problem[]): Problem[] => problems.slice(0, MOST_TOLD)

function partsOf({ parts }: SurveyRead, { partIds }: SurveyWish): Outcome<SurveyPart[]> {
  const asked = partIds.map((id) => parts.find((part) => part.id === id))
  const found = asked.filter((part) => part !== undefined)
  if (found.length < asked.length)
    return refusal(
      'parts',
      `The file has no part “${partIds[asked.indexOf(undefined)] ?? ''}”.`,
      `Its parts are: ${parts
        .slice(0, MOST_TOLD)
        .map(({ id }) => id)
        .join(', ')}.`,
    )
  if (found.length === 0) return refusal('parts', 'No part of the file was chosen.', 'Choose one.')
  if (found.length > 1 && found.some(({ kind }) => kind !== 'points'))
    return refusal(
      'parts',
      'A surface or a grid is the whole ground by itself.',
      'Choose one surface or grid alone, or several groups of points.',
    )
  return { ok: true, value: found }
}

/** Highest and lowest dry ground on Earth, rounded outwards [m]. */
const HIGHEST_GROUND_M = 9000
const LOWEST_GROUND_M = -500

function heightNotes(ground: GroundSurvey): string[] {
  const levels =
    ground.kind === 'grid'
      ? ground.levelsM.filter((level) => level !== null)
      : ground.kind === 'levels'
        ? ground.points.map(({ levelM }) => levelM)
        : []
  const { lowest, highest } = rangeOf(levels)
  return highest > HIGHEST_GROUND_M || lowest < LOWEST_GROUND_M
    ? [
        `Levels run from ${Math.round(lowest)} m to ${Math.round(highest)} m, where there is no ground on Earth: check their unit.`,
      ]
    : []
}
