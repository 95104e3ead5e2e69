import { coveredRise, directLight, farAngleDeg, horizonOf, type Standing } from '#core/shade'
import { cellCentre } from '#core/geometry'
import { daySun, squareTo, sunAtHourAngle, type Direction } from '#core/sun'
import { toDegrees, toRadians, type Month } from '#core/units'
import type { GroundRow, GroundScene, LayerOptions } from './layer.types'
import { dayAsked, monthOf } from './plot-light'

/** Turn of the earth [°/h]. */
const TURN_DEG_PER_H = 15
/** The hour by the sun at which it is highest [h]. */
const NOON_H = 12

/** Light at one moment of a day. */
export const lightRow: GroundRow = {
  name: 'light',
  unit: '0 to 1',
  decimals: 3,
  method:
    'Share of direct light that reaches the cell at one moment, past its own slope, ground, things and far hills: 0 in shadow or with the sun down. --time by the sun, or --clock where the plan has a time zone; midsummer unless --date says else.',
  source: 'own-judgement',
  takes: ['dayOfYear', 'solarHour'],
  needs: ['solarHour'],
  ofGround: lightAt,
}

/** The skyline in one direction. */
export const horizonRow: GroundRow = {
  name: 'horizon',
  unit: '°',
  decimals: 3,
  method:
    'Height of the skyline above horizontal towards --azimuth: ground of the plot alone, -90 with none that way; --with things adds far hills and what lets no light through in the month of --date, a crown by its top alone.',
  source: 'dozier-1981',
  takes: ['azimuthDeg', 'withThings', 'dayOfYear'],
  needs: ['azimuthDeg'],
  ofGround: skylineTowards,
}

// Where the sun stands at a time by the sun.
function sunAt(latitudeDeg: number, dayOfYear: number, solarHour: number): Direction {
  const hourAngleRad = toRadians((solarHour - NOON_H) * TURN_DEG_PER_H)
  return sunAtHourAngle(toRadians(latitudeDeg), daySun(dayOfYear).declinationRad, hourAngleRad)
}

function lightAt({ plan, light, facts }: GroundScene, options: LayerOptions): Float32Array {
  const { solarHour } = options
  if (solarHour === undefined) throw new RangeError('light: solarHour [h] must be given, got none')
  const dayOfYear = dayAsked(plan, options)
  const sun = sunAt(plan.site.latitudeDeg, dayOfYear, solarHour)
  const { slopeDeg, aspectDeg } = facts.steepness()
  return directLight(light.shading(), sun, monthOf(dayOfYear)).map((share, cell) => {
    const square = squareTo(slopeDeg[cell]!, aspectDeg[cell]!)
    return square.east * sun.east + square.north * sun.north + square.up * sun.up > 0 ? share : 0
  })
}

function skylineTowards(scene: GroundScene, options: LayerOptions): Float32Array {
  const { azimuthDeg, withThings } = options
  if (azimuthDeg === undefined) throw new RangeError('horizon: azimuthDeg [°] must be given, got none')
  const { frame, levelM, share } = scene.surface
  const ground = horizonOf(frame, levelM, share, azimuthDeg)
  if (!withThings) return ground
  raiseByThings(ground, scene, { azimuthDeg, month: monthOf(dayAsked(scene.plan, options)) })
  return ground
}

function raiseByThings(
  skylineDeg: Float32Array,
  { surface: { frame, levelM, share }, light }: GroundScene,
  { azimuthDeg, month }: { readonly azimuthDeg: number; readonly month: Month },
): void {
  const { standing, far } = light.shading()
  const farDeg = far.length > 0 ? farAngleDeg(far, azimuthDeg) : -Infinity
  const parts = standing.filter(({ through }) => through[month] === 0).flatMap(partsOf)
  const azimuthRad = toRadians(azimuthDeg)
  const rise = { low: 0, high: 0 }
  for (let cell = 0; cell < skylineDeg.length; cell += 1) {
    if (!(share[cell]! > 0)) continue
    let highest = Math.max(skylineDeg[cell]!, farDeg)
    const place = { ...cellCentre(frame, cell), levelM: levelM[cell]! }
    for (const part of parts)
      if (coveredRise(part, place, azimuthRad, rise))
        highest = Math.max(highest, toDegrees(Math.atan(rise.high)))
    skylineDeg[cell] = highest
  }
}

const partsOf = ({ screens, crowns }: Standing) => [...screens, ...crowns]
