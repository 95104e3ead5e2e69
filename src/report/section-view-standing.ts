import type { Screen, Standing } from '#core/shade'
import type { Section } from '#core/terrain'
import type { StandingRoof, StandingShape } from './section-view.types'

/** A ridge that runs within this of the section's direction is seen from its side [cosine]: 45°. */
const ALONG_COSINE = Math.SQRT1_2

/** Tops that differ by less are one level [m]. */
const LEVEL_M = 0.01

/**
 * A thing as it stands in the light, with heights as the section counts them.
 *
 * @param standing - the thing as the sun is reckoned with
 * @param section - the section
 * @param footLevelM - level of height 0 of the section [m]
 */
export function standingShape(standing: Standing, section: Section, footLevelM: number): StandingShape {
  const { screens, crowns, through } = standing
  const [crown] = crowns
  return {
    through,
    crown: crown && {
      lowM: crown.baseM - footLevelM,
      highM: crown.topM - footLevelM,
      wideM: crown.radiusM * 2,
    },
    roof: screens.length > 0 ? roofOf(screens, section, footLevelM) : undefined,
  }
}

function roofOf(screens: readonly Screen[], section: Section, footLevelM: number): StandingRoof {
  const tops = screens.flatMap(({ topFromM, topToM }) => [topFromM, topToM])
  const [eavesM, ridgeM] = [Math.min(...tops), Math.max(...tops)]
  const ridge = screens.find((one) => one.topFromM >= ridgeM - LEVEL_M && one.topToM >= ridgeM - LEVEL_M)
  const flat = ridgeM - eavesM < LEVEL_M
  return {
    eavesM: eavesM - footLevelM,
    ridgeM: ridgeM - footLevelM,
    form: flat || !ridge ? 'flat' : isAlong(ridge, section) ? 'along' : 'gable',
  }
}

function isAlong({ from, to }: Screen, section: Section): boolean {
  const [east, north] = [to.eastM - from.eastM, to.northM - from.northM]
  const [eastward, northward] = [
    section.to.eastM - section.from.eastM,
    section.to.northM - section.from.northM,
  ]
  const long = Math.hypot(east, north) * Math.hypot(eastward, northward)
  return long > 0 && Math.abs(east * eastward + north * northward) / long >= ALONG_COSINE
}
