import type { DrainedGround } from './slope-position'

/** Foot and crest closer than this are one [m]. */
const SAME_LEVEL_M = 1e-9

/** Position on ground without foot and crest. */
const NEITHER = 0.5

/**
 * Height of every cell between the place where its water leaves the plot and the highest place from which water comes
 * to it, both along the ways of the water itself. Every top is a crest, however small.
 *
 * @param ground - levels, ways of water and boundary levels
 * @param heightM - height of each cell above the place where its water leaves [m]
 * @returns position [m/m], 0 (foot) to 1 (crest); 0.5 where a cell is both
 */
export function relativePosition(ground: DrainedGround, heightM: Float64Array): Float64Array {
  const crestM = sourcesM(ground)
  const position = new Float64Array(crestM.length)
  const { order } = ground.flow
  for (let at = 0; at < order.length; at++) {
    const cell = order[at]!
    const aboveM = Math.max(0, crestM[cell]! - ground.filledM[cell]!)
    const spanM = heightM[cell]! + aboveM
    position[cell] = spanM < SAME_LEVEL_M ? NEITHER : heightM[cell]! / spanM
  }
  return position
}

// Level of the highest place whose water passes through each cell [m]; at the boundary, that of the boundary itself.
function sourcesM({ filledM, flow, edge }: DrainedGround): Float64Array {
  const highestM = filledM.map((levelM, cell) =>
    edge.begins[cell] ? Math.max(levelM, edge.topM[cell]!) : levelM,
  )
  const { order } = flow
  for (let at = 0; at < order.length; at++) {
    const cell = order[at]!
    for (let link = flow.starts[cell]!; link < flow.starts[cell + 1]!; link++) {
      const lower = flow.to[link]!
      if (highestM[lower]! < highestM[cell]!) highestM[lower] = highestM[cell]!
    }
  }
  return highestM
}
