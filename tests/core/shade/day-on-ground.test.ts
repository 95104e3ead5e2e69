import { describe, expect, it } from 'vitest'
import { dayOnGround, type DayOnGround } from '#core/shade'
import { toRadians } from '#core/units'
import { readGrid } from '../../truth/read-grid'
import { castShade } from '../../../src/core/shade/cast-shade'
import { daySun } from '../../../src/core/sun/day-sun'
import {
  directionTo,
  incidenceDeg,
  squareTo,
  sunAtHourAngle,
  type Direction,
} from '../../../src/core/sun/sun-vector'
import { rsunLit } from './rsun-rule'
import { tolerances } from './tolerances'
import { spearman, volcano } from './volcano'

const { ground, shading, cells, compared } = volcano()
const site = { latitudeDeg: 52, linke: 3, albedo: 0.2, stepHours: 0.1, skyline: false }

/** r.sun gives each cell its own height; our site has one, so two heights are reckoned and read between. */
function dayAtEachHeight(dayOfYear: number, castShadows: boolean) {
  const [lowM, highM] = [90, 200]
  const low = dayOnGround(shading, cells, { ...site, dayOfYear, castShadows, elevationM: lowM })
  const high = dayOnGround(shading, cells, { ...site, dayOfYear, castShadows, elevationM: highM })
  return (name: keyof DayOnGround, cell: number) =>
    low[name][cell]! +
    ((high[name][cell]! - low[name][cell]!) * (ground.levelM[cell]! - lowM)) / (highM - lowM)
}

const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length

describe('dayOnGround against GRASS r.sun (Hofierka & Suri 2002) on a real hill', () => {
  it('21 March without cast shadows: the beam on every cell', () => {
    const theirs = readGrid('volcano/rsun_03-21_beam_noshadow.asc').values
    const ours = dayAtEachHeight(80, false)
    expect(compared.length).toBe(5011)
    const worst = Math.max(...compared.map((cell) => Math.abs(ours('beamWhPerM2', cell) / theirs[cell]! - 1)))
    expect(worst).toBeLessThan(tolerances.groundBeam)
  })

  it.each([
    ['01-21', 21, 0.0057, 0.84],
    ['03-21', 80, 0.0016, 0.969],
    ['06-21', 172, 0.001, 0.982],
    ['09-21', 264, 0.0015, 0.974],
    ['12-21', 355, 0.0071, 0.79],
  ])(
    '%s with cast shadows, our own steps and rule of shadows: global radiation, mean difference and share of cells within 1 %%',
    (date, dayOfYear, mostOff, leastShare) => {
      const day = dayAtEachHeight(dayOfYear, true)
      const global = (cell: number) =>
        day('beamWhPerM2', cell) + day('diffuseWhPerM2', cell) + day('reflectedWhPerM2', cell)
      const theirs = readGrid(`volcano/rsun_${date}_global.asc`).values
      const off = compared.map((cell) => Math.abs(global(cell) - theirs[cell]!))
      expect(mean(off) / mean(compared.map((cell) => theirs[cell]!))).toBeLessThan(mostOff)
      const near = compared.filter((cell, at) => off[at]! <= 0.01 * theirs[cell]!)
      expect(near.length / compared.length).toBeGreaterThan(leastShare)
    },
  )
})

