import type { Surface } from '#core/survey'
import { speedLevelsM, SPEED_SIDE_M } from './speed-grid'

/** The ground that programs are timed on, as a surface of so many cells a side. */
export function squareSurface(side: number): Surface {
  const levelM = speedLevelsM(side)
  let [lowestM, highestM] = [Infinity, -Infinity]
  for (const level of levelM) {
    lowestM = Math.min(lowestM, level)
    highestM = Math.max(highestM, level)
  }
  const corner = (eastM: number, northM: number) => ({ eastM, northM })
  return {
    frame: { columns: side, rows: side, cellM: SPEED_SIDE_M / side, westM: 0, southM: 0 },
    levelM,
    share: new Float64Array(side * side).fill(1),
    boundary: [
      corner(0, 0),
      corner(SPEED_SIDE_M, 0),
      corner(SPEED_SIDE_M, SPEED_SIDE_M),
      corner(0, SPEED_SIDE_M),
    ],
    holes: [],
    tin: undefined,
    highestM,
    lowestM,
    fallM: highestM - lowestM,
    facesDeg: undefined,
    notes: [],
  }
}
