import type { Findings, Plan } from '#plan'
import { counted, grouped, withUnit } from './figures-in-words'

/** A fact of the ground with its name. */
export interface GroundFact {
  readonly name: string
  readonly says: string
}

/** Water that leaves by smaller shares than this is not told one by one [ratio]. */
const LEAST_SHARE = 0.05

/** Flatter than this the ground beside a wall counts as level: 1 in 200, what a garden level shows [m/m]. */
const LEVEL_GRADIENT = 0.005

/** Centimetres in a metre. */
const CM_PER_M = 100

/** What the survey tells of the ground besides its slopes: how good it is, hollows, houses, water that leaves, views. */
export function groundFacts(plan: Plan, findings: Findings): GroundFact[] {
  const { surface } = findings
  return [
    {
      name: 'Levels',
      says: `highest ${withUnit(surface.highestM, 'm', 2)}, lowest ${withUnit(surface.lowestM, 'm', 2)}: ${withUnit(surface.fallM, 'm', 2)} between them.`,
    },
    { name: 'How good', says: howGood(findings) },
    { name: 'Slopes', says: slopes(findings) },
    ...putRight(findings),
    { name: 'Hollows', says: hollows(findings) },
    ...houses(findings),
    ...leaving(plan, findings),
    ...views(findings),
  ]
}

function howGood({ accuracy, surface }: Findings): string {
  const levels = rangeOf(accuracy.levelSdM, surface.share)
  const slopeErrors = rangeOf(accuracy.slopeSdDeg, surface.share)
  const assumed = accuracy.from.assumed ? ' Nobody said how it was measured: the usual is assumed.' : ''
  return `levels to ${between(levels.least * CM_PER_M, levels.most * CM_PER_M, 'cm')}, slopes to ${between(slopeErrors.least, slopeErrors.most, '°')} (standard errors).${assumed}`
}

function rangeOf(values: Float32Array, share: Float64Array): { least: number; most: number } {
  let [least, most] = [Infinity, 0]
  for (let cell = 0; cell < values.length; cell++) {
    if (!share[cell]) continue
    least = Math.min(least, values[cell] ?? 0)
    most = Math.max(most, values[cell] ?? 0)
  }
  return { least: Math.min(least, most), most }
}

function between(least: number, most: number, unit: string): string {
  const [low, high] = [withUnit(least, unit), withUnit(most, unit)]
  return low === high ? high : `${grouped(least, Math.abs(least) < 9.95 ? 1 : 0)} to ${high}`
}

function slopes({ zoning, zones }: Findings): string {
  return zoning.zones
    .map((zone) => {
      const error = zones.find(({ zoneId }) => zoneId === zone.id)?.slopeError
      const slope = `${zone.letter} ${withUnit(zone.slopeDegMean, '°', 0)}`
      return error ? `${slope} ± ${atLeastTenth(error.meanDeg)}` : slope
    })
    .join(', ')
    .concat('.')
}

/** An error is never written as nothing. */
const atLeastTenth = (errorDeg: number): string => (errorDeg < 0.1 ? 'under 0.1°' : withUnit(errorDeg, '°'))

function putRight({ surface }: Findings): GroundFact[] {
  const [first] = surface.notes
  if (!first) return []
  const more = surface.notes.length - 1
  return [
    {
      name: 'Looked at',
      says:
        more > 0 ? `${first.what} And ${counted(more, 'more point', 'more points')} to look at.` : first.what,
    },
  ]
}

function hollows({ around }: Findings): string {
  const [deepest] = around.hollows
  if (!deepest) return `none deeper than ${withUnit(around.leastHollowM * CM_PER_M, 'cm')}.`
  const volumeM3 = around.hollows.reduce((sum, { volumeM3: one }) => sum + one, 0)
  return `${counted(around.hollows.length, 'hollow')}, up to ${withUnit(deepest.depthM * CM_PER_M, 'cm', 0)} deep; together they hold ${withUnit(volumeM3, 'm³')} before they run over.`
}

function houses({ around }: Findings): GroundFact[] {
  return around.houses
    .filter(({ walls }) => walls.length > 0)
    .map(({ name, towardsGradient, towardsM, awayGradient, reachM }) => ({
      name,
      says:
        towardsGradient > LEVEL_GRADIENT
          ? `the ground falls towards it, ${ratio(towardsGradient)}, and stands up to ${withUnit(towardsM * CM_PER_M, 'cm', 0)} above the wall’s foot within ${withUnit(reachM, 'm', 0)}.`
          : awayGradient > LEVEL_GRADIENT
            ? `the ground falls away from it, up to ${ratio(awayGradient)}, within ${withUnit(reachM, 'm', 0)}.`
            : `the ground beside it is level within ${withUnit(reachM, 'm', 0)}.`,
    }))
}

const ratio = (gradient: number): string => `1 in ${grouped(1 / gradient)}`

function leaving(plan: Plan, { around }: Findings): GroundFact[] {
  const told = around.leaving.filter(({ share }) => share >= LEAST_SHARE)
  if (told.length === 0) return []
  const words = told.map(({ share, areaM2, beyondId }) => {
    const beyond = plan.survey.beyond?.find(({ id }) => id === beyondId)
    const where = beyond ? `to ${beyond.name}` : 'where nothing is said of what lies beyond'
    return `${withUnit(share * CM_PER_M, '%', 0)} (the water of ${withUnit(areaM2, 'm²', 0)}) ${where}`
  })
  return [{ name: 'Water leaves', says: `${words.join('; ')}.` }]
}

function views({ around }: Findings): GroundFact[] {
  return around.views.map(({ name, seenShare }) => ({
    name: `From the ${name.toLowerCase()}`,
    says: `${withUnit(seenShare * CM_PER_M, '%', 0)} of the plot is seen.`,
  }))
}
