import { describe, expect, it } from 'vitest'
import { skylinesAround, sunOnGround, usualDayOnGround, type DayOnGround } from '#core/shade'
import { representativeDays } from '#core/sun'
import type { Month } from '#core/units'
import { garden } from './garden'
import { yearSky } from './usual-place'
import { volcano } from './volcano'

const sky = yearSky(52, 3)
const hill = volcano()
const plot = garden()
const scenes = {
  hill,
  // Two cells at the border left out: nothing beyond shades them.
  garden: {
    ...plot,
    compared: [...plot.cells.slopeDeg.keys()].filter((cell) => {
      const [column, row] = [cell % 48, Math.floor(cell / 48)]
      return column > 1 && column < 46 && row > 1 && row < 38
    }),
  },
}
type Scene = keyof typeof scenes
type Reading = (cell: number) => number

/** Mean difference over the cells, and that of 19 cells in 20, in the unit read. */
function apart(scene: Scene, one: Reading, limit: Reading) {
  const { compared } = scenes[scene]
  const off = compared.map((cell) => Math.abs(one(cell) - limit(cell))).sort((a, b) => a - b)
  const mean = (list: readonly number[]) => list.reduce((sum, value) => sum + value, 0) / list.length
  return { mean: mean(off), most: off[Math.floor(off.length * 0.95)]!, whole: mean(compared.map(limit)) }
}

const global = (day: DayOnGround): Reading => {
  const { beamWhPerM2, diffuseWhPerM2, reflectedWhPerM2 } = day
  return (cell) => beamWhPerM2[cell]! + diffuseWhPerM2[cell]! + reflectedWhPerM2[cell]!
}
const hours =
  ({ sunHours }: DayOnGround): Reading =>
  (cell) =>
    sunHours[cell]!

describe('convergence: the time step', () => {
  const dayAt = (scene: Scene, month: Month, stepHours: number) => {
    const { shading, cells } = scenes[scene]
    const choice = { ...sky.site, linke: 3, dayOfYear: representativeDays[month], stepHours }
    return usualDayOnGround(shading, cells, choice, sky.usual[month])
  }

  it.each([
    ['hill', 11, 0.004, 0.017, 0.11],
    ['hill', 2, 0.002, 0.006, 0.14],
    ['hill', 5, 0.001, 0.003, 0.14],
    ['garden', 11, 0.013, 0.051, 0.09],
    ['garden', 2, 0.014, 0.041, 0.18],
    ['garden', 5, 0.009, 0.025, 0.17],
  ] as const)(
    'numerical limit (steps of 0.05 h), %s, month %s: half an hour is within %s of the mean radiation on average and %s on 19 cells in 20, and %s h of sun',
    (scene, month, meanShare, mostShare, meanHours) => {
      const limit = dayAt(scene, month, 0.05)
      const chosen = dayAt(scene, month, 0.5)
      const radiation = apart(scene, global(chosen), global(limit))
      expect(radiation.mean / radiation.whole).toBeLessThan(meanShare)
      expect(radiation.most / radiation.whole).toBeLessThan(mostShare)
      expect(apart(scene, hours(chosen), hours(limit)).mean).toBeLessThan(meanHours)
    },
  )

  it.each(['hill', 'garden'] as const)(
    'numerical limit, %s in March: each halving of the step takes a third of the error and more',
    (scene) => {
      const limit = dayAt(scene, 2, 0.05)
      const errors = [2, 1, 0.5, 0.25].map(
        (step) => apart(scene, global(dayAt(scene, 2, step)), global(limit)).mean,
      )
      errors.slice(1).forEach((error, at) => expect(error).toBeLessThan(0.67 * errors[at]!))
    },
  )
})

describe('convergence: directions of the skyline', () => {
  it.each([
    ['hill', 0.002, 0.003, 0.04],
    ['garden', 0.001, 0.002, 0.01],
  ] as const)(
    'numerical limit (192 directions), %s in December: 48 are within %s of the mean radiation on average and %s on 19 cells in 20, and %s h of sun',
    (scene, meanShare, mostShare, meanHours) => {
      const { shading, cells } = scenes[scene]
      const [few, chosen, limit] = [12, 48, 192].map((directions) =>
        sunOnGround(shading, cells, sky, skylinesAround(shading.ground, directions)),
      )
      const read = (sun: typeof few, of: 'usualWhPerM2' | 'sunHours') => (cell: number) => sun![of][11][cell]!
      const radiation = apart(scene, read(chosen, 'usualWhPerM2'), read(limit, 'usualWhPerM2'))
      expect(radiation.mean / radiation.whole).toBeLessThan(meanShare)
      expect(radiation.most / radiation.whole).toBeLessThan(mostShare)
      expect(apart(scene, read(chosen, 'sunHours'), read(limit, 'sunHours')).mean).toBeLessThan(meanHours)
      expect(apart(scene, read(few, 'usualWhPerM2'), read(limit, 'usualWhPerM2')).mean).toBeGreaterThan(
        2 * radiation.mean,
      )
    },
  )
})
