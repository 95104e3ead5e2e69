import { describe, expect, it } from 'vitest'
import { dayOnPlane } from '#core/shade'
import { readTruth } from './read-truth'
import { tolerances } from './tolerances'

type Quantity = 'beam' | 'diffuse' | 'reflected' | 'global' | 'hours'
const planes = readTruth<{
  latitudeDeg: number
  elevationM: number
  linke: number
  albedo: number
  stepHours: number
  slopesDeg: number[]
  aspectsDeg: number[]
  invalid: boolean[][]
  days: Record<string, Record<Quantity, number[][]>>
}>('sun-planes')
const { days } = planes

/** Every plane where r.sun is sound, with our day beside it. */
function compare(dayOfYear: string, stepHours: number) {
  return planes.slopesDeg.flatMap((slopeDeg, row) =>
    planes.aspectsDeg.flatMap((aspectDeg, column) => {
      if (planes.invalid[row]![column]) return []
      const { latitudeDeg, elevationM, linke, albedo } = planes
      const choice = { latitudeDeg, elevationM, linke, albedo, dayOfYear: Number(dayOfYear), stepHours }
      const day = dayOnPlane({ slopeDeg, aspectDeg }, choice)
      const [beam, diffuse, reflected] = [
        day.beamWhPerM2[0]!,
        day.diffuseWhPerM2[0]!,
        day.reflectedWhPerM2[0]!,
      ]
      const ours = { beam, diffuse, reflected, global: beam + diffuse + reflected, hours: day.sunHours[0]! }
      const theirs = (quantity: Quantity) => days[dayOfYear]![quantity][row]![column]!
      return [{ ours, theirs }]
    }),
  )
}

describe('dayOnPlane: GRASS r.sun on tilted planes (Hofierka & Suri 2002; clear sky of Rigollier et al. 2000, diffuse light of Muneer 1990), 52° north', () => {
  it.each(Object.keys(days))(
    'day %s: beam, diffuse and reflected light within the stated share of the brightest plane',
    (day) => {
      const rows = compare(day, planes.stepHours)
      expect(rows.length).toBe(52)
      for (const quantity of ['beam', 'diffuse', 'reflected'] as const) {
        const brightest = Math.max(...rows.map((row) => row.theirs(quantity)))
        for (const row of rows)
          expect(Math.abs(row.ours[quantity] - row.theirs(quantity)) / brightest).toBeLessThan(
            tolerances.planes[quantity],
          )
      }
    },
  )

  it.each(Object.keys(days))('day %s: each plane’s own global radiation and hours of sun', (day) => {
    for (const row of compare(day, planes.stepHours)) {
      expect(Math.abs(row.ours.global / row.theirs('global') - 1)).toBeLessThan(tolerances.planesGlobalOwn)
      expect(Math.abs(row.ours.hours - row.theirs('hours'))).toBeLessThan(tolerances.planesHours)
    }
  })

  it.each(Object.keys(days))(
    'day %s: with our half-hour steps the global radiation still agrees within 0.25 %% of the brightest plane',
    (day) => {
      const rows = compare(day, 0.5)
      const brightest = Math.max(...rows.map((row) => row.theirs('global')))
      for (const row of rows)
        expect(Math.abs(row.ours.global - row.theirs('global')) / brightest).toBeLessThan(0.0025)
    },
  )
})
