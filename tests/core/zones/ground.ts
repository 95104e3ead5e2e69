import type { GridFrame, Ring } from '#core/geometry'
import type { ZoningInput } from '#core/zones'
import { eachMonth } from '#core/units'

/** Ground that falls due south, the same along every contour: steps from the top down. */
interface Step {
  readonly lengthM: number
  readonly slopeDeg: number
  readonly sunRatio?: number
  readonly sunHours?: number
}

/** April to September, every month alike. */
export const season = eachMonth((month) => (month >= 3 && month <= 8 ? 1 / 6 : 0))

/** Exact facts of stepped ground on a grid whose rows run along the contour; water runs straight south. */
export function steppedGround(steps: readonly Step[], widthM = 10, cellM = 1): ZoningInput {
  const rowsOf = (step: Step) => Math.round(step.lengthM / cellM)
  const perRow = steps.flatMap((step) => Array.from({ length: rowsOf(step) }, () => step))
  const rows = perRow.length
  const columns = Math.round(widthM / cellM)
  const frame: GridFrame = { columns, rows, cellM, westM: 0, southM: 0 }
  const dropM = perRow.map((step) => cellM * Math.tan((step.slopeDeg * Math.PI) / 180))
  const levels = perRow.map((_, row) => {
    const above = dropM.slice(0, row).reduce((sum, drop) => sum + drop, 0)
    return 100 - above - (dropM[row] ?? 0) / 2
  })
  const cells = columns * rows
  const byRow = (of: (row: number) => number) =>
    Float64Array.from({ length: cells }, (_, cell) => of(Math.floor(cell / columns)))
  const byRow32 = (of: (row: number) => number) => Float32Array.from(byRow(of))
  const fallM = dropM.reduce((sum, drop) => sum + drop, 0)
  const boundary: Ring = [
    { eastM: 0, northM: 0 },
    { eastM: columns * cellM, northM: 0 },
    { eastM: columns * cellM, northM: rows * cellM },
    { eastM: 0, northM: rows * cellM },
  ]
  const position = byRow((row) => (rows - row - 0.5) / rows)
  return {
    season,
    sunHours: eachMonth(() => byRow32((row) => perRow[row]?.sunHours ?? 10)),
    sunRatio: eachMonth(() => byRow32((row) => perRow[row]?.sunRatio ?? 1)),
    surface: {
      frame,
      levelM: byRow((row) => levels[row] ?? 0),
      share: byRow(() => 1),
      boundary,
      tin: undefined,
      highestM: 100,
      lowestM: 100 - fallM,
      fallM,
      holes: [],
      notes: [],
      facesDeg: 180,
    },
    terrain: {
      slopeDeg: byRow((row) => perRow[row]?.slopeDeg ?? 0),
      aspectDeg: byRow((row) => ((perRow[row]?.slopeDeg ?? 0) > 0 ? 180 : -1)),
      filledM: byRow((row) => levels[row] ?? 0),
      upslopeAreaM2: byRow((row) => (row + 1) * cellM * cellM),
      heightAboveFootM: byRow((row) => (levels[row] ?? 0) - (100 - fallM)),
      position,
      formDown: byRow(() => 0),
      formAcross: byRow(() => 0),
      section: {
        from: { eastM: widthM / 2, northM: rows * cellM },
        to: { eastM: widthM / 2, northM: 0 },
        lengthM: rows * cellM,
        stations: levels.map((levelM, row) => ({
          eastM: widthM / 2,
          northM: (rows - row - 0.5) * cellM,
          distanceM: (row + 0.5) * cellM,
          levelM,
          slopeDeg: perRow[row]?.slopeDeg ?? 0,
          cell: row * columns + Math.floor(columns / 2),
        })),
      },
      flow: {
        starts: Uint32Array.from({ length: cells + 1 }, (_, cell) => Math.min(cell, cells - columns)),
        to: Uint32Array.from({ length: cells - columns }, (_, cell) => cell + columns),
        share: new Float64Array(cells - columns).fill(1),
        order: Uint32Array.from({ length: cells }, (_, cell) => cell),
      },
    },
  }
}
