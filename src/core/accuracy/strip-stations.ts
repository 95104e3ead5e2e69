import type { BankSurvey, ProfileSurvey } from '#core/survey'

/** Ground measured down one line. */
export type StripSurvey = BankSurvey | ProfileSurvey

/** Stations down the slope with their plan distances, and whether the tape lay on the ground. */
export interface Strip {
  readonly stations: readonly { readonly planM: number; readonly levelM: number }[]
  readonly taped: boolean
}

/**
 * The stations of a bank or a profile, from the top edge down.
 *
 * @param ground - a survey that a surface could be made of
 * @returns plan distances and levels [m]
 * @throws RangeError when two stations stand upright over each other
 */
export function stripStations(ground: StripSurvey): Strip {
  if (ground.kind === 'bank') {
    const planM = Math.sqrt(ground.lengthM ** 2 - ground.riseM ** 2)
    if (!(planM > 0)) throw upright(planM)
    const stations = [
      { planM: 0, levelM: ground.riseM },
      { planM, levelM: 0 },
    ]
    return { stations, taped: true }
  }
  const taped = ground.distancesAre === 'slope'
  const rows = [...ground.stations].sort((one, other) => one.distanceM - other.distanceM)
  let planM = 0
  const stations = rows.map(({ distanceM, levelM }, at) => {
    const before = rows[at - 1]
    if (before) {
      const alongM = distanceM - before.distanceM
      const stepM = taped ? Math.sqrt(alongM ** 2 - (levelM - before.levelM) ** 2) : alongM
      if (!(stepM > 0)) throw upright(stepM)
      planM += stepM
    }
    return { planM, levelM }
  })
  return { stations, taped }
}

function upright(stepM: number): RangeError {
  return new RangeError(`stripStations: plan distance between stations must be above 0, got ${stepM}`)
}
