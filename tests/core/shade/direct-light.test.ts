import { describe, expect, it } from 'vitest'
import { directLight, type Shading } from '#core/shade'
import { directionTo } from '#core/sun'
import { box, centre, crown, planeGround, rad, screen, thing } from './things-scenes'

const frame = { columns: 60, rows: 80, cellM: 0.25, westM: -7.5, southM: -10 }
const level = planeGround(frame).ground
const on = (shading: Partial<Shading>): Shading => ({ ground: level, standing: [], far: [], ...shading })
const lights = (shading: Partial<Shading>, azimuthDeg: number, altitudeDeg: number) =>
  directLight(on(shading), directionTo(azimuthDeg, altitudeDeg), 5)
const cells = Array.from(level.levelM.keys())

describe('directLight past a wall', () => {
  it.each([15, 30, 45, 60])(
    'plane geometry: at a sun height of %s° a wall 2 m high throws a shadow 2 m / tan(height) long',
    (altitudeDeg) => {
      const light = lights(
        { standing: [thing({ screens: [screen([-50, -5], [50, -5], 2)] })] },
        180,
        altitudeDeg,
      )
      const lengthM = 2 / Math.tan(rad(altitudeDeg))
      for (const cell of cells) {
        const beyondM = centre(frame, cell).northM + 5
        expect(light[cell]).toBe(beyondM > 0 && beyondM < lengthM ? 0 : 1)
      }
    },
  )

  it('plane geometry: on ground falling 10° northward the same wall’s shadow is 2 m / (tan 30° - tan 10°) long in plan', () => {
    const { ground } = planeGround(frame, 10, 0)
    const footM = 5 * Math.tan(rad(10))
    const wall = screen([-50, -5], [50, -5], footM + 2)
    const light = lights({ ground, standing: [thing({ screens: [wall] })] }, 180, 30)
    const lengthM = 2 / (Math.tan(rad(30)) - Math.tan(rad(10)))
    for (const cell of cells) {
      const beyondM = centre(frame, cell).northM + 5
      expect(light[cell]).toBe(beyondM > 0 && beyondM < lengthM ? 0 : 1)
    }
  })

  it('plane geometry: the ends of its shadow lie in the sun’s direction, one cell or less from where rays pass them', () => {
    const azimuthDeg = 215
    const light = lights({ standing: [thing({ screens: [screen([-2, 0], [3, 0], 2)] })] }, azimuthDeg, 35)
    const lengthM = 2 / Math.tan(rad(35))
    for (const cell of cells) {
      const { eastM, northM } = centre(frame, cell)
      const awayM = northM / Math.cos(rad(azimuthDeg - 180))
      const met = eastM - northM * Math.tan(rad(azimuthDeg - 180))
      const shaded = northM > 0 && awayM < lengthM && met >= -2 && met <= 3
      expect(light[cell]).toBe(shaded ? 0 : 1)
    }
  })
})

describe('directLight past a crown', () => {
  it('exact solution: a ball shades where the ray passes its middle nearer than its radius; the shadow has the area pi r² / sin(height)', () => {
    const [radius, middle, altitudeDeg, azimuthDeg] = [2, 6, 50, 130]
    const ball = crown([1, 1], radius, middle - radius, middle + radius)
    const light = lights({ standing: [thing({ crowns: [ball] })] }, azimuthDeg, altitudeDeg)
    const sun = directionTo(azimuthDeg, altitudeDeg)
    let shaded = 0
    for (const cell of cells) {
      const { eastM, northM } = centre(frame, cell)
      const to = [1 - eastM, 1 - northM, middle] as const
      const along = to[0] * sun.east + to[1] * sun.north + to[2] * sun.up
      const missM = Math.sqrt(Math.hypot(...to) ** 2 - along ** 2)
      expect(light[cell]).toBe(missM < radius ? 0 : 1)
      shaded += 1 - light[cell]!
    }
    const areaM2 = (Math.PI * radius ** 2) / Math.sin(rad(altitudeDeg))
    expect(Math.abs(shaded * frame.cellM ** 2 - areaM2)).toBeLessThan(0.02 * areaM2)
  })

  it('light passes below it: the ground between stem and shadow is lit', () => {
    const light = lights({ standing: [thing({ crowns: [crown([0, -6], 1.5, 4, 7)] })] }, 180, 30)
    const lit = (eastM: number, northM: number) =>
      light[
        cells.find((cell) => {
          const { eastM: east, northM: north } = centre(frame, cell)
          return Math.abs(east - eastM) <= 0.125 && Math.abs(north - northM) <= 0.125
        })!
      ]
    expect(lit(0, -5)).toBe(1)
    expect(lit(0, -6 + 5.5 / Math.tan(rad(30)))).toBe(0)
  })
})

