import { surfaceFrom, type Surface } from '#core/survey'
import { readGrid } from '../../truth/read-grid'

/** The volcano of tests/truth/volcano as a surface of our own. */
export function volcanoSurface(): Surface {
  const { values, columns, rows, cellM, westM, southM } = readGrid('volcano/dem.asc')
  const outcome = surfaceFrom({
    kind: 'grid',
    columns,
    rows,
    cellM,
    westM,
    southM,
    levelsM: [...values],
  })
  if (!outcome.ok) throw new Error(outcome.problems.map((problem) => problem.what).join(' '))
  return outcome.value
}
