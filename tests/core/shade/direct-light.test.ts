import { describe, expect, it } from 'vitest'
import { directLight, type Screen, type Shading, type Standing } from '#core/shade'
import { directionTo } from '#core/sun'
import { eachMonth } from '#core/units'

const flat = (columns: number, rows: number, cellM: number): Shading['ground'] => ({
  frame: { columns, rows, cellM, westM: 0, southM: 0 },
  levelM: new Float64Array(columns * rows),
  share: new Float64Array(columns * rows).fill(1),
})
const thing = (parts: Partial<Standing>, through = 0): Standing => ({
  id: 'thing',
  name: 'a thing',
  screens: [],
  crowns: [],
  through: eachMonth(() => through),
  ...parts,
})
const wall = (from: [number, number], to: [number, number], topM: number): Screen => ({
  from: { eastM: from[0], northM: from[1] },
  to: { eastM: to[0], northM: to[1] },
  topFromM: topM,
  topToM: topM,
})

describe('directLight past a wall on level ground', () => {
  it.each([15, 30, 45, 60])(
    'plane geometry: at a sun height of %s° a wall 2 m high throws a shadow 2 m / tan(height) long',
    (altitudeDeg) => {
      const ground = flat(3, 400, 0.05)
      const shading = { ground, standing: [thing({ screens: [wall([-5, 5], [5, 5], 2)] })], far: [] }
      const light = directLight(shading, directionTo(180, altitudeDeg), 5)
      const lengthM = 2 / Math.tan((altitudeDeg * Math.PI) / 180)
      for (let row = 0; row < 400; row += 1) {
        const beyondM = 20 - (row + 0.5) * 0.05 - 5
        expect(light[row * 3 + 1]).toBe(beyondM > 0 && beyondM < lengthM ? 0 : 1)
      }
    },
  )
})
