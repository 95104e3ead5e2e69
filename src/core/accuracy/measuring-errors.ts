import type { SurveyMethod } from '#core/booking'
import type { GroundSurvey } from '#core/survey'
import type { AssumedMethods } from './assumed.schema'

/** What the person said of how well it was measured. */
export interface SaidOfMeasuring {
  /** Key of data/survey/methods.json. */
  readonly methodId?: string | undefined
  /** Standard error of a level [m]. */
  readonly levelSdM?: number | undefined
  /** Standard error of a place, east and north alike [m]. */
  readonly planSdM?: number | undefined
}

/** Methods, and which is assumed for which ground. */
export interface MeasuringTables {
  readonly methods: readonly SurveyMethod[]
  readonly assumed: AssumedMethods
}

/** How well single points were measured. */
export interface MeasuringErrors {
  /** Standard error of one level [m]. */
  readonly levelSdM: number
  /** Growth of the error of a level with the distance from where the measuring began [m for each m]. */
  readonly levelSdPerM: number
  /** Standard error of an angle [°]; undefined where levels were measured, not angles. */
  readonly angleSdDeg: number | undefined
  /** True when each level was measured from the one before, so that errors gather along the way. */
  readonly chained: boolean
  /** Standard error of a place, east and north alike [m]. */
  readonly planSdM: number
  /** Key of the method; undefined when the person typed the errors. */
  readonly methodId: string | undefined
  /** True when the person did not say how it was measured. */
  readonly assumed: boolean
}

/**
 * How well the points of a survey were measured: as the person says, or as is usual for such ground. A typed level error
 * stands for the whole error of a level, so the method's growth and angle are then left out.
 *
 * @param ground - what was measured
 * @param said - the method or the errors the person named, if any
 * @param tables - methods, and which is assumed when none is named
 * @returns the errors of one point
 * @throws RangeError when a method is not in the table, or an error is not above 0
 */
export function measuringErrors(
  ground: GroundSurvey,
  said: SaidOfMeasuring | undefined,
  tables: MeasuringTables,
): MeasuringErrors {
  const named = said?.methodId
  const method = methodOf(named ?? assumedId(ground, tables), tables)
  const planSdM = aboveZero('planSdM', said?.planSdM ?? method.planSdM)
  if (said?.levelSdM !== undefined)
    return {
      levelSdM: aboveZero('levelSdM', said.levelSdM),
      levelSdPerM: 0,
      angleSdDeg: undefined,
      chained: false,
      planSdM,
      methodId: named,
      assumed: false,
    }
  return {
    levelSdM: method.levelSdM,
    levelSdPerM: method.levelSdPerM,
    angleSdDeg: method.angleSdDeg ?? undefined,
    chained: method.book !== null && method.book !== 'level-book',
    planSdM,
    methodId: method.id,
    assumed: named === undefined,
  }
}

function assumedId(ground: GroundSurvey, { assumed }: MeasuringTables): string {
  const taped = ground.kind === 'profile' && ground.distancesAre === 'slope'
  const kind = taped ? 'taped-profile' : ground.kind
  const row = assumed.find((one) => one.ground === kind)
  if (!row) throw new RangeError(`measuringErrors: data/survey/assumed.json must hold ${kind}, got none`)
  return row.methodId
}

function methodOf(id: string, { methods }: MeasuringTables): SurveyMethod {
  const method = methods.find((row) => row.id === id)
  if (!method)
    throw new RangeError(
      `measuringErrors: method must be one of ${methods.map((row) => row.id).join(', ')}, got ${id}`,
    )
  return method
}

function aboveZero(name: string, valueM: number): number {
  if (!(valueM > 0 && valueM < Infinity))
    throw new RangeError(`measuringErrors: ${name} must be above 0, got ${valueM}`)
  return valueM
}
