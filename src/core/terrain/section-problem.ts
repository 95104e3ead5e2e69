import type { Surface } from '#core/survey'
import type { Problem } from '#core/units'
import { clipped, type SectionLine } from './section'

/**
 * What is wrong with a section line drawn by the person.
 *
 * @param surface - the ground
 * @param line - the line as drawn [m]
 * @returns the problem; undefined when the line crosses the plot
 */
export function sectionProblem(surface: Surface, line: SectionLine): Problem | undefined {
  if (clipped(surface, line)) return undefined
  return {
    where: 'survey.sectionLine',
    what: 'The section line does not cross the plot.',
    mend: 'Draw it across the plot from top to foot, or leave it out: then it runs down the fall through the middle.',
  }
}
