import { onScopeDispose } from 'vue'

/** How the day is played. */
export interface PlayedDay {
  /** First and last time [h]; none when the sun does not rise. */
  readonly spanH: () => { readonly fromH: number; readonly toH: number } | undefined
  readonly hour: () => number
  readonly turnTo: (hour: number) => void
  readonly isPlaying: () => boolean
  readonly setPlaying: (on: boolean) => void
  /** Each picture takes its time: fewer of them, half an hour apart. */
  readonly coarse: () => boolean
}

/** A day plays in [s]. */
const DAY_S = 8
/** Longest time between two pictures that counts [ms]: a page left alone goes on where it stopped. */
const LONGEST_MS = 100
/** Pictures of a large site: so far apart on the day [h] and on the clock [ms]. */
const COARSE = { stepH: 0.5, everyMs: 500 }

/** Plays through the day from where it stands, or from sunrise at its end; stops at sunset. */
export function useSunPlay(day: PlayedDay) {
  let frame: number | undefined
  let last = 0

  function play(): void {
    const span = day.spanH()
    if (!span) return
    if (day.hour() >= span.toH) day.turnTo(span.fromH)
    day.setPlaying(true)
    last = performance.now()
    frame = requestAnimationFrame(next)
  }

  function pause(): void {
    day.setPlaying(false)
    if (frame !== undefined) cancelAnimationFrame(frame)
    frame = undefined
  }

  function next(now: number): void {
    const span = day.spanH()
    if (!span || !day.isPlaying()) return pause()
    const passedMs = now - last
    const stepH = day.coarse()
      ? Math.floor(passedMs / COARSE.everyMs) * COARSE.stepH
      : ((span.toH - span.fromH) * Math.min(passedMs, LONGEST_MS)) / (DAY_S * 1000)
    if (stepH > 0) {
      last = now
      day.turnTo(Math.min(span.toH, day.hour() + stepH))
    }
    if (day.hour() >= span.toH) return pause()
    frame = requestAnimationFrame(next)
  }

  onScopeDispose(pause)
  return { play, pause }
}
