import { describe, expect, it } from 'vitest'
import type { DayOnGround } from '#core/shade'
import type { SunStep } from '#core/sun'
import { castShade } from '../../../src/core/shade/cast-shade'
import { cellPlanes, openSky } from '../../../src/core/shade/cell-planes'
import { collectDay } from '../../../src/core/shade/collect-day'
import { sweptGround } from '../../../src/core/shade/swept-ground'
import { readGrid } from '../../truth/read-grid'
import { exactLit } from './exact-shade'
import { rsunLit, rsunSteps } from './rsun-rule'
import { tolerances } from './tolerances'
import { volcano } from './volcano'

const { ground, cells, compared } = volcano()
const planes = cellPlanes(cells)
const swept = sweptGround(ground)
const days = [
  ['01-21', 21],
  ['03-21', 80],
  ['06-21', 172],
  ['09-21', 264],
  ['12-21', 355],
] as const

type LitAt = (step: SunStep) => Float32Array
type Reading = (cell: number) => number

/** A day at r.sun's own moments; r.sun gives each cell its own height, so two heights are reckoned and read between. */
function dayWith(dayOfYear: number, litAt: LitAt, stepHours = 0.1) {
  const lit = new Map<number, Float32Array>()
  const remembered = (step: SunStep) => {
    const known = lit.get(step.solarHour) ?? litAt(step)
    lit.set(step.solarHour, known)
    return known
  }
  const [lowM, highM] = [90, 200]
  const at = (elevationM: number) => {
    const steps = rsunSteps({ latitudeDeg: 52, linke: 3, albedo: 0.2, dayOfYear, elevationM, stepHours })
    return collectDay(steps, { planes, skyView: openSky(planes), albedo: 0.2, litAt: remembered })
  }
  const [low, high] = [at(lowM), at(highM)]
  const read = (name: keyof DayOnGround) => (cell: number) =>
    low[name][cell]! +
    ((high[name][cell]! - low[name][cell]!) * (ground.levelM[cell]! - lowM)) / (highM - lowM)
  const [beam, diffuse, reflected] = [read('beamWhPerM2'), read('diffuseWhPerM2'), read('reflectedWhPerM2')]
  const global: Reading = (cell) => beam(cell) + diffuse(cell) + reflected(cell)
  return { beam, diffuse, global, hours: read('sunHours') }
}

const mean = (of: Reading) => compared.reduce((sum, cell) => sum + of(cell), 0) / compared.length
const meanOff = (one: Reading, other: Reading) =>
  mean((cell) => Math.abs(one(cell) - other(cell))) / mean(other)
const shareWithin = (part: number, one: Reading, other: Reading) =>
  mean((cell) => (Math.abs(one(cell) - other(cell)) <= part * other(cell) ? 1 : 0))
const theirs = (name: string): Reading => {
  const { values } = readGrid(`volcano/rsun_${name}.asc`)
  return (cell) => values[cell]!
}

describe('GRASS r.sun on a real hill with cast shadows (Hofierka & Suri 2002): 5011 cells', () => {
  it.each(days)(
    '%s: at the same moments and with r.sun’s own rule of shadows beam, diffuse and global on every cell, and the same hours',
    (date, dayOfYear) => {
      expect(compared.length).toBe(5011)
      const ours = dayWith(dayOfYear, ({ sun }) => rsunLit(ground, sun, false).lit)
      for (const name of ['beam', 'diffuse', 'global'] as const) {
        const golden = theirs(`${date}_${name}`)
        for (const cell of compared) {
          const off = Math.abs(ours[name](cell) - golden(cell))
          expect(off).toBeLessThan(tolerances.rsunDay.share * golden(cell) + tolerances.rsunDay.whPerM2)
        }
      }
      const hours = theirs(`${date}_hours`)
      for (const cell of compared) expect(Math.abs(ours.hours(cell) - hours(cell))).toBeLessThan(1e-4)
    },
  )

  it('21 March: r.sun’s hours where border cells have no slope, by the fault told on docs/methods/sun.md: shadows end for the day once a ray has met the border', () => {
    const blind = new Uint8Array(ground.levelM.length)
    const ours = dayWith(80, ({ sun }) => {
      const { lit, metBorder } = rsunLit(ground, sun, true)
      metBorder.forEach((met, cell) => {
        if (blind[cell] === 1) lit[cell] = 1
        if (met === 1) blind[cell] = 1
      })
      return lit
    })
    const golden = theirs('03-21_hours_border_null')
    for (const cell of compared) expect(Math.abs(ours.hours(cell) - golden(cell))).toBeLessThan(1e-4)
    expect(meanOff(theirs('03-21_hours'), golden)).toBeGreaterThan(0.03)
  })

  it.each([
    ['01-21', 21, 0.0049, 0.857],
    ['03-21', 80, 0.0013, 0.972],
    ['06-21', 172, 0.0008, 0.984],
    ['09-21', 264, 0.0013, 0.974],
    ['12-21', 355, 0.0059, 0.82],
  ] as const)(
    '%s: with our own, finer rule of shadows: mean difference and share of cells within 1 %% of GRASS r.sun',
    (date, dayOfYear, mostOff, leastShare) => {
      const own = dayWith(dayOfYear, ({ sun }) => castShade(ground, sun, swept))
      const golden = theirs(`${date}_global`)
      expect(meanOff(own.global, golden)).toBeLessThan(mostOff)
      expect(shareWithin(0.01, own.global, golden)).toBeGreaterThan(leastShare)
    },
  )

  it.each([
    ['21 January', 21, 0.0007, 0.965],
    ['21 March', 80, 0.0003, 0.99],
    ['21 June', 172, 0.0001, 0.999],
    ['21 December', 355, 0.0011, 0.96],
  ] as const)(
    '%s (day %s): exact geometry, rays followed in steps of 1 m between cell centres: mean difference below %s, and four times nearer than r.sun’s rule',
    (_, dayOfYear, mostOff, leastShare) => {
      const own = dayWith(dayOfYear, ({ sun }) => castShade(ground, sun, swept), 0.5)
      const nearest = dayWith(dayOfYear, ({ sun }) => rsunLit(ground, sun, false).lit, 0.5)
      const { global } = dayWith(dayOfYear, ({ sun }) => exactLit(ground, sun), 0.5)
      expect(meanOff(own.global, global)).toBeLessThan(mostOff)
      expect(shareWithin(0.01, own.global, global)).toBeGreaterThan(leastShare)
      expect(meanOff(nearest.global, global)).toBeGreaterThan(4 * meanOff(own.global, global))
    },
  )
})
