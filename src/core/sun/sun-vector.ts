import { toDegrees, toRadians } from '#core/units'

/** A direction of length 1 in the plot's frame. */
export interface Direction {
  readonly east: number
  readonly north: number
  readonly up: number
}

/**
 * Direction of the sun from its bearing and height.
 *
 * @param azimuthDeg - direction of the sun, clockwise from true north [°]
 * @param altitudeDeg - height above the level horizon [°], -90 to 90
 * @returns the direction, length 1
 */
export function directionTo(azimuthDeg: number, altitudeDeg: number): Direction {
  const azimuth = toRadians(azimuthDeg)
  const altitude = toRadians(altitudeDeg)
  const level = Math.cos(altitude)
  return { east: level * Math.sin(azimuth), north: level * Math.cos(azimuth), up: Math.sin(altitude) }
}

/**
 * Direction of the sun at an hour angle.
 *
 * @param latitudeRad - latitude [rad], north positive
 * @param declinationRad - declination of the sun [rad]
 * @param hourAngleRad - hour angle from noon [rad], afternoon positive
 * @returns the direction, length 1
 */
export function sunAtHourAngle(latitudeRad: number, declinationRad: number, hourAngleRad: number): Direction {
  const outward = Math.cos(declinationRad) * Math.cos(hourAngleRad)
  const poleward = Math.sin(declinationRad)
  return {
    east: -Math.cos(declinationRad) * Math.sin(hourAngleRad),
    north: poleward * Math.cos(latitudeRad) - outward * Math.sin(latitudeRad),
    up: poleward * Math.sin(latitudeRad) + outward * Math.cos(latitudeRad),
  }
}

/**
 * Direction square to a tilted surface.
 *
 * @param slopeDeg - steepness [°], 0 to 90
 * @param aspectDeg - direction faced, clockwise from true north [°]; any on level ground
 * @returns the direction away from the surface, length 1
 */
export function squareTo(slopeDeg: number, aspectDeg: number): Direction {
  return directionTo(aspectDeg, 90 - slopeDeg)
}

/**
 * Angle between the sun and the line square to a surface.
 *
 * @param surface - direction square to the surface
 * @param sun - direction of the sun
 * @returns angle of incidence [°], 0 (full on) to 180; above 90 the sun is behind the surface
 * @see Duffie & Beckman, Solar Engineering of Thermal Processes, eq. 1.6.2, in vector form
 */
export function incidenceDeg(surface: Direction, sun: Direction): number {
  const cosine = surface.east * sun.east + surface.north * sun.north + surface.up * sun.up
  return toDegrees(Math.acos(Math.min(1, Math.max(-1, cosine))))
}
