import { levelDoubts } from './level-doubts'
import { placeDoubts } from './place-doubts'
import { systemDoubts } from './system-doubts'
import type { Doubt, SurveyRead } from './survey-read.types'

/**
 * What looks wrong in a survey whatever its format: told to the person, never put right by itself.
 *
 * @param read - what was understood
 * @returns doubts, each with how to answer it
 */
export function doubtsOf(read: SurveyRead): Doubt[] {
  const doubts = read.parts.flatMap((part) => [
    ...levelDoubts(part, read),
    ...placeDoubts(part, read),
    ...systemDoubts(part, read),
  ])
  // Parts of one file share their unit and their system: once is enough.
  return doubts.filter((doubt, at) => doubts.findIndex(({ what }) => what === doubt.what) === at)
}
