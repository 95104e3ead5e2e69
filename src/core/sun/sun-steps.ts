import { toRadians } from '#core/units'
import { clearSky } from './clear-sky'
import { daySun, sunsetHourAngleRad } from './day-sun'
import type { SunDay } from './sun.types'
import { sunAtHourAngle, type Direction } from './sun-vector'

/** The sun for one short time of a clear day. */
export interface SunStep {
  readonly sun: Direction
  readonly altitudeRad: number
  /** Time by the sun at the middle of the step [h], 12 when it is highest. */
  readonly solarHour: number
  /** Length of the step [h]. */
  readonly hours: number
  /** Beam square to the sun [W/m²]. */
  readonly beamWPerM2: number
  /** Diffuse light on open level ground [W/m²]. */
  readonly diffuseWPerM2: number
  /** Beam over radiation above the air: how clear it is [1]. */
  readonly beamShare: number
}

/** Longest time step when none is asked for [h]; what it costs stands in the table of docs/methods/sun.md. */
const USUAL_STEP_HOURS = 0.5

/** Turn of the earth [rad/h]. */
const EARTH_TURN_RAD_PER_H = Math.PI / 12
/** Time by the sun when it is highest [h]. */
const NOON_H = 12

/**
 * Cuts a clear day from sunrise to sunset into equal steps and stands the sun at the middle of each.
 *
 * @param choice - place, air, day and longest step
 * @returns the steps in order of time; none in polar night
 */
export function sunSteps(choice: SunDay): readonly SunStep[] {
  const { declinationRad } = daySun(choice.dayOfYear)
  const sunset = sunsetHourAngleRad(toRadians(choice.latitudeDeg), declinationRad)
  const dayHours = (2 * sunset) / EARTH_TURN_RAD_PER_H
  const count = Math.ceil(dayHours / (choice.stepHours ?? USUAL_STEP_HOURS))
  const middles = Array.from(
    { length: count },
    (_, at) => NOON_H + (dayHours / 2) * ((2 * at + 1) / count - 1),
  )
  return stepsAt(middles, dayHours / count, choice)
}

/**
 * Stands the sun of a clear day at given times.
 *
 * @param solarHours - times by the sun at the middle of each step [h], 12 when it is highest, the sun above the horizon
 * @param hours - length of each step [h]
 * @param choice - place, air and day
 * @returns a step for each time
 */
export function stepsAt(solarHours: readonly number[], hours: number, choice: SunDay): readonly SunStep[] {
  const { declinationRad, aboveAirWPerM2 } = daySun(choice.dayOfYear)
  const latitudeRad = toRadians(choice.latitudeDeg)
  return solarHours.map((solarHour) => {
    const sun = sunAtHourAngle(latitudeRad, declinationRad, (solarHour - NOON_H) * EARTH_TURN_RAD_PER_H)
    const altitudeRad = Math.asin(sun.up)
    const sky = clearSky(aboveAirWPerM2, altitudeRad, choice.elevationM, choice.linke)
    return { sun, altitudeRad, solarHour, hours, ...sky, beamShare: sky.beamWPerM2 / aboveAirWPerM2 }
  })
}
