import { buildingScreens } from './building-screens'
import { crownOf } from './crown-of'
import { footLevels } from './foot-levels'
import { lightThrough } from './light-through'
import { lineScreens } from './line-screens'
import type { ShadeTables } from './shade-tables.schema'
import type { ShadingGround, Standing } from './shade.types'
import type { Thing } from './standing-thing.types'

/**
 * What stands in the light: the shapes of houses, walls, fences, hedges and trees, and what light they let through.
 * A thing without a height, and a kind that lies flat, does not stand.
 *
 * @param things - what the person drew
 * @param ground - the grid of levels that tells where they stand
 * @param tables - how each kind stands
 * @param latitudeDeg - latitude [°], north positive, -90 to 90; leaves come half a year later in the south
 * @returns one for each thing that stands, in the order drawn
 * @throws RangeError when no cell of the ground lies in the plot, or a table has no row for a kind that has leaves
 */
export function standingOf(
  things: readonly Thing[],
  ground: ShadingGround,
  tables: ShadeTables,
  latitudeDeg: number,
): readonly Standing[] {
  const plotLevel = footLevels(ground)
  return things.flatMap((thing): Standing[] => {
    const row = tables.things.kinds.find(({ kind }) => kind === thing.kind)
    const { groundM, heightM = 0 } = thing
    if (row === undefined || heightM === 0) return []
    const level = groundM === undefined ? plotLevel : () => groundM
    const screens =
      row.shape === 'building'
        ? buildingScreens(thing, heightM, level)
        : row.shape === 'line'
          ? lineScreens(thing.ring, heightM, level, ground.frame.cellM)
          : []
    const crowns = row.shape === 'crown' ? [crownOf(thing, heightM, level, tables)] : []
    if (screens.length + crowns.length === 0) return []
    const { id, name } = thing
    return [{ id, name, screens, crowns, through: lightThrough(thing, row.leaf, tables, latitudeDeg) }]
  })
}
