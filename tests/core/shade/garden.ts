import type { Shading, Standing, TiltedCells } from '#core/shade'
import { box, crown, rad, screen, thing } from './things-scenes'

const frame = { columns: 48, rows: 40, cellM: 0.5, westM: 0, southM: 0 }

/** A garden of 24 m by 20 m that falls to the north-east by 1 in 6 over a bank, with a house, a wall, a hedge and two trees. */
export function garden(): { shading: Shading; cells: TiltedCells } {
  const { columns, rows, cellM } = frame
  const count = columns * rows
  const level = (eastM: number, northM: number) =>
    -0.1 * eastM - 0.13 * northM + 0.8 / (1 + Math.exp((northM - 9) / 0.7))
  const levelM = Float64Array.from({ length: count }, (_, cell) =>
    level(((cell % columns) + 0.5) * cellM, (rows - Math.floor(cell / columns) - 0.5) * cellM),
  )
  const slopes = Array.from({ length: count }, (_, cell) => {
    const northM = (rows - Math.floor(cell / columns) - 0.5) * cellM
    const bank = 1 / (1 + Math.exp((northM - 9) / 0.7))
    return { east: -0.1, north: -0.13 - (0.8 / 0.7) * bank * (1 - bank) }
  })
  const standing: readonly Standing[] = [
    thing({ screens: box([2, 1], [11, 5], 5.5) }, 0),
    thing({ screens: [screen([0, 0], [0, 20], 1.8, -0.8)] }, 0),
    thing({ screens: [screen([14, 0], [24, 3], 1.5, 0.5)] }, 0.1),
    thing({ crowns: [crown([17, 8], 2.5, 0.5, 5)] }, 0.2),
    thing({ crowns: [crown([6, 14], 1.8, -1, 3.5)] }, 0.2),
  ]
  const degrees = (radians: number) => radians / rad(1)
  return {
    shading: { ground: { frame, levelM, share: new Float64Array(count).fill(1) }, standing, far: [] },
    cells: {
      slopeDeg: Float64Array.from(slopes, ({ east, north }) => degrees(Math.atan(Math.hypot(east, north)))),
      aspectDeg: Float64Array.from(
        slopes,
        ({ east, north }) => (degrees(Math.atan2(-east, -north)) + 360) % 360,
      ),
    },
  }
}
