import { describe, expect, it } from 'vitest'
import { dayOnPlane } from '#core/shade'
import { cellPlanes, openSky } from '../../../src/core/shade/cell-planes'
import { collectDay } from '../../../src/core/shade/collect-day'
import { readTruth } from './read-truth'
import { rsunSteps } from './rsun-rule'
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

/** Every plane where r.sun is sound, with our day beside it: cut into our own steps, or at r.sun's moments. */
function compare(dayOfYear: string, stepHours: number, moments: 'ours' | 'theirs' = 'ours') {
  const { latitudeDeg, elevationM, linke, albedo } = planes
  const choice = { latitudeDeg, elevationM, linke, albedo, dayOfYear: Number(dayOfYear), stepHours }
  return planes.slopesDeg.flatMap((slopeDeg, row) =>
    planes.aspectsDeg.flatMap((aspectDeg, column) => {
      if (planes.invalid[row]![column]) return []
      const plane = { slopeDeg, aspectDeg }
      const day = moments === 'ours' ? dayOnPlane(plane, choice) : dayAtTheirMoments(plane, choice)
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

function dayAtTheirMoments(
  { slopeDeg, aspectDeg }: { slopeDeg: number; aspectDeg: number },
  choice: Parameters<typeof rsunSteps>[0],
) {
  const tilted = cellPlanes({ slopeDeg: Float64Array.of(slopeDeg), aspectDeg: Float64Array.of(aspectDeg) })
  const on = { planes: tilted, skyView: openSky(tilted), albedo: choice.albedo, litAt: undefined }
  return collectDay(rsunSteps(choice), on)
}

describe('GRASS r.sun on tilted planes (Hofierka & Suri 2002; clear sky of Rigollier et al. 2000, diffuse light of Muneer 1990), 52° north', () => {
  it.each(Object.keys(days))(
    'day %s, the sun at the same moments: beam, diffuse, reflected and global light of each plane, and the same hours',
    (day) => {
      const rows = compare(day, planes.stepHours, 'theirs')
      expect(rows.length).toBe(52)
      for (const { ours, theirs } of rows) {
        for (const quantity of ['beam', 'diffuse', 'reflected', 'global'] as const) {
          const off = Math.abs(ours[quantity] - theirs(quantity))
          expect(off).toBeLessThan(tolerances.planes.share * theirs(quantity) + tolerances.planes.whPerM2)
        }
        expect(Math.abs(ours.hours - theirs('hours'))).toBeLessThan(1e-4)
      }
    },
  )

  it.each(Object.keys(days))(
    'day %s, our own steps of the same length: global light of each plane, and hours of sun',
    (day) => {
      for (const { ours, theirs } of compare(day, planes.stepHours)) {
        expect(Math.abs(ours.global / theirs('global') - 1)).toBeLessThan(tolerances.planesOwnSteps)
        expect(Math.abs(ours.hours - theirs('hours'))).toBeLessThan(tolerances.planesHours)
      }
    },
  )

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
