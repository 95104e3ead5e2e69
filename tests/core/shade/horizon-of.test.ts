import { describe, expect, it } from 'vitest'
import { horizonOf } from '#core/shade'
import { toDegrees } from '#core/units'
import { readGrid } from '../../truth/read-grid'
import { exactSkylineDeg } from './exact-shade'
import { rhorizonSkyline } from './rhorizon-rule'
import { tolerances } from './tolerances'
import { volcano } from './volcano'

const { ground, compared } = volcano()
const { frame, levelM, share } = ground

/** All eight; r.horizon's files are of the hill on a round earth's equator, where its directions are exact. */
const winds = ['000', '045', '090', '135', '180', '225', '270', '315']
const golden = (name: string) => readGrid(`volcano/grass_horizon_${name}_deg.asc`).values

describe('horizonOf', () => {
  it.each([...winds, '070', '250'])(
    'GRASS r.horizon towards %s°, its rule restated: every one of 5307 cells',
    (name) => {
      const { angleDeg } = rhorizonSkyline(ground, Number(name))
      const theirs = golden(name)
      angleDeg.forEach((angle, cell) =>
        expect(Math.abs(Math.max(0, angle) - Math.max(0, theirs[cell]!))).toBeLessThan(
          tolerances.horizonRuleDeg,
        ),
      )
    },
  )

  it.each([
    ['000', 0],
    ['045', 0],
    ['090', 0],
    ['135', 73],
    ['180', 0],
    ['225', 149],
    ['270', 0],
    ['315', 17],
  ] as const)(
    'GRASS r.horizon towards %s°: every cell of the hill but for at most %s whose highest cell it read off the line',
    (name, most) => {
      const theirs = golden(name)
      const ours = horizonOf(frame, levelM, share, Number(name))
      const { strayed } = rhorizonSkyline(ground, Number(name))
      const sound = [...theirs.keys()].filter((cell) => strayed[cell] === 0)
      for (const cell of sound) {
        const off = Math.abs(Math.max(0, theirs[cell]!) - Math.max(0, ours[cell]!))
        expect(off).toBeLessThan(tolerances.horizonDeg)
      }
      const misread = [...theirs.keys()].filter((cell) => strayed[cell] === 1 && theirs[cell]! > 0)
      expect(misread.length).toBeLessThan(most + 1)
    },
  )

  it.each([10, 33, 70, 97, 160, 205, 250, 301])(
    'exact geometry (rays followed in steps of 1 m between cell centres) towards %s°: nearer than r.horizon’s nearest cells',
    (azimuthDeg) => {
      const exact = exactSkylineDeg(ground, azimuthDeg)
      const ours = horizonOf(frame, levelM, share, azimuthDeg)
      const nearest = rhorizonSkyline(ground, azimuthDeg).angleDeg
      const off = (angles: ArrayLike<number>) =>
        compared.reduce(
          (sum, cell) => sum + Math.abs(Math.max(0, angles[cell]!) - Math.max(0, exact[cell]!)),
          0,
        ) / compared.length
      expect(off(ours)).toBeLessThan(tolerances.horizonBetweenMeanDeg)
      expect(off(nearest)).toBeGreaterThan(2 * off(ours))
    },
  )

  it.each([
    [45, -1, 1],
    [135, 1, 1],
    [225, 1, -1],
    [315, -1, -1],
  ])(
    'exact geometry (every cell on the diagonal tried in turn): the hill towards %s°',
    (azimuthDeg, down, right) => {
      const ours = horizonOf(frame, levelM, share, azimuthDeg)
      ours.forEach((angle, cell) => {
        let [row, column, highest] = [Math.floor(cell / frame.columns), cell % frame.columns, -Infinity]
        for (let away = 1; ; away += 1) {
          row += down
          column += right
          if (row < 0 || row >= frame.rows || column < 0 || column >= frame.columns) break
          const rise = levelM[row * frame.columns + column]! - levelM[cell]!
          highest = Math.max(highest, rise / (away * frame.cellM * Math.SQRT2))
        }
        expect(angle).toBeCloseTo(toDegrees(Math.atan(highest)), 4)
      })
    },
  )

  const side = 21
  const flat = { columns: side, rows: side, cellM: 2, westM: 0, southM: 0 }
  const inside = new Float64Array(side * side).fill(1)
  const middle = 10 * side + 10

  it('exact geometry (arctangent of rise over distance): a pole of 5 m stands 14.04° above ground 20 m away', () => {
    const pole = new Float64Array(side * side)
    pole[middle] = 5
    expect(horizonOf(flat, pole, inside, 0)[20 * side + 10]).toBeCloseTo(toDegrees(Math.atan(5 / 20)), 5)
    expect(horizonOf(flat, pole, inside, 90)[10 * side]).toBeCloseTo(toDegrees(Math.atan(5 / 20)), 5)
    expect(horizonOf(flat, pole, inside, 315)[20 * side + 20]).toBeCloseTo(
      toDegrees(Math.atan(5 / Math.hypot(20, 20))),
      5,
    )
  })

  it('exact geometry (a plane’s own rise): on a plane the skyline is the plane itself, in any direction', () => {
    const rising = Float64Array.from(
      inside,
      (_, cell) => 0.3 * (cell % side) * 2 - 0.1 * Math.floor(cell / side) * 2,
    )
    for (const azimuthDeg of [0, 17, 45, 100, 199, 270, 333]) {
      const [sine, cosine] = [Math.sin((azimuthDeg * Math.PI) / 180), Math.cos((azimuthDeg * Math.PI) / 180)]
      const expected = toDegrees(Math.atan(0.3 * sine + 0.1 * cosine))
      expect(horizonOf(flat, rising, inside, azimuthDeg)[middle]).toBeCloseTo(expected, 4)
    }
  })

  it('property: the plot turned by a quarter sees the same skyline a quarter further round, in each of the winds', () => {
    const bumpy = Float64Array.from(inside, (_, cell) => Math.sin(cell * 1.7) * 2 + Math.cos(cell % 13))
    const turned = new Float64Array(side * side)
    bumpy.forEach(
      (level, cell) => (turned[(cell % side) * side + (side - 1 - Math.floor(cell / side))] = level),
    )
    for (const azimuthDeg of [0, 45, 90, 225, 315]) {
      const before = horizonOf(flat, bumpy, inside, azimuthDeg)
      const after = horizonOf(flat, turned, inside, azimuthDeg + 90)
      before.forEach((angle, cell) =>
        expect(after[(cell % side) * side + (side - 1 - Math.floor(cell / side))]).toBeCloseTo(angle, 3),
      )
    }
  })

  it('ground outside the plot hides nothing, and no ground is -90°', () => {
    const pole = new Float64Array(side * side)
    pole[middle] = 5
    const cut = inside.map((part, cell) => (cell === middle ? 0 : part))
    expect(horizonOf(flat, pole, cut, 0)[20 * side + 10]).toBeCloseTo(0, 6)
    expect(horizonOf(flat, pole, inside, 0)[3]).toBe(-90)
  })

  it('refuses grids that do not fit and directions that are none', () => {
    expect(() => horizonOf(flat, new Float64Array(5), inside, 0)).toThrow(/441 cells, got 5/)
    expect(() => horizonOf(flat, inside, inside, NaN)).toThrow(RangeError)
  })
})
