import { toRadians, type Outcome, type Problem } from '#core/units'
import { triangulateStrip } from './profile-strip'
import type { PlanStation, SurveyedGround } from './surveyed-ground.types'
import type { BankSurvey, ProfileSurvey } from './survey.schema'

/**
 * The ground of a bank: a plane of the given rise and length.
 *
 * @param bank - the four numbers
 * @returns the ground, or what is wrong with the numbers
 */
export function bankGround(bank: BankSurvey): Outcome<SurveyedGround> {
  const planM = Math.sqrt(bank.lengthM ** 2 - bank.riseM ** 2)
  if (!(planM > 0))
    return {
      ok: false,
      problems: [
        {
          where: 'survey.ground.riseM',
          what: `A bank ${bank.lengthM} m long cannot rise ${bank.riseM} m.`,
          mend: 'Measure the length along the ground with the tape, not on plan.',
        },
      ],
    }
  const stations = [
    { planM: 0, levelM: bank.riseM },
    { planM, levelM: 0 },
  ]
  return { ok: true, value: groundAlong(stations, bank) }
}

/**
 * The ground of a profile: its levels carried sideways along the contour.
 *
 * @param profile - distances and levels down the slope
 * @returns the ground, or every problem with its stations
 */
export function profileGround(profile: ProfileSurvey): Outcome<SurveyedGround> {
  const rows = profile.stations
    .map((station, row) => ({ ...station, row }))
    .sort((one, other) => one.distanceM - other.distanceM)
  const problems: Problem[] = []
  const stations: PlanStation[] = []
  let planM = 0
  for (const [at, station] of rows.entries()) {
    const before = rows[at - 1]
    if (before) {
      const stepM = planStepM(before, station, profile.distancesAre)
      if (stepM === undefined) problems.push(stepProblem(before, station))
      else planM += stepM
    }
    stations.push({ planM, levelM: station.levelM })
  }
  const [first, last] = [rows[0], rows[rows.length - 1]]
  if (first && last && last.levelM > first.levelM) problems.push(upsideDown(first, last))
  if (rows.length < 2) problems.push(tooFew(rows.length))
  if (problems.length > 0) return { ok: false, problems }
  return { ok: true, value: groundAlong(stations, profile) }
}

interface Row {
  readonly distanceM: number
  readonly levelM: number
  readonly row: number
}

function planStepM(from: Row, to: Row, kind: ProfileSurvey['distancesAre']): number | undefined {
  const lengthM = to.distanceM - from.distanceM
  const squareM2 = kind === 'plan' ? lengthM ** 2 : lengthM ** 2 - (to.levelM - from.levelM) ** 2
  return squareM2 > 0 ? Math.sqrt(squareM2) : undefined
}

function stepProblem(from: Row, to: Row): Problem {
  const [one, other] = [Math.min(from.row, to.row), Math.max(from.row, to.row)]
  const gapM = (to.distanceM - from.distanceM).toFixed(2)
  const riseM = Math.abs(to.levelM - from.levelM).toFixed(2)
  return {
    where: `survey.ground.stations[${other}]`,
    what: `Stations ${one + 1} and ${other + 1} lie ${gapM} m apart but differ by ${riseM} m in level: that is upright or steeper.`,
    mend: 'Check both rows. A wall or step needs two stations a little apart, and is drawn as a wall.',
  }
}

function upsideDown(first: Row, last: Row): Problem {
  return {
    where: `survey.ground.stations[${last.row}]`,
    what: `The last station (${last.levelM} m) stands higher than the first (${first.levelM} m); distances count from the top edge down.`,
    mend: 'Count the distances from the other end, or check the two levels.',
  }
}

function tooFew(count: number): Problem {
  return {
    where: 'survey.ground.stations',
    what: `The profile has ${count} stations; it needs at least 2.`,
    mend: 'Add a level at the top edge and one at the foot.',
  }
}

/** Where and how wide a strip of ground lies. */
interface Lie {
  readonly facesDeg: number
  readonly widthM: number
}

// The strip lies around the origin: half its length above, half below, half its width to each side.
function groundAlong(stations: readonly PlanStation[], lie: Lie): SurveyedGround {
  const lengthM = stations[stations.length - 1]?.planM ?? 0
  const faces = toRadians(lie.facesDeg)
  const [downEast, downNorth] = [Math.sin(faces), Math.cos(faces)]
  const place = (planM: number, acrossM: number) => ({
    eastM: (planM - lengthM / 2) * downEast - acrossM * downNorth,
    northM: (planM - lengthM / 2) * downNorth + acrossM * downEast,
  })
  const half = lie.widthM / 2
  const levels = stations.map((station) => station.levelM)
  const outline = [place(0, half), place(0, -half), place(lengthM, -half), place(lengthM, half)]
  return {
    outline,
    hull: outline,
    gaps: [],
    spacingM: undefined,
    highestM: Math.max(...levels),
    lowestM: Math.min(...levels),
    tin: triangulateStrip(stations, half, place),
    levelAt: (point) => levelAtM(stations, point.eastM * downEast + point.northM * downNorth + lengthM / 2),
    walls: [],
    notes: [],
  }
}

// Straight between stations; beyond the ends the first and last pieces run on.
function levelAtM(stations: readonly PlanStation[], planM: number): number {
  let [low, high] = [0, stations.length - 1]
  while (high - low > 1) {
    const middle = (low + high) >> 1
    if ((stations[middle]?.planM ?? 0) <= planM) low = middle
    else high = middle
  }
  const [from, to] = [stations[low], stations[high]]
  if (!from || !to) throw new RangeError(`levelAtM: needs 2 stations, got ${stations.length}`)
  return from.levelM + ((planM - from.planM) / (to.planM - from.planM)) * (to.levelM - from.levelM)
}