describe('shadows and incidence against GRASS r.sun at one moment', () => {
  const moment = (dayOfYear: number, hour: number) =>
    sunAtHourAngle(toRadians(52), daySun(dayOfYear).declinationRad, ((hour - 12) * Math.PI) / 12)
  const moments = [
    ['03-21_0900', 80, 9],
    ['06-21_1600', 172, 16],
    ['12-21_1200', 355, 12],
  ] as const

  const disagreeing = (name: string, sun: Direction, lit: Float32Array) => {
    const beam = readGrid(`volcano/rsun_${name}_beam_Wm2.asc`).values
    return compared.filter((cell) => {
      const facing = incidenceDeg(squareTo(cells.slopeDeg[cell]!, cells.aspectDeg[cell]!), sun) < 90
      return (lit[cell]! > 0.5 && facing) !== beam[cell]! > 0
    })
  }

  it.each(moments)(
    'GRASS r.sun %s: lit and shaded cells, every one of 5011 by r.sun’s own rule of shadows',
    (name, dayOfYear, hour) => {
      const sun = moment(dayOfYear, hour)
      expect(disagreeing(name, sun, rsunLit(ground, sun, true).lit)).toEqual([])
    },
  )

  it.each(moments)(
    'GRASS r.sun %s: lit and shaded cells by our rule, which reads between cells',
    (name, dayOfYear, hour) => {
      const sun = moment(dayOfYear, hour)
      const apart = disagreeing(name, sun, castShade(ground, sun)).length / compared.length
      expect(apart).toBeLessThan(tolerances.shadedCells)
    },
  )

  it('GRASS r.sun at noon on 21 December, when the sun stands on a grid line: every one of 5011 cells', () => {
    const sun = moment(355, 12)
    expect(disagreeing('12-21_1200', sun, castShade(ground, sun))).toEqual([])
  })

  it.each(moments)(
    'GRASS r.sun %s: height of the sun above each cell’s own plane',
    (name, dayOfYear, hour) => {
      const theirs = readGrid(`volcano/rsun_${name}_incidence_deg.asc`).values
      const sun = moment(dayOfYear, hour)
      for (const cell of compared.filter((one) => !Number.isNaN(theirs[one]!))) {
        const ours = 90 - incidenceDeg(squareTo(cells.slopeDeg[cell]!, cells.aspectDeg[cell]!), sun)
        expect(Math.abs(ours - theirs[cell]!)).toBeLessThan(0.01)
      }
    },
  )

  it('exact geometry: a wall of 3 m throws a shadow of 3 m over the tangent of the sun’s height', () => {
    const frame = { columns: 9, rows: 60, cellM: 0.5, westM: 0, southM: 0 }
    const share = new Float64Array(9 * 60).fill(1)
    const wall = share.map((_, cell) => (Math.floor(cell / 9) === 50 ? 3 : 0))
    const lit = castShade({ frame, levelM: wall, share }, directionTo(180, 20))
    const lengthM = 3 / Math.tan(toRadians(20))
    for (let row = 0; row < 50; row += 1) expect(lit[row * 9 + 4]).toBe((50 - row) * 0.5 < lengthM ? 0 : 1)
  })
})

describe('against SAGA (another program, another atmosphere)', () => {
  it.each([
    ['03-21', 80, 0.993],
    ['06-21', 172, 0.988],
    ['12-21', 355, 0.992],
  ])('SAGA direct insolation %s: cells rank alike', (date, dayOfYear, atLeast) => {
    const theirs = readGrid(`volcano/saga_insol_${date}_direct_kWh.asc`).values
    const ours = dayAtEachHeight(dayOfYear, true)
    const both = compared.filter((cell) => !Number.isNaN(theirs[cell]!))
    const rank = spearman(
      both.map((cell) => ours('beamWhPerM2', cell)),
      both.map((cell) => theirs[cell]!),
    )
    expect(rank).toBeGreaterThan(atLeast)
  })
})

describe('refusals', () => {
  const choice = { ...site, elevationM: 100, dayOfYear: 80 }
  it('refuses grids that do not fit, slopes that are none and impossible choices', () => {
    expect(() => dayOnGround(shading, { ...cells, slopeDeg: new Float64Array(3) }, choice)).toThrow(
      /5307 cells/,
    )
    expect(() => dayOnGround(shading, { ...cells, slopeDeg: cells.slopeDeg.map(() => 90) }, choice)).toThrow(
      RangeError,
    )
    expect(() => dayOnGround(shading, cells, { ...choice, dayOfYear: 0 })).toThrow(
      /day of the year \[d\] must be from 1 to 366/,
    )
    expect(() => dayOnGround(shading, cells, { ...choice, linke: 0.5 })).toThrow(RangeError)
    expect(() => dayOnGround(shading, cells, { ...choice, albedo: 1.2 })).toThrow(RangeError)
    expect(() => dayOnGround(shading, cells, { ...choice, stepHours: 5 })).toThrow(RangeError)
    expect(() => dayOnGround(shading, cells, { ...choice, elevationM: 9000 })).toThrow(RangeError)
  })
})
