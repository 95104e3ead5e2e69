import { cellCentre, cellParts, type GridFrame } from '#core/geometry'
import type { SurfaceNote } from './surface.types'

/** Islands told of one by one [islands]; the rest are counted together. */
const MOST_TOLD = 10

/**
 * Says which parts of a grid are left out because they do not touch the largest.
 *
 * @param frame - where the grid lies
 * @param known - 1 for each cell with a level [count]
 * @returns a note for each of the larger islands, and one for all the rest
 */
export function islandNotes(frame: GridFrame, known: Uint8Array): SurfaceNote[] {
  const islands = cellParts(frame, known).parts.slice(1)
  const told = islands.slice(0, MOST_TOLD).map(({ first, cells }): SurfaceNote => {
    const at = cellCentre(frame, first)
    const what = `An island of levels near ${Number(at.eastM.toFixed(2))} m east, ${Number(at.northM.toFixed(2))} m north (${areaText(frame, cells)}) does not touch the rest and is left out. Draw a boundary round both to keep it.`
    return { kind: 'left-out', what, at }
  })
  const rest = islands.slice(MOST_TOLD)
  if (rest.length === 0) return told
  const cells = rest.reduce((sum, island) => sum + island.cells, 0)
  const what = `${rest.length} smaller islands of levels (${areaText(frame, cells)} together) are left out too.`
  return [...told, { kind: 'left-out', what, at: undefined }]
}

function areaText(frame: GridFrame, cells: number): string {
  return `${Number((cells * frame.cellM ** 2).toPrecision(4))} m²`
}
