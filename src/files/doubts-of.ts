import { levelDoubts } from './level-doubts'
import { placeDoubts } from './place-doubts'
import type { Doubt, SurveyRead } from './survey-read.types'

/**
 * What looks wrong in a survey whatever its format: told to the person, never put right by itself.
 *
 * @param read - what was understood
 * @returns doubts, each with how to answer it
 */
export function doubtsOf(read: SurveyRead): Doubt[] {
  return read.parts.flatMap((part) => [...levelDoubts(part, read), ...placeDoubts(part, read)])
}