describe('directLight: what comes through', () => {
  const both = [screen([-50, -5], [50, -5], 4), screen([-50, -4.5], [50, -4.5], 4)]

  it('several faces of one thing count once; two things multiply', () => {
    const once = lights({ standing: [thing({ screens: both }, 0.4)] }, 180, 40)
    const twice = lights(
      { standing: both.map((each, at) => thing({ screens: [each] }, at === 0 ? 0.4 : 0.5)) },
      180,
      40,
    )
    const behind = cells.find((cell) => centre(frame, cell).northM > -4)!
    const shaded = cells.filter(
      (cell) => centre(frame, cell).northM > -4.4 && centre(frame, cell).northM < -1,
    )
    for (const cell of shaded) {
      expect(once[cell]).toBeCloseTo(0.4, 6)
      expect(twice[cell]).toBeCloseTo(0.2, 6)
    }
    expect(once[behind]).toBe(1)
  })

  it('leaves: a month’s own share counts', () => {
    const tree = thing({ crowns: [crown([0, 0], 3, 2, 8)] }, (month) => (month < 4 ? 0.6 : 0.1))
    const sun = directionTo(180, 55)
    const [winter, summer] = ([1, 6] as const).map((month) =>
      directLight(on({ standing: [tree] }), sun, month),
    )
    expect(Math.min(...winter!)).toBeCloseTo(0.6, 6)
    expect(Math.min(...summer!)).toBeCloseTo(0.1, 6)
    for (const cell of cells) expect(summer![cell] === 1).toBe(winter![cell] === 1)
  })
})

describe('directLight past far hills', () => {
  const far = [
    { azimuthDeg: 90, angleDeg: 20 },
    { azimuthDeg: 350, angleDeg: 2 },
    { azimuthDeg: 10, angleDeg: 6 },
  ]

  it.each([
    [90, 20],
    [50, 13],
    [0, 4],
    [170, 14.46],
  ])(
    'plane geometry: straight between its points; towards %s° they stand %s° high',
    (azimuthDeg, angleDeg) => {
      expect(lights({ far }, azimuthDeg, angleDeg + 0.05)[0]).toBe(1)
      expect(lights({ far }, azimuthDeg, angleDeg - 0.05)[0]).toBe(0)
    },
  )

  it('one point stands for the whole circle', () => {
    const round = [{ azimuthDeg: 33, angleDeg: 9 }]
    for (const azimuthDeg of [0, 33, 34, 213, 359]) {
      expect(lights({ far: round }, azimuthDeg, 9.01)[0]).toBe(1)
      expect(lights({ far: round }, azimuthDeg, 8.99)[0]).toBe(0)
    }
  })
})

describe('directLight at the edges', () => {
  it('is nothing with the sun at or below the horizon, and all with it in the zenith', () => {
    const standing = [thing({ screens: box([-3, -3], [3, 3], 5) })]
    expect(Math.max(...lights({ standing }, 120, 0))).toBe(0)
    expect(Math.max(...lights({ standing }, 120, -12))).toBe(0)
    expect(Math.min(...directLight(on({ standing }), { east: 0, north: 0, up: 1 }, 0))).toBe(1)
    expect(Math.min(...lights({ standing }, 77, 90))).toBe(1)
  })

  it('exact solution: in the zenith the sun puts a crown’s shadow right under it', () => {
    const light = directLight(
      on({ standing: [thing({ crowns: [crown([1, 2], 3, 4, 9)] })] }),
      { east: 0, north: 0, up: 1 },
      0,
    )
    for (const cell of cells) {
      const { eastM, northM } = centre(frame, cell)
      expect(light[cell]).toBe(Math.hypot(eastM - 1, northM - 2) < 3 ? 0 : 1)
    }
  })

  it('within four walls the sun must stand over them', () => {
    const standing = [thing({ screens: box([-3, -3], [3, 3], 5) })]
    const inside = cells.filter((cell) => {
      const { eastM, northM } = centre(frame, cell)
      return Math.abs(eastM) < 3 && Math.abs(northM) < 3
    })
    const light = lights({ standing }, 200, 20)
    for (const cell of inside) expect(light[cell]).toBe(0)
  })

  it('refuses things and far hills that cannot be', () => {
    const of = (shading: Partial<Shading>) => () => lights(shading, 100, 30)
    expect(of({ standing: [thing({}, 1.2)] })).toThrow(
      'shade: light through thing [1] must be from 0 to 1, got 1.2',
    )
    expect(of({ standing: [thing({ screens: [screen([0, 0], [NaN, 1], 2)] })] })).toThrow(RangeError)
    expect(of({ standing: [thing({ crowns: [crown([0, 0], 0, 1, 2)] })] })).toThrow('radius of the crown')
    expect(of({ standing: [thing({ crowns: [crown([0, 0], 1, 3, 2)] })] })).toThrow('top of the crown')
    expect(of({ far: [{ azimuthDeg: 20, angleDeg: 90 }] })).toThrow('height of far hills [°]')
    expect(of({ far: [{ azimuthDeg: -20, angleDeg: 9 }] })).toThrow('direction of far hills [°]')
  })

  it('is 0 outside the plot, writes where it is told, and never NaN there', () => {
    const share = level.share.map((_, cell) => (cell % 60 < 30 ? 1 : 0))
    const levelM = level.levelM.map((each, cell) => (cell % 60 < 30 ? each : NaN))
    const shading = on({
      ground: { frame, levelM, share },
      standing: [thing({ screens: box([-3, -3], [3, 3], 5), crowns: [crown([3, 3], 3, 1, 6)] }, 0.5)],
    })
    const into = new Float32Array(share.length).fill(7)
    expect(directLight(shading, directionTo(200, 30), 0, into)).toBe(into)
    for (const cell of cells) {
      if (cell % 60 < 30) expect([0.5, 1]).toContain(into[cell])
      else expect(into[cell]).toBe(0)
    }
  })
})
