import { surfaceFrom, type Surface } from '#core/survey'

export interface GridGround {
  readonly columns: number
  readonly rows: number
  readonly cellM: number
}

/** A grid survey of a level formula, centred on the origin. */
export function surfaceOf(
  { columns, rows, cellM }: GridGround,
  levelOf: (eastM: number, northM: number) => number | null,
): Surface {
  const [westM, southM] = [(-columns * cellM) / 2, (-rows * cellM) / 2]
  const levelsM = Array.from({ length: columns * rows }, (_, cell) =>
    levelOf(
      westM + ((cell % columns) + 0.5) * cellM,
      southM + (rows - Math.floor(cell / columns) - 0.5) * cellM,
    ),
  )
  const outcome = surfaceFrom({ kind: 'grid', columns, rows, cellM, westM, southM, levelsM })
  if (!outcome.ok) throw new Error(outcome.problems.map((problem) => problem.what).join(' '))
  return outcome.value
}

/** A square window of levels, north up, row by row. */
export function windowSurface({ cellM, levelsM }: { cellM: number; levelsM: readonly number[] }): Surface {
  const side = Math.sqrt(levelsM.length)
  const outcome = surfaceFrom({
    kind: 'grid',
    columns: side,
    rows: side,
    cellM,
    westM: 0,
    southM: 0,
    levelsM: [...levelsM],
  })
  if (!outcome.ok) throw new Error(outcome.problems.map((problem) => problem.what).join(' '))
  return outcome.value
}

/** Indices of the cells of the plot. */
export function cellsOf(surface: Surface): number[] {
  return [...surface.share.keys()].filter((cell) => (surface.share[cell] ?? 0) > 0)
}

/** Indices of the plot's cells that do not lie at the edge of its grid. */
export function innerCells(surface: Surface): number[] {
  const { columns, rows } = surface.frame
  return cellsOf(surface).filter((cell) => {
    const [column, row] = [cell % columns, Math.floor(cell / columns)]
    return column > 0 && row > 0 && column < columns - 1 && row < rows - 1
  })
}
