import { cellCentre } from '#core/geometry'
import type { Surface } from '#core/survey'
import { toDegrees, toRadians } from '#core/units'
import type { CellErrors } from './cell-errors.types'
import { fitRoughness, type Residual } from './fit-roughness'
import { gradientSupportM } from './gradient-support'
import type { MeasuringErrors } from './measuring-errors'
import { unitVariance } from './power-variogram'
import { stripStations, type Strip, type StripSurvey } from './strip-stations'

/**
 * Errors of ground that was measured down one line. Across the line nothing was measured, so nothing is said of it.
 *
 * @param surface - the ground as cells
 * @param ground - the bank or the profile it was made of
 * @param errors - how well its stations were measured
 * @returns standard errors of level [m] and slope [°] in every cell
 */
export function stripErrors(surface: Surface, ground: StripSurvey, errors: MeasuringErrors): CellErrors {
  const strip = stripStations(ground)
  const legs = legsOf(strip, errors)
  // Stations set where the ground bends tell of its bends, not of how it lies between them.
  const roughness = evenlySet(legs) ? fitRoughness(residualsOf(legs)) : undefined
  const given: Line = {
    legs,
    roughness: roughness ?? 0,
    supportM: gradientSupportM(surface.frame.cellM),
    errors,
  }
  const levelSdM = new Float32Array(surface.share.length)
  const slopeSdDeg = new Float32Array(surface.share.length)
  const faces = toRadians(ground.facesDeg)
  const [downEast, downNorth] = [Math.sin(faces), Math.cos(faces)]
  const halfM = (legs.at(-1)?.endM ?? 0) / 2
  for (let cell = 0; cell < levelSdM.length; cell++) {
    if (!surface.share[cell]) continue
    const { eastM, northM } = cellCentre(surface.frame, cell)
    const atM = eastM * downEast + northM * downNorth + halfM
    const leg = legAt(legs, atM)
    levelSdM[cell] = levelErrorM(leg, atM, given)
    slopeSdDeg[cell] = slopeError(leg, atM, given)
  }
  return { levelSdM, slopeSdDeg, roughness }
}

/** The ground from one station to the next. */
interface Leg {
  readonly startM: number
  readonly endM: number
  /** Fall per metre, downhill negative [m/m]. */
  readonly gradient: number
  readonly startLevelM: number
  readonly endLevelM: number
  /** Variance of the level of a station, as seen at a fixed place [m²]; unused where levels were chained. */
  readonly stationM2: number
  /** Variance of the gradient, where each level was measured from the one before [m²/m²]. */
  readonly chained: number | undefined
  /** Variance of the level of its start, gathered over the legs before, where levels were chained [m²]. */
  readonly gatheredM2: number
}

interface Line {
  readonly legs: readonly Leg[]
  readonly roughness: number
  readonly supportM: number
  readonly errors: MeasuringErrors
}

function legsOf({ stations, taped }: Strip, errors: MeasuringErrors): readonly Leg[] {
  let gatheredM2 = 0
  return stations.slice(1).flatMap((end, at): Leg[] => {
    const start = stations[at]
    if (!start) return []
    const lengthM = end.planM - start.planM
    const gradient = (end.levelM - start.levelM) / lengthM
    const chained = chainedVariance(gradient, lengthM, errors)
    const leg = {
      startM: start.planM,
      endM: end.planM,
      gradient,
      startLevelM: start.levelM,
      endLevelM: end.levelM,
      stationM2: stationM2(gradient, taped, errors),
      chained,
      gatheredM2,
    }
    gatheredM2 += (chained ?? 0) * lengthM * lengthM
    return [leg]
  })
}

// Of a leg with its angle or its rise measured by itself; the error of its length only shifts it along the slope.
function chainedVariance(
  gradient: number,
  lengthM: number,
  { angleSdDeg, levelSdM, chained }: MeasuringErrors,
): number | undefined {
  if (angleSdDeg !== undefined) return (toRadians(angleSdDeg) * (1 + gradient * gradient)) ** 2
  return chained ? (levelSdM / lengthM) ** 2 : undefined
}

