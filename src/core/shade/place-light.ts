import { daysInMonth, months, wholeCircleDeg, type Month } from '#core/units'
import { squareTo, type Direction } from '#core/sun'
import type { PlaceSky } from './shade.types'

/** Sees how much direct light reaches a place from the sun. */
export type PlaceLight = (sun: Direction, azimuthDeg: number, altitudeDeg: number) => number

/**
 * How much direct light reaches a place in a month, past its own plane, the ground, far hills and what stands there.
 * Between whole degrees of azimuth the skyline is straight; a thing ends halfway between a degree that has it and one
 * that has not.
 *
 * @param sky - the sky from the place
 * @param month - month, for the leaves
 * @returns gives the share of direct light for the sun's direction, azimuth [°] and true altitude [°]: 0 to 1
 */
export function placeLight(sky: PlaceSky, month: Month): PlaceLight {
  const plane = squareTo(sky.slopeDeg, sky.aspectDeg)
  return (sun, azimuthDeg, altitudeDeg) => {
    if (altitudeDeg <= 0 || plane.east * sun.east + plane.north * sun.north + plane.up * sun.up <= 0) return 0
    const azimuth = wholeCircleDeg(azimuthDeg)
    if (altitudeDeg < between(sky.groundDeg, azimuth) || altitudeDeg <= between(sky.farDeg, azimuth)) return 0
    let share = 1
    for (const thing of sky.things) {
      if (altitudeDeg > between(thing.highDeg, azimuth)) continue
      if (altitudeDeg >= between(thing.lowDeg, azimuth)) share *= thing.through[month]
    }
    return share
  }
}

/**
 * Month that a day is in.
 *
 * @param dayOfYear - day counted from 1 January without a leap day [d], 1 to 366
 * @returns the month; December after day 334
 */
export function monthOfDay(dayOfYear: number): Month {
  let last = 0
  for (const month of months) {
    last += daysInMonth[month]
    if (dayOfYear <= last) return month
  }
  return 11
}

// One of 360 angles read at any azimuth; NaN where neither the nearest whole degree nor both neighbours have one.
function between(anglesDeg: Float32Array, azimuthDeg: number): number {
  const before = Math.floor(azimuthDeg)
  const part = azimuthDeg - before
  const one = anglesDeg[before % anglesDeg.length]!
  const other = anglesDeg[(before + 1) % anglesDeg.length]!
  if (Number.isNaN(one) || Number.isNaN(other)) return part < 0.5 ? one : other
  return one + part * (other - one)
}
