import { trueBearing } from '#core/booking'
import type { Outcome } from '#core/units'
import { declinationAt } from '#io'
import type { Arguments } from './arguments'
import { UsageError } from './exit'
import type { MeasuredGround } from './ground-from-book'

/** Where the compass was read. */
interface Place {
  readonly latitudeDeg: number
  readonly longitudeDeg: number
  readonly elevationM: number
}

/** Turns the direction faced from magnetic to true north when --compass says so, and keeps what the compass showed. */
export function trueFaces(start: MeasuredGround, given: Arguments, place: Place): Outcome<MeasuredGround> {
  if (!given.flag('compass')) return { ok: true, value: start }
  const on = given.text('on')
  const { ground } = start
  if (on === undefined) throw new UsageError('--compass needs --on, the day it was read.')
  if (!('facesDeg' in ground)) throw new UsageError('--compass needs ground that has a direction faced.')
  const found = declinationAt(place.latitudeDeg, place.longitudeDeg, place.elevationM, on)
  if (!found.ok) return found
  const { declinationDeg, model } = found.value
  const magneticDeg = ground.facesDeg
  return {
    ok: true,
    value: {
      ground: { ...ground, facesDeg: trueBearing(magneticDeg, declinationDeg) },
      measured: { ...start.measured, compass: { magneticDeg, on, declinationDeg, model } },
    },
  }
}
