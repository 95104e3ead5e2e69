import { withUnit } from '#report'
import type { Findings, Plan } from '#plan'
import { wrapped } from './text-layout'

/** The ground at large: its levels, hollows, the fall beside houses, water that leaves, and views. */
export function aroundLines(plan: Plan, { surface, around }: Findings): readonly string[] {
  return [
    `Highest level ${withUnit(surface.highestM, 'm', 2)}, lowest ${withUnit(surface.lowestM, 'm', 2)}: ${withUnit(surface.fallM, 'm', 2)} apart.`,
    ...hollowWords(around),
    ...around.houses.map(houseWords),
    ...around.leaving.map((one) => leavingWords(one, plan)),
    ...around.views.map(viewWords),
  ].flatMap((line) => wrapped(line, '* '))
}

const place = ({ eastM, northM }: { eastM: number; northM: number }): string =>
  `at east ${eastM.toFixed(1)} m, north ${northM.toFixed(1)} m`

/** Hollows told one by one, the deepest first; the rest are counted. */
const MOST_HOLLOWS = 5

function hollowWords({ hollows, leastHollowM }: Findings['around']): readonly string[] {
  const least = `shallower than ${withUnit(leastHollowM, 'm', 2)} is within the error of the survey`
  if (hollows.length === 0) return [`No hollow that holds water; what is ${least}.`]
  const told = hollows
    .slice(0, MOST_HOLLOWS)
    .map(
      ({ at, depthM, areaM2, volumeM3 }) =>
        `Hollow ${place(at)}: ${withUnit(depthM, 'm', 2)} deep, ${withUnit(areaM2, 'm²', 1)}, holds ${withUnit(volumeM3, 'm³', 2)} before it runs over.`,
    )
  const more = hollows.slice(MOST_HOLLOWS)
  if (more.length === 0) return told
  const heldM3 = more.reduce((sum, { volumeM3 }) => sum + volumeM3, 0)
  return [...told, `${more.length} more, not as deep, hold ${withUnit(heldM3, 'm³', 2)} together.`]
}

function houseWords({
  name,
  towardsGradient,
  towardsM,
  awayGradient,
  reachM,
  walls,
}: Findings['around']['houses'][number]): string {
  if (walls.length === 0) return `${name}: none of the plot lies within ${withUnit(reachM, 'm', 0)} of it.`
  const percent = (gradient: number) => withUnit(gradient * 100, '%', 1)
  return `${name}, within ${withUnit(reachM, 'm', 0)}: falls towards a wall by up to ${percent(towardsGradient)} (${withUnit(towardsM, 'm', 2)}), away from one by up to ${percent(awayGradient)}.`
}

function leavingWords({ at, share, beyondId }: Findings['around']['leaving'][number], plan: Plan): string {
  const beyond = plan.survey.beyond?.find(({ id }) => id === beyondId)
  return `Water of ${withUnit(share * 100, '%', 0)} of the plot leaves ${place(at)}${beyond ? ` to ${beyond.name}` : ''}.`
}

function viewWords({ name, seenShare, withoutHeight }: Findings['around']['views'][number]): string {
  const unknown =
    withoutHeight.length > 0 ? ` Without a height, so hiding nothing: ${withoutHeight.join(', ')}.` : ''
  return `${name} sees ${withUnit(seenShare * 100, '%', 0)} of the plot.${unknown}`
}
