import { buildingScreens } from './building-screens'
import { crownOf } from './crown-of'
import { footLevels } from './foot-levels'
import { lightThrough } from './light-through'
import { lineScreens } from './line-screens'
import type { ShadeTables } from './shade-tables.schema'
import type { ShadingGround, Standing } from './shade.types'
import type { GroundLevel, Thing } from './standing-thing.types'
import { thingFigures, type ThingFigures } from './thing-figures'

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
    const { id, name, groundM, heightM = 0 } = thing
    const figures = thingFigures(thing, tables)
    if (figures === undefined || heightM === 0) return []
    const level = groundM === undefined ? plotLevel : () => groundM
    const shape = shapeOf(thing, heightM, { figures, tables, level, stepM: ground.frame.cellM })
    if (shape.screens.length + shape.crowns.length === 0) return []
    const through = lightThrough(figures, thing.leafMonths, tables.things.leafMonths, latitudeDeg)
    return [{ id, name, ...shape, through }]
  })
}

interface Foot {
  readonly figures: ThingFigures
  readonly tables: ShadeTables
  readonly level: GroundLevel
  /** How closely the ground is read [m]. */
  readonly stepM: number
}

function shapeOf(
  thing: Thing,
  heightM: number,
  { figures, tables, level, stepM }: Foot,
): Pick<Standing, 'screens' | 'crowns'> {
  const shape = tables.things.kinds.find(({ kind }) => kind === thing.kind)?.shape
  if (shape === 'building') return { screens: buildingScreens(thing, heightM, level), crowns: [] }
  if (shape === 'line') return { screens: lineScreens(thing.ring, heightM, level, stepM), crowns: [] }
  const crown = crownOf(thing, heightM, figures, level)
  return { screens: [], crowns: crown ? [crown] : [] }
}
