import { daysInMonth, months, type Month } from '#core/units'
import type { CourseUnit } from './water-course'
import type { RootZone } from './root-zone'
import type { WaterClimate, WaterMonth } from './water.types'
import { rainByDay } from './rain-days'
import { rootZoneDay, type DayIn, type DayOut } from './root-zone-day'

/** One unit as it runs through the years. */
export interface Running extends CourseUnit {
  readonly zone: RootZone
  /** Water above the wilting point now [mm]. */
  waterMm: number
  /** The latest year's months, as far as it has run. */
  months: WaterMonth[]
}

/** A day is wet when more than this stands above field capacity at its end [mm]: own judgement. */
const WET_MM = 1

type Tally = { -readonly [Key in keyof WaterMonth]: number }

/**
 * Runs every unit through one year, day by day, handing water on from each to those below it.
 *
 * @param course - the units, highest first; their water and months are replaced
 * @param climate - rain and reference evapotranspiration
 * @throws RangeError when an amount is negative
 */
export function runYear(course: readonly Running[], climate: WaterClimate): void {
  for (const running of course) running.months = []
  for (const month of months) runMonth(course, climate, month)
}

function runMonth(course: readonly Running[], climate: WaterClimate, month: Month): void {
  const tallies = course.map((running) => emptyTally(running, climate, month))
  const starts = course.map((running) => running.waterMm)
  const runOn = new Float64Array(course.length)
  const lateralIn = new Float64Array(course.length)
  for (const rainMm of rainByDay(climate.rainMm[month], daysInMonth[month])) {
    runOn.fill(0)
    lateralIn.fill(0)
    course.forEach((running, at) => {
      const day = { rainMm, runOnMm: runOn[at] ?? 0, lateralInMm: lateralIn[at] ?? 0 }
      const out = rootZoneDay(running.zone, running.waterMm, day, month)
      running.waterMm = out.waterMm
      const tally = tallies[at]
      if (tally) addDay(tally, day, out, running.zone)
      for (const { at: below, depthRatio } of running.receivers) {
        runOn[below] = (runOn[below] ?? 0) + out.runoffMm * depthRatio
        lateralIn[below] = (lateralIn[below] ?? 0) + out.lateralOutMm * depthRatio
      }
    })
  }
  course.forEach((running, at) => {
    const tally = tallies[at]
    if (tally) running.months.push(closeMonth(tally, running.waterMm, starts[at] ?? 0, daysInMonth[month]))
  })
}

function emptyTally(running: Running, climate: WaterClimate, month: Month): Tally {
  return {
    rainMm: 0,
    runOnMm: 0,
    lateralInMm: 0,
    referenceEtMm: climate.referenceEtMm[month],
    demandMm: running.zone.demandMmPerDay[month] * daysInMonth[month],
    actualEtMm: 0,
    runoffMm: 0,
    lateralOutMm: 0,
    drainageMm: 0,
    storedChangeMm: 0,
    availableMm: 0,
    fullness: 0,
    dryDays: 0,
    wetDays: 0,
    airlessDays: 0,
  }
}

function addDay(tally: Tally, day: DayIn, out: DayOut, zone: RootZone): void {
  tally.rainMm += day.rainMm
  tally.runOnMm += day.runOnMm
  tally.lateralInMm += day.lateralInMm
  tally.actualEtMm += out.actualEtMm
  tally.runoffMm += out.runoffMm
  tally.lateralOutMm += out.lateralOutMm
  tally.drainageMm += out.drainageMm
  // Mean of the day, between its wettest and its end.
  tally.fullness += (out.wettestMm + out.waterMm) / (2 * zone.holdsMm)
  if (out.dry) tally.dryDays += 1
  if (out.waterMm > zone.holdsMm + WET_MM) tally.wetDays += 1
  if (out.waterMm > zone.airlessMm) tally.airlessDays += 1
}

function closeMonth(tally: Tally, waterMm: number, startMm: number, days: number): WaterMonth {
  return {
    ...tally,
    storedChangeMm: waterMm - startMm,
    availableMm: waterMm,
    fullness: tally.fullness / days,
  }
}
