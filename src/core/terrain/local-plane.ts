import type { Surface } from '#core/survey'
import type { Neighbourhood } from './neighbours'

/** How far to look for neighbours beside a line of cells [cells]. */
const FARTHEST_LOOK = 3

/** Below this share of their spread the neighbours lie in one line with the cell [cells²/cells²]. */
const LINE_SHARE = 1e-9

/** Rise of a plane over one cell eastward and northward [m]. */
interface LocalPlane {
  readonly eastRiseM: number
  readonly northRiseM: number
}

/**
 * The plane through a cell that lies nearest to the cells of the plot around it (least squares).
 *
 * @param surface - the ground
 * @param hood - its cells and their neighbours
 * @param cell - index of the cell [count]
 * @returns rise over one cell [m]; across a strip one cell wide the ground counts as level
 */
export function localPlane(surface: Surface, hood: Neighbourhood, cell: number): LocalPlane {
  for (let reach = 1; reach <= FARTHEST_LOOK; reach++) {
    const sums = sumAround(surface, hood, cell, reach)
    const spread = sums.xx + sums.yy
    const determinant = sums.xx * sums.yy - sums.xy * sums.xy
    if (determinant > LINE_SHARE * spread * spread)
      return {
        eastRiseM: (sums.xz * sums.yy - sums.yz * sums.xy) / determinant,
        northRiseM: (sums.yz * sums.xx - sums.xz * sums.xy) / determinant,
      }
    if (reach === FARTHEST_LOOK && spread > 0)
      return { eastRiseM: sums.xz / spread, northRiseM: sums.yz / spread }
  }
  return { eastRiseM: 0, northRiseM: 0 }
}

function sumAround(surface: Surface, hood: Neighbourhood, cell: number, reach: number) {
  const sums = { xx: 0, xy: 0, yy: 0, xz: 0, yz: 0 }
  const column = cell % hood.columns
  const row = (cell - column) / hood.columns
  const levelM = surface.levelM[cell] ?? 0
  for (let down = Math.max(-reach, -row); down <= Math.min(reach, hood.rows - 1 - row); down++)
    for (let east = Math.max(-reach, -column); east <= Math.min(reach, hood.columns - 1 - column); east++) {
      const other = cell + down * hood.columns + east
      if (!hood.inside[other]) continue
      const riseM = (surface.levelM[other] ?? 0) - levelM
      sums.xx += east * east
      sums.xy -= east * down
      sums.yy += down * down
      sums.xz += east * riseM
      sums.yz -= down * riseM
    }
  return sums
}
