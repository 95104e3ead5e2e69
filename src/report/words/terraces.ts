import type { TerraceFigures } from '#core/cover'
import { withUnit } from './figures-in-words'

/** What one width of terrace would do to the ground, in a sentence; figures of the ground only, never a design. */
export function terraceWords({ treadM, stepM, stepSteepM, cutM3 }: TerraceFigures): string {
  const step = withUnit(stepM, 'm', 1)
  const steepest = withUnit(stepSteepM, 'm', 1)
  const steep = steepest === step ? '' : `, ${steepest} where it is steepest`
  return `Treads of ${withUnit(treadM, 'm', 1)}: steps ${step} high${steep}; ${withUnit(cutM3, 'm³')} to cut and lay.`
}
