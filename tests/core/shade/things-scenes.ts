import type { GridFrame, PlanPoint } from '#core/geometry'
import type { Crown, Screen, Shading, Standing, TiltedCells } from '#core/shade'
import { eachMonth, type Month } from '#core/units'

/** Radians of an angle in degrees. */
export const rad = (deg: number): number => (deg * Math.PI) / 180

/** A plot that is a plane, its level 0 at the middle of its frame. */
export function planeGround(
  frame: GridFrame,
  slopeDeg = 0,
  aspectDeg = 0,
): { ground: Shading['ground']; cells: TiltedCells } {
  const count = frame.columns * frame.rows
  const fall = Math.tan(rad(slopeDeg))
  const levelM = Float64Array.from({ length: count }, (_, cell) => {
    const { eastM, northM } = centre(frame, cell)
    const east = eastM - frame.westM - (frame.columns * frame.cellM) / 2
    const north = northM - frame.southM - (frame.rows * frame.cellM) / 2
    return -fall * (east * Math.sin(rad(aspectDeg)) + north * Math.cos(rad(aspectDeg)))
  })
  const filled = (value: number) => new Float64Array(count).fill(value)
  return {
    ground: { frame, levelM, share: filled(1) },
    cells: { slopeDeg: filled(slopeDeg), aspectDeg: filled(slopeDeg === 0 ? -1 : aspectDeg) },
  }
}

/** Centre of a cell in plan. */
export function centre(frame: GridFrame, cell: number): PlanPoint {
  return {
    eastM: frame.westM + ((cell % frame.columns) + 0.5) * frame.cellM,
    northM: frame.southM + (frame.rows - Math.floor(cell / frame.columns) - 0.5) * frame.cellM,
  }
}

/** One cell of level ground, its centre at a place. */
export function oneCell(eastM: number, northM: number, cellM = 1): GridFrame {
  return { columns: 1, rows: 1, cellM, westM: eastM - cellM / 2, southM: northM - cellM / 2 }
}

/** A thing; nothing comes through when not said otherwise. */
export function thing(
  parts: { screens?: readonly Screen[]; crowns?: readonly Crown[] },
  through: number | ((month: Month) => number) = 0,
): Standing {
  return {
    id: 'thing',
    name: 'a thing',
    screens: parts.screens ?? [],
    crowns: parts.crowns ?? [],
    through: eachMonth((month) => (typeof through === 'number' ? through : through(month))),
  }
}

/** An upright face from one place [east, north] to another. */
export function screen(
  from: readonly [number, number],
  to: readonly [number, number],
  topFromM: number,
  topToM = topFromM,
): Screen {
  return {
    from: { eastM: from[0], northM: from[1] },
    to: { eastM: to[0], northM: to[1] },
    topFromM,
    topToM,
  }
}

/** The faces of a box between two corners. */
export function box(
  [west, south]: readonly [number, number],
  [east, north]: readonly [number, number],
  topM: number,
): readonly Screen[] {
  return [
    screen([west, south], [east, south], topM),
    screen([east, south], [east, north], topM),
    screen([east, north], [west, north], topM),
    screen([west, north], [west, south], topM),
  ]
}

/** A crown at a place [east, north]. */
export function crown(at: readonly [number, number], radiusM: number, baseM: number, topM: number): Crown {
  return { at: { eastM: at[0], northM: at[1] }, radiusM, baseM, topM }
}
