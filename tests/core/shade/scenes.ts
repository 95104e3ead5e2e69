import type { FarPoint, Screen, Shading, Standing, TiltedCells } from '#core/shade'
import type { PlanPoint } from '#core/geometry'
import { eachMonth } from '#core/units'
import { loadTables } from '#io'

/** A level plot of 21 x 21 cells of 1 m, its middle at 10.5 m east and north. */
export const MIDDLE: PlanPoint = { eastM: 10.5, northM: 10.5 }

/** Level ground with things on it. */
export function levelScene(
  standing: readonly Standing[] = [],
  far: readonly FarPoint[] = [],
): { shading: Shading; cells: TiltedCells } {
  return tiltedScene({ slopeDeg: 0, aspectDeg: -1 }, standing, far)
}

/** One plane as ground, level 0 at the middle. */
export function tiltedScene(
  { slopeDeg, aspectDeg }: { slopeDeg: number; aspectDeg: number },
  standing: readonly Standing[] = [],
  far: readonly FarPoint[] = [],
): { shading: Shading; cells: TiltedCells } {
  const side = 21
  const frame = { columns: side, rows: side, cellM: 1, westM: 0, southM: 0 }
  const fall = Math.tan((slopeDeg * Math.PI) / 180)
  const [east, north] = [Math.sin((aspectDeg * Math.PI) / 180), Math.cos((aspectDeg * Math.PI) / 180)]
  const levelM = Float64Array.from({ length: side * side }, (_, cell) => {
    const [eastM, northM] = [(cell % side) + 0.5, side - Math.floor(cell / side) - 0.5]
    return slopeDeg === 0 ? 0 : -fall * ((eastM - MIDDLE.eastM) * east + (northM - MIDDLE.northM) * north)
  })
  const filled = (value: number) => new Float64Array(side * side).fill(value)
  return {
    shading: { ground: { frame, levelM, share: filled(1) }, standing, far },
    cells: { slopeDeg: filled(slopeDeg), aspectDeg: filled(aspectDeg) },
  }
}

/** A thing of screens, as much light through in every month. */
export function thing(id: string, screens: readonly Screen[], through = 0): Standing {
  return { id, name: id, screens, crowns: [], through: eachMonth(() => through) }
}

/** A long straight wall in one of the four directions from the middle of the plot. */
export function wall(towards: 'north' | 'east' | 'south' | 'west', distanceM: number, topM: number): Screen {
  const lengthM = 5000
  const sign = towards === 'north' || towards === 'east' ? 1 : -1
  const end = (side: number): PlanPoint =>
    towards === 'north' || towards === 'south'
      ? { eastM: MIDDLE.eastM + side * lengthM, northM: MIDDLE.northM + sign * distanceM }
      : { eastM: MIDDLE.eastM + sign * distanceM, northM: MIDDLE.northM + side * lengthM }
  return { from: end(-1), to: end(1), topFromM: topM, topToM: topM }
}

/** The light classes as they stand in the table. */
export const classes = loadTables().shade.lightClasses