// A tape on the ground gets shorter in plan when the rise comes out too large, which tilts the leg further.
function stationM2(gradient: number, taped: boolean, { levelSdM, planSdM }: MeasuringErrors): number {
  const steeper = 1 + gradient * gradient
  return taped
    ? (steeper * levelSdM) ** 2 + steeper * (gradient * planSdM) ** 2
    : levelSdM ** 2 + (gradient * planSdM) ** 2
}

function legAt(legs: readonly Leg[], atM: number): Leg {
  let [low, high] = [0, legs.length - 1]
  while (low < high) {
    const middle = (low + high) >> 1
    if (legs[middle]!.endM < atM) low = middle + 1
    else high = middle
  }
  const leg = legs[low]
  if (!leg) throw new RangeError('stripErrors: the strip needs 2 stations or more, got fewer')
  return leg
}

function levelErrorM(leg: Leg, atM: number, { roughness, errors }: Line): number {
  const part = (atM - leg.startM) / (leg.endM - leg.startM)
  const measuredM2 =
    leg.chained === undefined
      ? leg.stationM2 * ((1 - part) ** 2 + part ** 2) + (errors.levelSdPerM * atM) ** 2
      : leg.gatheredM2 + leg.chained * (atM - leg.startM) ** 2
  const between = unitVariance([
    { xM: atM, yM: 0, weight: -1 },
    { xM: leg.startM, yM: 0, weight: 1 - part },
    { xM: leg.endM, yM: 0, weight: part },
  ])
  return Math.sqrt(measuredM2 + roughness * between)
}

function slopeError(leg: Leg, atM: number, { roughness, supportM, errors }: Line): number {
  const lengthM = leg.endM - leg.startM
  const measured = leg.chained ?? (2 * leg.stationM2) / lengthM ** 2 + errors.levelSdPerM ** 2
  const between = unitVariance([
    { xM: atM - supportM / 2, yM: 0, weight: -1 / supportM },
    { xM: atM + supportM / 2, yM: 0, weight: 1 / supportM },
    { xM: leg.startM, yM: 0, weight: 1 / lengthM },
    { xM: leg.endM, yM: 0, weight: -1 / lengthM },
  ])
  return toDegrees(Math.sqrt(measured + roughness * between) / (1 + leg.gradient ** 2))
}

/** Longest over shortest leg of stations that were paced off, not set where the ground bends [m/m]; own judgement. */
const EVEN_LEGS = 1.5

function evenlySet(legs: readonly Leg[]): boolean {
  const lengths = legs.map(({ startM, endM }) => endM - startM)
  return Math.max(...lengths) <= EVEN_LEGS * Math.min(...lengths)
}

// Each inner station left out and read from its two neighbours.
function residualsOf(legs: readonly Leg[]): readonly Residual[] {
  return legs.slice(1).flatMap((after, at): Residual[] => {
    const before = legs[at]
    if (!before) return []
    const [aM, bM] = [before.endM - before.startM, after.endM - after.startM]
    const far = aM / (aM + bM)
    const missM = before.endLevelM - ((1 - far) * before.startLevelM + far * after.endLevelM)
    const measuringM2 =
      before.chained === undefined || after.chained === undefined
        ? before.stationM2 * (1 + (1 - far) ** 2 + far ** 2)
        : before.chained * ((1 - far) * aM) ** 2 + after.chained * (far * bM) ** 2
    const unit = unitVariance([
      { xM: before.endM, yM: 0, weight: 1 },
      { xM: before.startM, yM: 0, weight: far - 1 },
      { xM: after.endM, yM: 0, weight: -far },
    ])
    return [{ squareM2: missM * missM, measuringM2, unit }]
  })
}
